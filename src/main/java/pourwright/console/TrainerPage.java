package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Lessons;
import pourwright.teach.Progress;

/** Who has mastered what: for the trainer, person by person and then lesson by lesson. */
public final class TrainerPage {
    private final Lessons course;
    private final int run;
    private final int width;

    /** @param run how many exercises in a row must be right for a lesson to be mastered */
    public TrainerPage(Lessons course, int run, int width) {
        this.course = course;
        this.run = run;
        this.width = width;
    }

    /** The summary of all who learn. */
    public List<String> lines(List<Progress> all) {
        List<String> out = new ArrayList<>();
        if (all.isEmpty()) {
            return Wrap.text(
                    "Nobody has begun the course yet. \"pourwright learn\" begins it and asks for a name.",
                    width,
                    "",
                    "");
        }
        for (Progress p : all) {
            if (!out.isEmpty()) {
                out.add("");
            }
            out.addAll(person(p));
        }
        out.add("");
        for (Lesson l : course.lessons()) {
            add(out, l.order() + ". " + l.title() + ": ", lesson(l, all));
        }
        return out;
    }

    /** One person. */
    public List<String> person(Progress p) {
        List<String> out = new ArrayList<>();
        List<Lesson> mastered = in(p, Progress.Standing.MASTERED);
        out.addAll(Wrap.text(
                Clean.quoted(p.name()) + " has mastered " + mastered.size() + " of "
                        + course.lessons().size() + " lessons.",
                width,
                "",
                "  "));
        if (!mastered.isEmpty()) {
            add(out, "  mastered: ", titles(mastered));
        }
        List<Lesson> underWay = in(p, Progress.Standing.UNDER_WAY);
        if (!underWay.isEmpty()) {
            add(
                    out,
                    "  under way: ",
                    underWay.stream()
                            .map(l -> l.title() + " (" + p.run(l) + " of " + run + " in a row, "
                                    + p.exercises(l.id()).size() + " done)")
                            .collect(Collectors.joining("; ")));
        }
        List<Progress.Event> unaided =
                p.events().stream().filter(Progress.Event::unaided).toList();
        if (!unaided.isEmpty()) {
            add(
                    out,
                    "  diagnoses without help: ",
                    unaided.stream().filter(Progress.Event::right).count() + " right of " + unaided.size());
        }
        p.beliefs()
                .forEach((id, b) -> add(
                        out,
                        "  seems to believe: ",
                        "\""
                                + (course.misconceptions().containsKey(id)
                                        ? course.misconceptions().get(id).belief()
                                        : id)
                                + "\" (" + b.times() + (b.times() == 1 ? " time" : " times") + ", last on " + b.last()
                                + ")"));
        return out;
    }

    private String lesson(Lesson l, List<Progress> all) {
        List<String> parts = new ArrayList<>();
        named(parts, "mastered by ", all, l, Progress.Standing.MASTERED);
        named(parts, "under way: ", all, l, Progress.Standing.UNDER_WAY);
        return parts.isEmpty() ? "nobody yet" : String.join("; ", parts);
    }

    private void named(List<String> parts, String how, List<Progress> all, Lesson l, Progress.Standing s) {
        String names = all.stream()
                .filter(p -> p.standing(l, run) == s)
                .map(p -> Clean.quoted(p.name()))
                .collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            parts.add(how + names);
        }
    }

    private List<Lesson> in(Progress p, Progress.Standing s) {
        return course.lessons().stream().filter(l -> p.standing(l, run) == s).toList();
    }

    private static String titles(List<Lesson> lessons) {
        return lessons.stream().map(Lesson::title).collect(Collectors.joining("; "));
    }

    private void add(List<String> out, String label, String text) {
        out.addAll(Wrap.text(text, width, label, "    "));
    }
}
