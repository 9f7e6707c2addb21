package pourwright.teach;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pourwright.advice.BadAnswer;
import pourwright.advice.OneFigure;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/** A number to work out from what a case tells. The formula marks it, within a named tolerance. */
final class NumberExercise implements Exercise {
    static final String NUMBER = "number";
    private static final int TRIES = 20;
    private static final double FAR = 1000;
    private static final double MOST_OPEN = 0.5;
    /** An example must not give the answer away. */
    private static final double ELSEWHERE = 3.7;

    private final Told from;
    private final Answers answers;
    private final OneFigure.Result figure;
    private final Lesson.Drill drill;
    private final Knowledge k;
    private final Question part;

    private NumberExercise(Told from, Answers answers, OneFigure.Result figure, Lesson.Drill drill, Knowledge k) {
        this.from = from;
        this.answers = answers;
        this.figure = figure;
        this.drill = drill;
        this.k = k;
        Dimension d = figure.definition().dimension();
        double si = figure.value().si().typical();
        String unit = d == Dimension.FRACTION ? "%" : Show.bestUnit(si, d);
        double v = UnitBook.fromSi(si, unit, d);
        this.part = Parts.quantity(
                NUMBER,
                figure.definition().asks(),
                "Work it out: " + figure.definition().words() + ".",
                d.id(),
                unit,
                v / FAR,
                v * FAR,
                Varied.typed(v * ELSEWHERE, unit));
    }

    /** An exercise drawn from a case; none when the case does not tell what the figure needs. */
    static Optional<Exercise> of(Told told, Lesson.Drill drill, Knowledge k, Draw draw) {
        OneFigure one = OneFigure.named(drill.figure(), k);
        for (int n = 0; n < TRIES; n++) {
            Answers varied = given(drill, k, Varied.of(told.answers(), k, draw), draw);
            Optional<OneFigure.Result> r = computed(one, varied);
            if (r.isEmpty()) {
                continue;
            }
            Set<String> used = used(one, varied, r.get());
            if (used.size() > 1 && sharp(r.get().value().si())) {
                Answers needed = varied;
                for (String id : varied.all().keySet()) {
                    needed = used.contains(id) ? needed : needed.without(id);
                }
                return Optional.of(
                        new NumberExercise(told, needed, computed(one, needed).orElse(r.get()), drill, k));
            }
        }
        return Optional.empty();
    }

    /** A number that its own inputs leave open by half and more cannot be marked. */
    private static boolean sharp(Estimate e) {
        return Double.isFinite(e.typical()) && e.typical() > 0 && (e.high() - e.low()) / 2 <= MOST_OPEN * e.typical();
    }

    private static Answers given(Lesson.Drill drill, Knowledge k, Answers base, Draw draw) {
        Answers out = base;
        for (var e : drill.answers().entrySet()) {
            out = Varied.perhaps(Typed.with(out, e.getKey(), e.getValue(), k), e.getKey(), k, draw);
        }
        return out;
    }

    private static Optional<OneFigure.Result> computed(OneFigure one, Answers answers) {
        try {
            return Optional.of(InUnits.of(one, answers));
        } catch (BadAnswer e) {
            return Optional.empty();
        }
    }

    /** The answers without which it is another number, or none at all. */
    private static Set<String> used(OneFigure one, Answers answers, OneFigure.Result now) {
        Set<String> used = new LinkedHashSet<>();
        for (String id : answers.all().keySet()) {
            Optional<OneFigure.Result> without = computed(one, answers.without(id));
            if (answers.get(id).isPresent()
                    && (without.isEmpty()
                            || !without.get().value().si().equals(now.value().si()))) {
                used.add(id);
            }
        }
        return used;
    }

    @Override
    public Lesson.Drill.Kind kind() {
        return Lesson.Drill.Kind.NUMBER;
    }

    @Override
    public Told from() {
        return from;
    }

    @Override
    public Answers answers() {
        return answers;
    }

    @Override
    public List<Question> parts() {
        return List.of(part);
    }

    @Override
    public Marked mark(List<Answer> replies) {
        Parts.count(replies, parts());
        boolean right = near(replies.get(0), figure.value().si());
        List<String> believed = new ArrayList<>();
        if (!right) {
            for (Lesson.Slip s : drill.slips()) {
                Answers slipped =
                        s.as().isEmpty() ? answers.without(s.without()) : Typed.with(answers, s.without(), s.as(), k);
                computed(OneFigure.named(drill.figure(), k), slipped)
                        .filter(r -> near(replies.get(0), r.value().si()))
                        .ifPresent(r -> believed.add(s.misconception()));
            }
        }
        return new Marked(
                List.of(new Marked.Mark(
                        NUMBER,
                        right,
                        List.of(figure.wording().show(figure.value())),
                        List.of(new Marked.Reason("It is " + figure.definition().words() + ".", "")))),
                believed);
    }

    /** Within the tolerance of what was computed. */
    private boolean near(Answer reply, Estimate si) {
        double tolerance = k.guidelineSi("lesson-number-tolerance");
        return reply instanceof Answer.Quantity q
                && Math.abs(q.si().typical() - si.typical()) <= tolerance * Math.abs(si.typical());
    }

    /** Answers in the words of a knowledge file. */
    static final class Typed {
        private Typed() {}

        /**
         * The answers with one more.
         *
         * @throws IllegalStateException when the file's words are no answer: a fault of the knowledge
         */
        static Answers with(Answers answers, String id, String typed, Knowledge k) {
            Question q = k.question(id).orElseThrow(() -> new IllegalStateException("no question is called " + id));
            if (new AnswerReader(k).fromProgram(q, typed) instanceof AnswerReader.Understood u) {
                return answers.with(id, u.answer(), typed);
            }
            throw new IllegalStateException("\"" + typed + "\" is no answer to '" + id + "'");
        }
    }
}
