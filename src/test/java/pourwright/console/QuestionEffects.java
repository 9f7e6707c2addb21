package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Wording;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.Diagnosis;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/**
 * Which questions were asked, and whether answering them ever changes anything against "don't know". The situations kept
 * are those of the earliest talks, so that the result does not depend on which thread was quicker.
 */
final class QuestionEffects {
    private static final int KEPT = 12;

    private final Diagnoser diagnoser;
    private final Knowledge knowledge;
    private final AnswerReader reader;
    private final Map<String, Integer> counts = new TreeMap<>();
    private final Map<String, TreeMap<Integer, Answers>> situations = new TreeMap<>();

    QuestionEffects(Diagnoser diagnoser) {
        this.diagnoser = diagnoser;
        this.knowledge = diagnoser.knowledge().base();
        this.reader = new AnswerReader(knowledge);
    }

    /** Notes that a talk asked a question. */
    synchronized void asked(int talk, String word, String question, Answers answers) {
        String key = word + " " + question;
        counts.merge(key, 1, Integer::sum);
        TreeMap<Integer, Answers> kept = situations.computeIfAbsent(key, k -> new TreeMap<>());
        kept.putIfAbsent(talk, answers);
        if (kept.size() > KEPT) {
            kept.pollLastEntry();
        }
    }

    /** How often each question was asked, by word and id. */
    Map<String, Integer> counts() {
        return counts;
    }

    /** Questions that no answer gave an effect, in any situation kept. */
    List<String> withoutEffect() {
        return situations.entrySet().stream()
                .filter(e -> e.getValue().values().stream().noneMatch(a -> matters(e.getKey(), a)))
                .map(e -> e.getKey() + " (asked " + counts.get(e.getKey()) + " times)")
                .toList();
    }

    private boolean matters(String key, Answers answers) {
        String word = key.substring(0, key.indexOf(' '));
        Question q = knowledge.question(key.substring(key.indexOf(' ') + 1)).orElseThrow();
        List<Object> unknown =
                told(word, answers.with(q.id(), new Answer.DontKnow(), null)).orElse(List.of());
        return possible(q).stream()
                .map(typed -> reader.fromProgram(q, typed) instanceof AnswerReader.Understood u
                        ? told(word, answers.with(q.id(), u.answer(), typed))
                        : Optional.<List<Object>>empty())
                .anyMatch(told -> told.isPresent() && !told.get().equals(unknown));
    }

    private List<String> possible(Question q) {
        List<String> all = new ArrayList<>();
        if (q.kind().equals("material")) {
            all.addAll(knowledge.materials().keySet());
        } else if (q.kind().equals("ratio")) {
            all.addAll(List.of("1:1", "10:1 by weight", "100:3 by volume"));
        } else if (q.kind().equals("choice")) {
            q.choices().forEach(c -> all.add(c.id()));
        } else {
            all.add(q.example());
            all.addAll(q.tries());
            all.add(q.min() + " " + q.unit());
            all.add(q.max() + " " + q.unit());
        }
        return all;
    }

    /** All that a result says; empty when the answers cannot be true together, or there is no result yet. */
    private Optional<List<Object>> told(String word, Answers answers) {
        try {
            return Optional.of(word.equals("plan") ? plan(answers) : diagnosis(answers));
        } catch (BadAnswer e) {
            return Optional.empty();
        }
    }

    private List<Object> plan(Answers answers) {
        Consultation c = Advisor.consult(answers, knowledge);
        Map<String, Object> figures = new TreeMap<>();
        // As a person sees them: a unit of one's own is an effect too.
        Wording wording = new Wording(knowledge, answers, c.figures());
        c.figures().forEach((id, v) -> figures.put(id, List.of(v.si(), wording.show(v))));
        List<Object> told = new ArrayList<>();
        told.add(c.verdict());
        told.add(figures);
        told.add(c.timetable());
        c.findings().forEach(f -> told.add(f.id() + f.say()));
        c.needs().forEach(n -> told.add(n.question()));
        return told;
    }

    private List<Object> diagnosis(Answers answers) {
        Diagnosis d = diagnoser.diagnose(answers);
        Map<String, Object> figures = new TreeMap<>();
        d.figures().forEach((id, v) -> figures.put(id, v.si()));
        List<Object> told = new ArrayList<>();
        told.add(figures);
        d.ranked().forEach(r -> told.add(List.of(r.cause().id(), r.probability())));
        d.findings().forEach(f -> told.add(f.id() + f.say()));
        told.add(Objects.toString(
                diagnoser.next(answers).map(n -> n.question().id()).orElse("")));
        return told;
    }
}
