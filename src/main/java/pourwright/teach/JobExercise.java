package pourwright.teach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.advice.Verdict;
import pourwright.ask.RuleProse;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Question;
import pourwright.knowledge.WayOfWorking;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;
import pourwright.rulebook.RuleText;
import pourwright.rulebook.Verb;

/** A job still to come: what to do, which judgement holds, and on which answer it rests. The advisor marks it. */
final class JobExercise implements Exercise {
    static final String VERDICT = "verdict";
    static final String WAY = "way";
    static final String RULE = "judgement";
    static final String RESTS = "rests-on";
    private static final int TRIES = 30;
    private static final int CHOICES = 4;
    /** A lesson about these has taught the ways of working. */
    private static final Set<String> WAYS_MATTER = Set.of("vacuum", "mould", "pressure", "cup");

    private final Told from;
    private final Consultation c;
    private final Finding shown;
    private final Knowledge k;
    private final List<Question> parts;

    private JobExercise(Told from, Consultation c, Finding shown, List<String> topics, Knowledge k, Draw draw) {
        this.from = from;
        this.c = c;
        this.shown = shown;
        this.k = k;
        this.parts = parts(topics, draw);
    }

    /** An exercise drawn from a case; none when no variant of it is about these topics. */
    static Optional<Exercise> of(Told told, List<String> topics, Knowledge k, Draw draw) {
        // A case that says nothing about the matter seldom does with a few answers changed.
        Optional<Finding> usual = consulted(told.answers(), k).flatMap(c -> about(topics, c));
        if (usual.isEmpty()) {
            return Optional.empty();
        }
        // Two in three exercises want another judgement than the case as it was saved, where one can be found.
        boolean other = draw.below(3) > 0;
        for (int n = 0; n < TRIES; n++) {
            Optional<Consultation> c = consulted(Varied.of(told.answers(), k, draw), k);
            Optional<Finding> shown = c.flatMap(x -> about(topics, x));
            boolean same =
                    shown.isPresent() && shown.get().id().equals(usual.get().id());
            if (shown.isPresent() && !(same && other && n < TRIES / 2)) {
                JobExercise e = new JobExercise(told, c.get(), shown.get(), topics, k, draw);
                if (e.parts.size() > 1) {
                    return Optional.of(e);
                }
            }
        }
        return Optional.empty();
    }

    /** None where the answers cannot all be true. */
    private static Optional<Consultation> consulted(Answers answers, Knowledge k) {
        try {
            return Optional.of(Advisor.consult(answers, k));
        } catch (BadAnswer e) {
            return Optional.empty();
        }
    }

    /** The strongest finding about these topics. */
    private static Optional<Finding> about(List<String> topics, Consultation c) {
        return c.findings().stream()
                .filter(f -> topics.contains(f.topic()) && !f.isCaution())
                .min(Comparator.comparing(Finding::strength));
    }

    private List<Question> parts(List<String> topics, Draw draw) {
        List<Question> out = new ArrayList<>();
        List<String> chosen = ways(c.methods());
        List<String> others = k.processes().keySet().stream()
                .filter(id -> !c.methods().contains(id))
                .toList();
        boolean decides = shown.strength() == Strength.STOP || shown.strength() == Strength.CHANGE;
        if (decides) {
            Map<String, String> choices = new LinkedHashMap<>();
            choices.put(Verdict.GO.word(), "go: pour as it is described");
            choices.put(Verdict.CHANGE.word(), "change something first");
            choices.put(Verdict.STOP.word(), "stop: nobody should do this");
            out.add(Parts.choice(
                    VERDICT,
                    "What would you do?",
                    "Change means that it would work after one thing is altered.",
                    choices));
        } else if (topics.stream().anyMatch(WAYS_MATTER::contains) && !chosen.isEmpty() && others.size() > 1) {
            List<String> offered = new ArrayList<>(List.of(draw.of(chosen)));
            draw.shuffled(others).stream().limit(CHOICES - 1L).forEach(offered::add);
            Map<String, String> choices = new LinkedHashMap<>();
            draw.shuffled(offered)
                    .forEach(id -> choices.put(id, k.processes().get(id).name()));
            out.add(Parts.choice(
                    WAY,
                    "Which of these would you do about bubbles?",
                    "Think of how thick the mix is, of the time it leaves, and of the kit.",
                    choices));
        }
        judgement(topics, draw).ifPresent(out::add);
        restsOn(draw).ifPresent(out::add);
        return out;
    }

    private List<String> ways(Set<String> methods) {
        return methods.stream().filter(k.processes()::containsKey).sorted().toList();
    }

    /** The rule that spoke, among rules about the same matter that were silent. */
    private Optional<Question> judgement(List<String> topics, Draw draw) {
        Set<String> fired = Set.copyOf(c.rulesFired());
        List<RuleCard> silent = Stream.of(RuleBook.method(), RuleBook.judge())
                .flatMap(b -> b.cards().stream())
                .filter(r -> topics.contains(r.topic()) && !fired.contains(r.id()))
                .sorted()
                .toList();
        if (silent.size() < CHOICES - 1) {
            return Optional.empty();
        }
        List<RuleCard> offered = new ArrayList<>(List.of(shown.rule()));
        draw.shuffled(silent).stream().limit(CHOICES - 1L).forEach(offered::add);
        Map<String, String> choices = new LinkedHashMap<>();
        draw.shuffled(offered).forEach(r -> choices.put(r.id(), r.says()));
        return Optional.of(Parts.choice(
                RULE,
                "One of these judgements holds for this job. Which?",
                "The others need something that is not so here, or that nobody said.",
                choices));
    }

    /** The answers it rests on, among answers that it does not look at. */
    private Optional<Question> restsOn(Draw draw) {
        List<String> told = c.answers().all().keySet().stream()
                .filter(id -> c.answers().get(id).isPresent() && !id.startsWith("unit"))
                .toList();
        List<String> right = told.stream().filter(shown.answers()::contains).toList();
        List<String> others =
                told.stream().filter(id -> !shown.answers().contains(id)).toList();
        if (right.isEmpty() || others.size() < 2) {
            return Optional.empty();
        }
        List<String> offered = new ArrayList<>(List.of(draw.of(nearest(right))));
        draw.shuffled(others).stream().limit(CHOICES - 1L).forEach(offered::add);
        Map<String, String> choices = new LinkedHashMap<>();
        draw.shuffled(offered)
                .forEach(id -> choices.put(id, k.question(id).map(Question::ask).orElse(id)));
        return Optional.of(Parts.choice(
                RESTS,
                "On which of these answers does that rest?",
                "Ask yourself which of them, were it different, could make the judgement fall.",
                choices));
    }

    /** Those that the rule itself looks at, where there are such; the others only feed its figures. */
    private List<String> nearest(List<String> right) {
        Set<String> looked = c.conclusions().stream()
                .filter(x -> x.rule().id().equals(shown.id()))
                .flatMap(x -> Stream.of(x.answers(), x.figures()).flatMap(Set::stream))
                .collect(Collectors.toSet());
        List<String> near = right.stream().filter(looked::contains).toList();
        return near.isEmpty() ? right : near;
    }

    @Override
    public Lesson.Drill.Kind kind() {
        return Lesson.Drill.Kind.JOB;
    }

    @Override
    public Told from() {
        return from;
    }

    @Override
    public Answers answers() {
        return c.answers();
    }

    @Override
    public List<Question> parts() {
        return parts;
    }

    @Override
    public Marked mark(List<Answer> replies) {
        Parts.count(replies, parts);
        List<Marked.Mark> marks = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            String said = Parts.chosen(replies.get(i));
            marks.add(
                    switch (parts.get(i).id()) {
                        case VERDICT -> verdict(said);
                        case WAY -> way(said);
                        case RULE -> judged(said);
                        default ->
                            new Marked.Mark(
                                    RESTS,
                                    shown.answers().contains(said),
                                    parts.get(i).choices().stream()
                                            .filter(ch -> shown.answers().contains(ch.id()))
                                            .map(Question.Choice::id)
                                            .toList(),
                                    List.of());
                    });
        }
        return new Marked(marks, List.of());
    }

    private Marked.Mark judged(String said) {
        boolean right = c.rulesFired().contains(said);
        List<Marked.Reason> because = new ArrayList<>();
        because.add(new Marked.Reason(shown.say() + " " + shown.because(), shown.id()));
        if (!right) {
            RuleBook.card(said)
                    .ifPresent(card -> because.add(new Marked.Reason(
                            "Yours is silent here. It speaks when "
                                    + String.join(", and ", new RuleProse(k, Map.of()).conditions(RuleText.of(card)))
                                    + ".",
                            card.id())));
        }
        return new Marked.Mark(RULE, right, List.of(shown.id()), because);
    }

    private Marked.Mark verdict(String said) {
        List<Marked.Reason> because = c.findings().stream()
                .filter(f -> f.strength() == Strength.STOP || f.strength() == Strength.CHANGE)
                .limit(2)
                .map(f -> new Marked.Reason(f.say(), f.id()))
                .collect(Collectors.toList());
        if (because.isEmpty()) {
            because.add(new Marked.Reason("No rule asks for a change, and none forbids it.", ""));
        }
        return new Marked.Mark(
                VERDICT, said.equals(c.verdict().word()), List.of(c.verdict().word()), because);
    }

    private Marked.Mark way(String said) {
        List<String> chosen = ways(c.methods());
        List<Marked.Reason> because = new ArrayList<>();
        boolean right = chosen.contains(said);
        if (!right && k.processes().containsKey(said)) {
            WayOfWorking w = k.processes().get(said);
            c.conclusions().stream()
                    .filter(x -> x.verb() == Verb.REFUSE && x.target().equals(said))
                    .findFirst()
                    .ifPresentOrElse(
                            x -> because.add(new Marked.Reason(
                                    x.rule().because(), x.rule().id())),
                            () -> because.add(new Marked.Reason("Yours is wrong when: " + w.wrongWhen(), "")));
        }
        c.conclusions().stream()
                .filter(x -> x.verb() == Verb.CHOOSE && chosen.contains(x.target()))
                .sorted(Comparator.comparing((Conclusion x) -> x.rule().id()))
                .limit(1)
                .forEach(x -> because.add(
                        new Marked.Reason(x.rule().because(), x.rule().id())));
        return new Marked.Mark(WAY, right, chosen, because);
    }

    /** Rules that ask for more than the replies would do; for whoever names what is believed. */
    Set<String> passedOver(List<Answer> replies) {
        String said = Parts.chosen(replies.get(0));
        boolean milder = parts.get(0).id().equals(VERDICT)
                && !said.isEmpty()
                && !said.equals(Verdict.STOP.word())
                && !said.equals(c.verdict().word())
                && c.verdict() != Verdict.GO;
        return milder
                ? c.findings().stream()
                        .filter(f -> f.strength() == Strength.STOP || f.strength() == Strength.CHANGE)
                        .map(Finding::id)
                        .collect(Collectors.toSet())
                : Set.of();
    }

    /** The way of working that was named wrongly, or nothing. */
    String wrongWay(List<Answer> replies) {
        String said = Parts.chosen(replies.get(0));
        return parts.get(0).id().equals(WAY) && !c.methods().contains(said) ? said : "";
    }
}
