package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pourwright.advice.BadAnswer;
import pourwright.advice.OneFigure;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.RankedCause;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Lessons;
import pourwright.sheet.Card;
import pourwright.teach.Tried;

/** A lesson as lines: what it teaches, what its experiments give, and what is often believed. */
public final class LessonPage {
    private final Lessons course;
    private final Diagnoser diagnoser;
    private final Knowledge knowledge;
    private final int width;

    public LessonPage(Lessons course, Diagnoser diagnoser, int width) {
        this.course = course;
        this.diagnoser = diagnoser;
        this.knowledge = diagnoser.knowledge().base();
        this.width = width;
    }

    /** The text of a lesson. */
    public List<String> text(Lesson l) {
        List<String> out = new ArrayList<>(wrap(l.order() + ". " + l.title(), ""));
        for (String paragraph : l.says()) {
            out.add("");
            out.addAll(Wrap.text(paragraph, width, "", ""));
        }
        out.add("");
        if (!l.terms().isEmpty()) {
            out.addAll(wrap(
                    "Words: " + String.join(", ", l.terms()) + ". \"define "
                            + l.terms().get(0) + "\" explains one.",
                    ""));
        }
        Explained explained = new Explained(knowledge, width);
        out.addAll(wrap(
                "From: " + l.sources().stream().map(explained::source).collect(Collectors.joining("; ")) + ".", ""));
        return out;
    }

    /** The whole lesson without a learner: its text, its experiments and what is often believed. */
    public List<String> whole(Lesson l) {
        List<String> out = new ArrayList<>(text(l));
        for (Lesson.Experiment e : l.experiments()) {
            out.add("");
            out.addAll(wrap("Try: " + e.says(), ""));
            out.addAll(outcome(e, e.first()));
            out.addAll(outcome(e, e.then()));
            out.addAll(wrap(e.notice(), ""));
        }
        out.add("");
        out.addAll(believed(l));
        return out;
    }

    /** The lesson as a card for the wall: what it teaches, what was computed, and what is so. */
    public Card card(Lesson l, String version) {
        List<Card.Line> tried = new ArrayList<>();
        for (Lesson.Experiment e : l.experiments()) {
            tried.add(new Card.Line(
                    e.notice(), e.says() + " " + inOneLine(e, e.first()) + "; " + inOneLine(e, e.then()) + "."));
        }
        List<Card.Line> so = l.misconceptions().stream()
                .map(course.misconceptions()::get)
                .map(m -> new Card.Line(m.truth(), "Often heard: \"" + m.belief() + "\"" + shown(m)))
                .toList();
        Explained explained = new Explained(knowledge, width);
        return new Card(
                l.title(),
                "",
                List.of(
                        Card.Group.of("Know", l.says()),
                        new Card.Group("Computed", tried),
                        new Card.Group("It is so", so)),
                List.of(),
                List.of(
                        knowledge.closing(),
                        "From: " + l.sources().stream().map(explained::source).collect(Collectors.joining("; ")) + ".",
                        version));
    }

    private String inOneLine(Lesson.Experiment e, String typed) {
        List<String> lines = outcome(e, typed).stream().map(String::strip).toList();
        return lines.get(0) + " " + String.join(", ", lines.subList(1, lines.size()));
    }

    /** What an experiment gives for one answer, as it is typed. */
    public List<String> outcome(Lesson.Experiment e, String typed) {
        Tried tried = new Tried(e, diagnoser);
        return outcome(e, tried, tried.answers(typed));
    }

    /** The same for answers that were read at a prompt; one that cannot be says so. */
    List<String> outcome(Lesson.Experiment e, Tried tried, Answers answers) {
        String with = e.vary().replace('-', ' ') + " "
                + Page.said(e.vary(), answers.get(e.vary()).orElseThrow(), knowledge) + ":";
        Tried.Outcome outcome;
        try {
            outcome = tried.of(answers);
        } catch (BadAnswer bad) {
            return wrap(bad.getMessage(), "  ");
        }
        List<String> out = new ArrayList<>(wrap(with, "  "));
        for (OneFigure.Result r : outcome.figures()) {
            out.addAll(wrap(
                    r.value().id().replace('-', ' ') + " = " + r.wording().show(r.value())
                            + (r.value().caveat() == null
                                    ? ""
                                    : ". Careful: " + r.value().caveat()),
                    "    "));
        }
        for (RankedCause c : outcome.causes()) {
            out.addAll(wrap(
                    c.cause().name() + ": " + Words.chance(c.probability()) + ", about "
                            + Math.round(c.probability() * 100) + " in 100",
                    "    "));
        }
        return out;
    }

    /** The formulas of an experiment, for whoever asks how it is computed. */
    List<String> how(Lesson.Experiment e) {
        if (e.ofCauses()) {
            return wrap("The diagnosis of these answers was made anew. \"pourwright diagnose\" does the same.", "  ");
        }
        List<String> out = new ArrayList<>();
        Explained explained = new Explained(knowledge, width);
        for (OneFigure.Result r : new Tried(e, diagnoser)
                .of(new Tried(e, diagnoser).answers(e.first()))
                .figures()) {
            out.addAll(wrap(
                    r.value().id() + ": " + r.definition().words() + " ("
                            + r.definition().sources().stream()
                                    .map(explained::source)
                                    .collect(Collectors.joining("; "))
                            + ").",
                    "  "));
        }
        return out;
    }

    /** What is often believed about a lesson's matter, and what is so. */
    public List<String> believed(Lesson l) {
        List<String> out = new ArrayList<>();
        for (String id : l.misconceptions()) {
            out.addAll(believed(id, "Often heard"));
        }
        return out;
    }

    /** One belief, and what is so. */
    public List<String> believed(String id, String how) {
        Lesson.Misconception m = course.misconceptions().get(id);
        return wrap(how + ": \"" + m.belief() + "\" In fact: " + m.truth() + shown(m), "");
    }

    /** The figure that shows it, computed now. */
    private String shown(Lesson.Misconception m) {
        if (m.shown() == null) {
            return "";
        }
        OneFigure.Result r = Tried.of(m.shown(), knowledge);
        String given = m.shown().answers().entrySet().stream()
                .map(a -> a.getKey().replace('-', ' ') + " " + said(a.getKey(), a.getValue()))
                .collect(Collectors.joining(", "));
        return " Computed for " + given + ": " + r.value().id().replace('-', ' ') + " = "
                + r.wording().show(r.value()) + ".";
    }

    private String said(String id, String typed) {
        return knowledge
                .question(id)
                .flatMap(q -> q.choice(typed))
                .map(c -> Words.lower(c.text()))
                .orElse(
                        knowledge.materials().containsKey(typed)
                                ? knowledge.materials().get(typed).name()
                                : typed);
    }

    private List<String> wrap(String text, String first) {
        return Wrap.text(text, width, first, first + "  ");
    }
}
