package pourwright.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import pourwright.facts.Figure;
import pourwright.facts.Material;
import pourwright.facts.Method;
import pourwright.facts.Refused;
import pourwright.facts.Said;
import pourwright.facts.Shown;
import pourwright.facts.Unknown;
import pourwright.rulebook.Condition;
import pourwright.rulebook.RuleText;

/**
 * Which conditions of a rule hold in a plan, one by one. It guides a search and says what is lacking; whether the rule
 * fires is always left to the rule itself.
 */
final class Alternative {
    private static final int LAST_BIT = 60;

    private final RuleText rule;
    private final List<Condition> conditions;

    Alternative(RuleText rule) {
        this.rule = rule;
        this.conditions = rule.when();
    }

    RuleText rule() {
        return rule;
    }

    /** One bit for each condition that does not hold; those beyond the sixtieth share the last. */
    long lacking(List<Object> facts) {
        Map<String, Object> bound = new HashMap<>();
        long mask = 0;
        for (int i = 0; i < conditions.size(); i++) {
            if (!holds(conditions.get(i), facts, bound)) {
                mask |= 1L << Math.min(i, LAST_BIT);
            }
        }
        return mask;
    }

    /** Places of the conditions that do not hold. */
    List<Integer> missing(List<Object> facts) {
        long mask = lacking(facts);
        List<Integer> missing = new ArrayList<>();
        for (int i = 0; i < conditions.size(); i++) {
            if ((mask & 1L << Math.min(i, LAST_BIT)) != 0) {
                missing.add(i);
            }
        }
        return missing;
    }

    private static boolean holds(Condition condition, List<Object> facts, Map<String, Object> bound) {
        if (condition instanceof Condition.Not not) {
            Map<String, Object> inside = new HashMap<>(bound);
            return !not.all().stream().allMatch(c -> holds(c, facts, inside));
        }
        Condition.Fact pattern = (Condition.Fact) condition;
        for (Object fact : facts) {
            if (fact.getClass().getSimpleName().equals(pattern.type())
                    && pattern.tests().stream().allMatch(t -> passes(t, fact, bound))) {
                if (!pattern.bind().isEmpty()) {
                    bound.put(pattern.bind(), fact);
                }
                return true;
            }
        }
        return false;
    }

    private static boolean passes(Condition.Test test, Object fact, Map<String, Object> bound) {
        if (test instanceof Condition.Any any) {
            return any.some().stream().anyMatch(t -> passes(t, fact, bound));
        }
        if (test instanceof Condition.OneOf one) {
            return one.values().contains(part(fact, one.field())) != one.not();
        }
        Condition.Is is = (Condition.Is) test;
        return word(is, fact, bound) != is.not();
    }

    private static String part(Object fact, String field) {
        if (fact instanceof Said s) {
            return field.equals("question") ? s.question() : s.choice();
        }
        if (fact instanceof Unknown u) {
            return u.question();
        }
        if (fact instanceof Method m) {
            return m.what();
        }
        if (fact instanceof Refused r) {
            return r.what();
        }
        if (fact instanceof Shown s) {
            return field.equals("test") ? s.test() : s.outcome();
        }
        if (fact instanceof Material m) {
            return field.equals("family") ? m.family() : field.equals("vacuum") ? m.vacuum() : m.id();
        }
        return ((Figure) fact).getId();
    }

    private static boolean word(Condition.Is is, Object fact, Map<String, Object> bound) {
        if (fact instanceof Material m) {
            return m.has(is.argument());
        }
        if (!((is.of().isEmpty() ? fact : bound.get(is.of())) instanceof Figure one)) {
            return false;
        }
        if (is.word().equals("known")) {
            return one.isKnown();
        }
        if (is.word().equals("assumed")) {
            return one.isAssumed();
        }
        if (!is.argument().isEmpty()) {
            return byName(is.word()).test(one, is.argument());
        }
        return (is.other().equals("this") ? fact : bound.get(is.other())) instanceof Figure other
                && byFigure(is.word()).test(one, other);
    }

    private static BiPredicate<Figure, String> byName(String word) {
        return switch (word) {
            case "possiblyAbove" -> Figure::possiblyAbove;
            case "likelyAbove" -> Figure::likelyAbove;
            case "surelyAbove" -> Figure::surelyAbove;
            case "firmlyAbove" -> Figure::firmlyAbove;
            case "possiblyBelow" -> Figure::possiblyBelow;
            case "likelyBelow" -> Figure::likelyBelow;
            case "surelyBelow" -> Figure::surelyBelow;
            case "firmlyBelow" -> Figure::firmlyBelow;
            default -> throw new IllegalStateException("no comparison is called '" + word + "'");
        };
    }

    private static BiPredicate<Figure, Figure> byFigure(String word) {
        return switch (word) {
            case "possiblyAbove" -> Figure::possiblyAbove;
            case "likelyAbove" -> Figure::likelyAbove;
            case "surelyAbove" -> Figure::surelyAbove;
            case "firmlyAbove" -> Figure::firmlyAbove;
            case "possiblyBelow" -> Figure::possiblyBelow;
            case "likelyBelow" -> Figure::likelyBelow;
            case "surelyBelow" -> Figure::surelyBelow;
            case "firmlyBelow" -> Figure::firmlyBelow;
            default -> throw new IllegalStateException("no comparison is called '" + word + "'");
        };
    }
}
