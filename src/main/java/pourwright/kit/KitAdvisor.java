package pourwright.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Facts;
import pourwright.advice.Finding;
import pourwright.advice.Wording;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Shown;
import pourwright.facts.Unknown;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.RuleBook;
import pourwright.units.Dimension;

/**
 * Tests a kit: a pure function of answers and knowledge. The fits come first, then the rules judge what they show together
 * with what a person saw.
 */
public final class KitAdvisor {
    private KitAdvisor() {}

    /**
     * One test.
     *
     * @param knowledge with the questions of a diagnosis, whose observations a test shares
     * @throws BadAnswer when there is nothing to go by, or an answer cannot be used
     */
    public static KitAdvice advise(Answers answers, Knowledge knowledge) {
        Optional<Sizing> sizing = answers.text("uses").isBlank()
                ? Optional.empty()
                : Optional.of(KitSizer.size(answers, knowledge, answers.text("uses")));
        if (!KitQuestions.tellSomething(answers)) {
            throw new BadAnswer(
                    "pump-down-readings",
                    "Nothing can be said without a reading or a symptom. Give some, for example"
                            + " pump-down-readings=\"0 s 1013 mbar; 30 s 400; 60 s 160\", pump-oil=milky, or --for"
                            + " tin-silicone.");
        }
        KitTest test = KitTest.of(answers, knowledge);
        List<Object> facts = facts(answers, knowledge, test);
        List<Conclusion> conclusions = new ArrayList<>(RuleBook.kit().fire(facts, knowledge.leftOut()));
        conclusions.sort(Comparator.comparing((Conclusion c) -> c.rule().id()).thenComparing(Conclusion::say));
        Map<String, FigureValue> figures = new TreeMap<>(test.figures());
        List<Finding> findings =
                Advisor.findings(conclusions, knowledge, Set.of(), new Wording(knowledge, answers, figures));
        Set<String> unasked = new TreeSet<>(KitQuestions.open(answers, test.suspect(knowledge)));
        return new KitAdvice(
                answers,
                Advisor.verdict(findings),
                findings,
                figures,
                test.fallReadings(),
                test.riseReadings(),
                test.fall(),
                test.rise(),
                test.state(),
                sizing,
                List.copyOf(conclusions),
                List.copyOf(test.assumed()),
                List.copyOf(unasked));
    }

    private static List<Object> facts(Answers answers, Knowledge knowledge, KitTest test) {
        List<Question> asked = answers.all().keySet().stream()
                .flatMap(id -> knowledge.question(id).stream())
                .toList();
        List<Object> facts = new ArrayList<>(Facts.said(answers, asked));
        for (String id : KitQuestions.ALL) {
            if (answers.get(id).isEmpty()) {
                facts.add(new Unknown(id));
            }
        }
        facts.addAll(test.shown());
        Set<String> there = new TreeSet<>(test.figures().keySet());
        test.figures().values().forEach(v -> facts.add(Facts.figure(v, knowledge.limits())));
        for (Question q : asked) {
            if (!there.contains(q.id()) && answers.get(q.id()).orElse(null) instanceof Answer.Quantity quantity) {
                facts.add(Facts.figure(
                        FigureValue.plain(
                                q.id(),
                                Dimension.named(q.quantity()),
                                quantity.si(),
                                pourwright.facts.Basis.TYPED,
                                new TreeSet<>(Set.of(q.id()))),
                        knowledge.limits()));
            }
        }
        return facts;
    }

    /** A verdict of a fit as rules name it. */
    static Shown shown(String test, Enum<?> what, String question) {
        return new Shown(test, what.name().toLowerCase(Locale.ROOT).replace('_', '-'), question);
    }
}
