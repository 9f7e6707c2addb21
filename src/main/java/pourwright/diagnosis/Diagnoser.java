package pourwright.diagnosis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import pourwright.advice.BadAnswer;
import pourwright.advice.Facts;
import pourwright.advice.Finding;
import pourwright.advice.Impossible;
import pourwright.advice.Strength;
import pourwright.facts.Answers;
import pourwright.figures.FigureValue;
import pourwright.figures.Scope;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Cause;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.Verb;

/**
 * Ranks what can have gone wrong. The result depends on the answers and the knowledge alone; what is kept between calls
 * is the table of evidence of each class and what was worked out for the last answers.
 */
public final class Diagnoser {
    private static final String UNKNOWN_CLASS = "";

    private final DiagnosticKnowledge k;
    private final Scale scale;
    private final Map<String, EvidenceTable> tables = new ConcurrentHashMap<>();
    private final LastJob tries = new LastJob();
    private final AtomicReference<State> last = new AtomicReference<>();

    public Diagnoser(DiagnosticKnowledge k) {
        this.k = k;
        this.scale = new Scale(k.base());
    }

    /** What is known. */
    public DiagnosticKnowledge knowledge() {
        return k;
    }

    /**
     * The whole diagnosis.
     *
     * @throws pourwright.advice.BadAnswer when an answer cannot be true together with the others
     */
    public Diagnosis diagnose(Answers answers) {
        State s = state(answers);
        List<RankedCause> ranked =
                s.belief().ranked().stream().map(id -> ranked(id, s)).toList();
        boolean fits = !ranked.isEmpty()
                && ranked.get(0).probability() >= scale.fits()
                && ranked.get(0).evidence().stream().anyMatch(e -> e.decibans() > 0);
        return new Diagnosis(
                answers,
                ranked,
                s.ruledOut(),
                s.contradictions(),
                fits,
                Parted.firstTwo(k, s),
                findings(s),
                s.figures(),
                s.conclusions(),
                s.assumed(),
                k.observations().stream()
                        .filter(q -> !answers.has(q.id()) && q.suits(s.material()))
                        .map(Question::id)
                        .toList());
    }

    /** Answers that cannot both be true. */
    public List<Contradiction> contradictions(Answers answers) {
        return state(answers).contradictions();
    }

    /** Single answers that would put another cause first, at most three. */
    public List<Diagnosis.Otherwise> otherwise(Answers answers) {
        return Turned.by(k, state(answers));
    }

    /** The observations that would put this cause first: one alone, else two together; at most three sets. */
    public Diagnosis.Wish whyNot(Answers answers, String cause) {
        return new Wished(this, state(answers), cause).find(k);
    }

    /** The next observation worth making, or none when the asking should stop. */
    public Optional<NextObservation> next(Answers answers) {
        return NextObservation.after(this, state(answers));
    }

    Scale scale() {
        return scale;
    }

    EvidenceTable table(MaterialClass material) {
        return tables.computeIfAbsent(
                material == null ? UNKNOWN_CLASS : material.id(), id -> EvidenceTable.draw(k, material));
    }

    /** The state after these answers; each prompt asks for it several times over, so the last one is kept. */
    State state(Answers answers) {
        State kept = last.get();
        if (kept == null || !kept.answers().equals(answers)) {
            kept = worked(answers);
            last.set(kept);
        }
        return kept;
    }

    private State worked(Answers answers) {
        Knowledge base = k.base();
        Scope scope = new Scope(answers, base, true);
        MaterialClass material = scope.material();
        Map<String, FigureValue> figures = scope.all();
        Impossible.check(scope, answers, base);
        List<Object> facts = new ArrayList<>();
        if (material != null) {
            facts.add(Facts.material(material));
        }
        facts.addAll(Facts.said(answers, base.questions()));
        facts.addAll(Facts.said(answers, k.observations()));
        figures.values().forEach(v -> facts.add(Facts.figure(v, base.limits())));
        List<Conclusion> conclusions =
                new ArrayList<>(RuleBook.diagnosis().fire(facts, k.base().leftOut()));
        conclusions.sort(Comparator.comparing((Conclusion c) -> c.rule().id())
                .thenComparing(Conclusion::target)
                .thenComparing(c -> c.said().toString()));

        List<Contradiction> contradictions = contradictions(conclusions);
        Set<String> unsettled = new TreeSet<>();
        contradictions.forEach(c -> unsettled.addAll(List.of(c.first(), c.second())));
        List<Conclusion> counted = conclusions.stream()
                .filter(c -> c.said().stream().noneMatch(x -> unsettled.contains(x.question())))
                .toList();
        SortedSet<String> ruledOut = new TreeSet<>();
        counted.stream().filter(c -> c.verb() == Verb.RULES_OUT).forEach(c -> ruledOut.add(c.target()));
        k.causes().values().stream().filter(c -> c.impossibleIn(material)).forEach(c -> ruledOut.add(c.id()));
        Collection<Cause> possible = k.causes().values().stream()
                .filter(c -> !ruledOut.contains(c.id()))
                .toList();
        Reader reader = new Reader(k);
        List<Evidence> evidence =
                counted.stream().flatMap(c -> reader.evidence(c).stream()).toList();
        Belief belief = Belief.before(new Priors(k, scale).of(answers, material, possible), scale.cap())
                .with(evidence, List.of());
        return new State(
                answers,
                material,
                table(material),
                belief,
                evidence,
                ruledOut,
                contradictions,
                unsettled,
                figures,
                List.copyOf(conclusions),
                new TreeSet<>(scope.assumed()));
    }

    /** The evidence about the job that a quantity would bring, were it this. */
    List<Evidence> tried(State s, Question q, String value) {
        Answers job = job(s.answers());
        return tries.of(job, q.id() + '=' + value, () -> {
            AnswerReader.Outcome read = new AnswerReader(k.base()).fromProgram(q, value);
            if (!(read instanceof AnswerReader.Understood u)) {
                throw new IllegalStateException("question '" + q.id() + "' tries '" + value + "'");
            }
            try {
                return jobEvidence(job.with(q.id(), u.answer(), value));
            } catch (BadAnswer e) {
                // Not possible here, such as a dial beyond the local air: it can say nothing.
                return List.of();
            }
        });
    }

    /** What is known of the job as it was done: everything but what the part looks like. */
    private Answers job(Answers answers) {
        Answers job = answers;
        for (Question q : k.observations()) {
            if (!q.kind().equals("quantity")) {
                job = job.without(q.id());
            }
        }
        return job;
    }

    /** Evidence from figures alone. */
    private List<Evidence> jobEvidence(Answers job) {
        Scope scope = new Scope(job, k.base(), true);
        Map<String, FigureValue> figures = scope.all();
        Impossible.check(scope, job, k.base());
        List<Object> facts = new ArrayList<>();
        if (scope.material() != null) {
            facts.add(Facts.material(scope.material()));
        }
        figures.values().forEach(v -> facts.add(Facts.figure(v, k.base().limits())));
        Reader reader = new Reader(k);
        return RuleBook.diagnosis().fire(facts, k.base().leftOut()).stream()
                .flatMap(c -> reader.evidence(c).stream())
                .toList();
    }

    private static List<Contradiction> contradictions(List<Conclusion> conclusions) {
        return conclusions.stream()
                .filter(c -> c.verb() == Verb.CONTRADICTS)
                .map(c -> {
                    String[] pair = c.target().split(" ");
                    return new Contradiction(pair[0], pair[1], c.say(), c.rule());
                })
                .toList();
    }

    private RankedCause ranked(String id, State s) {
        Belief b = s.belief();
        List<String> unknown = k.observations().stream()
                .filter(q -> s.answers().get(q.id()).isEmpty() && q.suits(s.material()))
                .filter(q -> q.choices().stream()
                        .anyMatch(c -> s.table().of(q.id(), c.id()).stream()
                                .anyMatch(e -> e.cause().equals(id))))
                .map(Question::id)
                .toList();
        return new RankedCause(
                k.causes().get(id), b.probability(id), b.decibans(id), b.prior(id), b.evidence(id), unknown);
    }

    /** What must be settled, and the cautions that rules give. */
    private List<Finding> findings(State s) {
        List<Finding> out = new ArrayList<>();
        s.contradictions()
                .forEach(c -> out.add(new Finding(
                        c.rule().id(),
                        c.rule().topic(),
                        Strength.CONSIDER,
                        c.say(),
                        c.rule().because(),
                        c.rule(),
                        List.of(c.first(), c.second()),
                        List.of(),
                        List.of(),
                        "")));
        Set<String> warned = new TreeSet<>();
        for (Conclusion c : s.conclusions()) {
            if (c.verb() == Verb.CAUTION && warned.add(c.target())) {
                out.add(new Finding(
                        c.rule().id(),
                        c.rule().topic(),
                        Strength.NOTE,
                        k.base().cautions().get(c.target()).say(),
                        c.rule().because(),
                        c.rule(),
                        List.copyOf(c.answers()),
                        List.copyOf(c.figures()),
                        List.of(),
                        c.target()));
            }
        }
        return List.copyOf(out);
    }
}
