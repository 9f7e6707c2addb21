package pourwright.teach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pourwright.advice.BadAnswer;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.Diagnosis;
import pourwright.diagnosis.Evidence;
import pourwright.diagnosis.RankedCause;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Cause;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Lesson;
import pourwright.knowledge.Question;

/** A bad part: what spoiled it, and which observation says so. The diagnosis marks it. */
final class CauseExercise implements Exercise {
    static final String CAUSE = "cause";
    static final String WHY = "why";
    private static final int TRIES = 30;
    /** Of the tries, the last ones take what they get. */
    private static final int LAST = 8;

    private static final int CHOICES = 5;
    private static final int FIRST = 3;
    private static final int RIVALS = 2;

    /** Whether there was a vacuum or pressure: other answers hang on it. */
    private static final Set<String> HANGS_ON = Set.of("degassed", "pressured");

    private static final int DROPPED = 2;
    private static final int REASONS = 2;

    private final Told from;
    private final Diagnosis d;
    private final DiagnosticKnowledge k;
    private final boolean unaided;
    private final List<Question> parts;
    private final double tieDecibans;

    private CauseExercise(Told from, Diagnosis d, DiagnosticKnowledge k, Draw draw, boolean unaided) {
        this.from = from;
        this.d = d;
        this.k = k;
        this.unaided = unaided;
        this.tieDecibans = k.base().guidelineSi("lesson-cause-tie");
        this.parts = parts(draw);
    }

    /** An exercise drawn from a case; none when no variant has an answer that is clear enough. */
    static Optional<Exercise> of(Told told, List<String> causes, Diagnoser diagnoser, Draw draw, boolean unaided) {
        DiagnosticKnowledge k = diagnoser.knowledge();
        if (!causes.isEmpty() && farFrom(causes, told, diagnoser)) {
            return Optional.empty();
        }
        String usual = cause(told.answers(), diagnoser);
        // Two in three exercises have another cause than the case as it was saved, where one can be found.
        boolean other = draw.below(3) > 0;
        for (int n = 0; n < TRIES; n++) {
            boolean turns = other && n < TRIES - LAST;
            Answers answers = turns
                    ? draw.coin() ? turned(told.answers(), diagnoser, draw) : altered(told.answers(), k, draw)
                    : dropped(told.answers(), k, draw);
            Optional<Diagnosis> d = clear(answers, diagnoser);
            String leads = d.map(x -> leader(x).cause().id()).orElse("");
            // What looks like the lesson's matter and is not belongs to the lesson as well.
            boolean wanted = turns ? !leads.equals(usual) : causes.isEmpty() || causes.contains(leads);
            if (d.isPresent() && wanted) {
                CauseExercise e = new CauseExercise(told, d.get(), k, draw, unaided);
                if (e.parts.size() > 1) {
                    return Optional.of(e);
                }
            }
        }
        return Optional.empty();
    }

    private static String cause(Answers answers, Diagnoser diagnoser) {
        try {
            return leader(diagnoser.diagnose(answers)).cause().id();
        } catch (BadAnswer e) {
            return "";
        }
    }

    /** None of these is among the first causes of the case: one observation less or other seldom puts it first. */
    private static boolean farFrom(List<String> causes, Told told, Diagnoser diagnoser) {
        try {
            return diagnoser.diagnose(told.answers()).ranked().stream()
                    .limit(FIRST)
                    .noneMatch(r -> causes.contains(r.cause().id()));
        } catch (BadAnswer e) {
            return true;
        }
    }

    private static RankedCause leader(Diagnosis d) {
        return d.ranked().get(0);
    }

    /** The diagnosis, where its first cause is likely and well ahead of the second. */
    private static Optional<Diagnosis> clear(Answers answers, Diagnoser diagnoser) {
        Diagnosis d;
        try {
            d = diagnoser.diagnose(answers);
        } catch (BadAnswer e) {
            return Optional.empty();
        }
        double lead = diagnoser.knowledge().base().guidelineSi("lesson-cause-lead");
        boolean clear = d.fits()
                && d.contradictions().isEmpty()
                // A story in which something speaks against the right answer teaches the wrong thing.
                && leader(d).evidence().stream().noneMatch(e -> e.decibans() < 0)
                && (d.ranked().size() == 1
                        || d.ranked().get(0).decibans() - d.ranked().get(1).decibans() >= lead);
        return clear ? Optional.of(d) : Optional.empty();
    }

    /** One observation changed so that another cause leads. */
    private static Answers turned(Answers base, Diagnoser diagnoser, Draw draw) {
        List<Diagnosis.Otherwise> ways = diagnoser.otherwise(base);
        if (ways.isEmpty()) {
            return dropped(base, diagnoser.knowledge(), draw);
        }
        Diagnosis.Otherwise way = draw.of(ways);
        Question q = diagnoser.knowledge().base().question(way.question()).orElseThrow();
        return new AnswerReader(diagnoser.knowledge().base()).fromProgram(q, way.choice())
                        instanceof AnswerReader.Understood u
                ? base.with(q.id(), u.answer(), way.choice())
                : base;
    }

    /** One or two observations made otherwise. */
    private static Answers altered(Answers base, DiagnosticKnowledge k, Draw draw) {
        Answers out = base;
        for (String id : draw.shuffled(observed(base, k)).stream()
                .limit(1 + draw.below(DROPPED))
                .toList()) {
            Question q = k.base().question(id).orElseThrow();
            if (q.kind().equals("choice") && !HANGS_ON.contains(id)) {
                String choice = draw.of(q.choices()).id();
                if (new AnswerReader(k.base()).fromProgram(q, choice) instanceof AnswerReader.Understood u) {
                    out = out.with(id, u.answer(), choice);
                }
            }
        }
        return out;
    }

    private static List<String> observed(Answers base, DiagnosticKnowledge k) {
        return base.all().keySet().stream()
                .filter(id -> !id.equals("symptom") && k.observation(id).isPresent())
                .toList();
    }

    /** One or two observations left out. */
    private static Answers dropped(Answers base, DiagnosticKnowledge k, Draw draw) {
        Answers out = base;
        for (String id : draw.shuffled(observed(base, k)).stream()
                .limit(1 + draw.below(DROPPED))
                .toList()) {
            out = out.without(id);
        }
        return out;
    }

    private List<Question> parts(Draw draw) {
        List<Question> out = new ArrayList<>();
        out.add(Parts.choice(
                CAUSE,
                unaided ? "What spoiled it? Say it in your own words." : "What spoiled it?",
                "Look for what fits every observation, and for the one that speaks against the rest.",
                unaided ? everyCause() : someCauses(draw)));
        List<String> right = telling();
        List<String> others = seen().filter(id -> !right.contains(id)).collect(Collectors.toList());
        if (!right.isEmpty() && !others.isEmpty()) {
            List<String> offered = new ArrayList<>(right);
            draw.shuffled(others).stream().limit(CHOICES - 1L).forEach(offered::add);
            Map<String, String> choices = new LinkedHashMap<>();
            draw.shuffled(offered).forEach(id -> choices.put(id, question(id).ask()));
            out.add(Parts.choice(
                    WHY,
                    "Which of these observations says so most clearly?",
                    "It is the one that the other causes would explain worst.",
                    choices));
        }
        return out;
    }

    private java.util.stream.Stream<String> seen() {
        return d.answers().all().keySet().stream()
                .filter(id -> d.answers().get(id).isPresent() && !id.equals("symptom"));
    }

    /** The observations that speak for the leading cause as strongly as any. */
    private List<String> telling() {
        List<Evidence> speaks =
                leader(d).evidence().stream().filter(e -> e.decibans() > 0).toList();
        int most = speaks.stream().mapToInt(Evidence::decibans).max().orElse(0);
        return speaks.stream()
                .filter(e -> e.decibans() == most)
                .map(Evidence::question)
                .filter(id -> d.answers().has(id))
                .distinct()
                .toList();
    }

    private Question question(String id) {
        return k.base().question(id).orElseThrow();
    }

    private Map<String, String> someCauses(Draw draw) {
        List<RankedCause> offered = new ArrayList<>(
                d.ranked().subList(0, Math.min(1 + RIVALS, d.ranked().size())));
        List<String> symptoms = d.answers().choices("symptom");
        Predicate<Cause> likeIt = c -> symptoms.stream().anyMatch(c.arises()::containsKey);
        List<RankedCause> tail = d.ranked().stream()
                .skip(offered.size())
                .filter(r -> likeIt.test(r.cause()))
                .toList();
        draw.shuffled(tail).stream().limit(CHOICES - (long) offered.size()).forEach(offered::add);
        Map<String, String> choices = new LinkedHashMap<>();
        draw.shuffled(offered)
                .forEach(r -> choices.put(r.cause().id(), r.cause().name()));
        return choices;
    }

    private Map<String, String> everyCause() {
        Map<String, String> choices = new LinkedHashMap<>();
        k.causes().values().forEach(c -> choices.put(c.id(), c.name()));
        return choices;
    }

    @Override
    public Lesson.Drill.Kind kind() {
        return Lesson.Drill.Kind.CAUSE;
    }

    @Override
    public Told from() {
        return from;
    }

    @Override
    public Answers answers() {
        return d.answers();
    }

    @Override
    public List<Question> parts() {
        return parts;
    }

    @Override
    public boolean unaided() {
        return unaided;
    }

    @Override
    public Marked mark(List<Answer> replies) {
        Parts.count(replies, parts);
        List<Marked.Mark> marks = new ArrayList<>();
        RankedCause first = leader(d);
        String chosen = Parts.chosen(replies.get(0));
        boolean right = d.ranked().stream()
                .anyMatch(r -> r.cause().id().equals(chosen) && first.decibans() - r.decibans() <= tieDecibans);
        List<Marked.Reason> because = new ArrayList<>();
        because.add(new Marked.Reason(first.cause().is(), ""));
        speaks(first, true).limit(REASONS).forEach(because::add);
        if (!right && !chosen.isEmpty()) {
            because.addAll(against(chosen));
        }
        marks.add(new Marked.Mark(CAUSE, right, List.of(first.cause().id()), because));
        if (parts.size() > 1) {
            List<String> telling = telling();
            String why = Parts.chosen(replies.get(1));
            marks.add(new Marked.Mark(WHY, telling.contains(why), telling, List.of()));
        }
        return new Marked(marks, List.of());
    }

    /** What speaks for a cause, or against it, in sentences. */
    private java.util.stream.Stream<Marked.Reason> speaks(RankedCause r, boolean agrees) {
        return r.evidence().stream()
                .filter(e -> agrees ? e.decibans() > 0 : e.decibans() < 0)
                .map(e -> new Marked.Reason(
                        (agrees ? "It speaks for it. " : "It speaks against it. ")
                                + e.conclusion().rule().because(),
                        e.conclusion().rule().id(),
                        e.question()));
    }

    private List<Marked.Reason> against(String chosen) {
        String name = k.causes().get(chosen).name();
        if (d.ruledOut().contains(chosen)) {
            return List.of(new Marked.Reason(
                    "Your answer, " + name + ", cannot be: this liquid or this way of working rules it out.", ""));
        }
        RankedCause r = d.ranked().stream()
                .filter(x -> x.cause().id().equals(chosen))
                .findFirst()
                .orElseThrow();
        List<Marked.Reason> out = new ArrayList<>();
        out.add(new Marked.Reason(
                "Your answer, " + name + ", has about " + Math.round(r.probability() * 100) + " in 100 against about "
                        + Math.round(leader(d).probability() * 100) + ".",
                ""));
        speaks(r, false).limit(1).forEach(out::add);
        return out;
    }

    /** The cause that the replies name, and the one that leads; for whoever names what is believed. */
    List<String> pair(List<Answer> replies) {
        return List.of(Parts.chosen(replies.get(0)), leader(d).cause().id());
    }
}
