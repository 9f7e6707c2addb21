package pourwright.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Question;
import pourwright.teach.Exercise;
import pourwright.teach.Marked;

/** An exercise as lines: the story, each question with its choices, and how it was marked. */
final class ExercisePage {
    private static final Set<String> UNTOLD =
            Set.of("units", "unit-mass", "unit-temperature", "unit-pressure", "unit-volume");
    private static final int LISTED = 12;

    private final Knowledge knowledge;
    private final int width;

    ExercisePage(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    /** How many choices a person reads; of more none is listed. */
    static int listed() {
        return LISTED;
    }

    /** What is told, a line for each part of the story. */
    List<String> story(Exercise e) {
        Map<String, List<String>> sections = new LinkedHashMap<>();
        Answers a = e.answers();
        a.all().keySet().stream()
                .filter(id -> a.get(id).isPresent() && !UNTOLD.contains(id))
                .forEach(id -> sections.computeIfAbsent(
                                knowledge.question(id).map(Question::section).orElse(""), s -> new ArrayList<>())
                        .add(told(id, a)));
        List<String> out = new ArrayList<>(wrap(
                switch (e.kind()) {
                    case JOB -> "A job still to come:";
                    case CAUSE -> "A part that came out wrong:";
                    case NUMBER -> "Given:";
                },
                ""));
        sections.values().forEach(s -> out.addAll(Wrap.text(String.join("; ", s) + ".", width, "  ", "    ")));
        return out;
    }

    private String told(String id, Answers a) {
        return id.replace('-', ' ') + ": " + Page.said(id, a.get(id).orElseThrow(), knowledge);
    }

    /** A part with its choices; where there are too many to read, none is listed. */
    List<String> ask(Exercise e, Question part) {
        List<String> out = new ArrayList<>(wrap(part.ask(), ""));
        if (part.choices().size() <= LISTED) {
            int n = 0;
            for (Question.Choice c : part.choices()) {
                out.addAll(Wrap.text(choice(e, c), width, "  " + ++n + ". ", "     "));
            }
        } else {
            out.addAll(wrap("A word or two will do.", "  "));
        }
        return out;
    }

    /** An answer that was told is shown with what was answered. */
    private String choice(Exercise e, Question.Choice c) {
        return e.answers().get(c.id()).isPresent() ? told(c.id(), e.answers()) : c.text();
    }

    /** How the parts were answered. */
    List<String> marks(Exercise e, Marked m) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < m.marks().size(); i++) {
            Marked.Mark mark = m.marks().get(i);
            Question part = e.parts().get(i);
            String best = mark.best().stream().map(b -> best(e, part, b)).collect(Collectors.joining(" or "));
            out.addAll(wrap((i + 1) + ". " + (mark.right() ? "Right: " : "Not so. It is: ") + end(best), ""));
            for (Marked.Reason r : mark.because()) {
                String seen = e.answers().get(r.seen()).isPresent() ? told(r.seen(), e.answers()) + ". " : "";
                out.addAll(wrap(seen + r.say() + (r.rule().isEmpty() ? "" : " (rule " + r.rule() + ")"), "   "));
            }
        }
        return out;
    }

    private static String end(String text) {
        return text.endsWith(".") ? text : text + ".";
    }

    private String best(Exercise e, Question part, String id) {
        if (e.kind() == Lesson.Drill.Kind.NUMBER) {
            return id;
        }
        return part.choice(id)
                .map(c -> choice(e, c))
                .or(() -> e.answers().get(id).isPresent()
                        ? java.util.Optional.of(told(id, e.answers()))
                        : java.util.Optional.empty())
                .orElseGet(() -> knowledge.processes().containsKey(id)
                        ? knowledge.processes().get(id).name()
                        : id.replace('-', ' '));
    }

    private List<String> wrap(String text, String first) {
        return Wrap.text(text, width, first, first + (first.isEmpty() ? "   " : ""));
    }
}
