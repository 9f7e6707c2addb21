package pourwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pourwright.facts.Answers;
import pourwright.facts.Method;
import pourwright.facts.Refused;
import pourwright.figures.FigureValue;
import pourwright.figures.Scope;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;
import pourwright.rulebook.Verb;

/**
 * Plans a pour: a pure function of answers and knowledge. Facts and figures first; one base of rules chooses the ways of
 * working; the timetable follows from them; the other base judges the job with both.
 */
public final class Advisor {
    private static final List<String> TOPICS = List.of(
            "safety",
            "vacuum",
            "cup",
            "time",
            "pump",
            "gauge",
            "mould",
            "master",
            "pour",
            "pressure",
            "heat",
            "liquid",
            "mixing",
            "amount",
            "room",
            "cure",
            "release",
            "use",
            "interview");
    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::strength)
            .thenComparing(f -> TOPICS.indexOf(f.topic()))
            .thenComparing(Finding::id);

    private Advisor() {}

    /**
     * One consultation.
     *
     * @throws BadAnswer when no material was named, or an answer cannot be true together with the others
     */
    public static Consultation consult(Answers answers, Knowledge knowledge) {
        Scope scope = new Scope(answers, knowledge, true);
        MaterialClass material = scope.material();
        if (material == null) {
            throw new BadAnswer(
                    "material",
                    "Nothing can be planned without the liquid. Say which material, for example"
                            + " material=tin-silicone.");
        }
        Map<String, FigureValue> figures = scope.all();
        Impossible.check(scope, answers, knowledge);
        List<Object> facts = Facts.ofPlan(answers, knowledge, material, figures);
        List<Conclusion> conclusions = new ArrayList<>(RuleBook.method().fire(facts, knowledge.leftOut()));
        Set<String> refused = targets(conclusions, Verb.REFUSE);
        Set<String> methods = targets(conclusions, Verb.CHOOSE);
        methods.removeAll(refused);
        List<Step> timetable = Timetable.of(scope, knowledge, methods);

        Map<String, FigureValue> all = scope.all();
        methods.forEach(m -> facts.add(new Method(m)));
        refused.forEach(r -> facts.add(new Refused(r)));
        all.forEach((id, v) -> {
            if (!figures.containsKey(id)) {
                facts.add(Facts.figure(v, knowledge.limits()));
            }
        });
        conclusions.addAll(RuleBook.judge().fire(facts, knowledge.leftOut()));
        conclusions.sort(Comparator.comparing((Conclusion c) -> c.rule().id())
                .thenComparing(Conclusion::target)
                .thenComparing(Conclusion::say)
                .thenComparing(c -> c.answers().toString()));

        Wording wording = new Wording(knowledge, answers, all);
        List<Finding> findings = findings(conclusions, knowledge, methods, wording);
        List<Need> needs = needs(
                conclusions,
                knowledge,
                answers,
                Facts.opened(answers, knowledge, material, all).isPresent());
        return new Consultation(
                answers,
                verdict(findings),
                findings,
                all,
                Timetable.worded(timetable, wording),
                new TreeSet<>(methods),
                new TreeSet<>(refused),
                needs,
                List.copyOf(conclusions),
                new TreeSet<>(scope.assumed()),
                needs.stream().map(Need::question).filter(q -> !answers.has(q)).toList(),
                scope.failures());
    }

    private static Set<String> targets(List<Conclusion> conclusions, Verb verb) {
        Set<String> targets = new TreeSet<>();
        conclusions.stream().filter(c -> c.verb() == verb).forEach(c -> targets.add(c.target()));
        return targets;
    }

    /** The findings among what rules concluded, strongest first. */
    public static List<Finding> findings(
            List<Conclusion> conclusions, Knowledge knowledge, Set<String> methods, Wording wording) {
        Map<String, Finding> findings = new LinkedHashMap<>();
        for (Conclusion c : conclusions) {
            boolean stands = c.verb() != Verb.NEED
                    && c.verb() != Verb.DECIDE
                    && (c.verb() != Verb.CHOOSE || methods.contains(c.target()));
            if (stands) {
                findings.putIfAbsent(c.rule().id(), finding(c, knowledge, wording));
            }
        }
        return findings.values().stream().sorted(ORDER).toList();
    }

    private static Finding finding(Conclusion c, Knowledge knowledge, Wording wording) {
        String say = c.say();
        if (c.verb() == Verb.CAUTION) {
            if (!knowledge.cautions().containsKey(c.target())) {
                throw new IllegalStateException("no caution is called '" + c.target() + "'");
            }
            say = knowledge.cautions().get(c.target()).say();
        }
        RuleCard rule = c.rule();
        return new Finding(
                rule.id(),
                rule.topic(),
                Strength.of(c.verb()),
                wording.fill(say),
                rule.because(),
                rule,
                List.copyOf(c.answers()),
                List.copyOf(c.figures()),
                List.copyOf(c.methods()),
                c.verb() == Verb.CAUTION ? c.target() : "");
    }

    /** What the strongest finding makes of the job. */
    public static Verdict verdict(List<Finding> findings) {
        return findings.isEmpty()
                ? Verdict.GO
                : switch (findings.get(0).strength()) {
                    case STOP -> Verdict.STOP;
                    case CHANGE -> Verdict.CHANGE;
                    default -> Verdict.GO;
                };
    }

    private static List<Need> needs(
            List<Conclusion> conclusions, Knowledge knowledge, Answers answers, boolean opened) {
        Map<String, Map<String, RuleCard>> wanted = new TreeMap<>();
        for (Conclusion c : conclusions) {
            if (c.verb() == Verb.NEED) {
                wanted.computeIfAbsent(c.target(), k -> new TreeMap<>())
                        .put(c.rule().id(), c.rule());
            }
        }
        return knowledge.questions().stream()
                .filter(q -> wanted.containsKey(q.id()))
                .filter(q ->
                        answers.has(q.id()) || Facts.implied(answers, q.id()).isEmpty())
                .filter(q -> !(opened && q.id().equals(Facts.OPENED)))
                .map(q -> new Need(q.id(), List.copyOf(wanted.get(q.id()).values())))
                .toList();
    }
}
