package pourwright.ask;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pourwright.rulebook.Condition;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;
import pourwright.rulebook.RuleText;

/**
 * Which answers can bear on what is wanted, read from the rules themselves. Where no rule on the way compares a figure,
 * the answers named are all there are, and a search over them is a proof.
 */
final class Reach {
    private final Set<String> questions = new TreeSet<>();
    private final Set<String> figures = new TreeSet<>();
    private final Set<String> methodsSeen = new HashSet<>();
    private final List<RuleText> rules = new ArrayList<>();
    private boolean closed = true;

    private Reach() {}

    static Reach of(Wanted wanted) {
        Reach r = new Reach();
        switch (wanted.kind()) {
            case FINDING -> WantedWords.card(wanted).ifPresent(c -> r.rules.add(r.follow(c)));
            case METHOD -> r.method(wanted.id(), true);
            case VERDICT -> r.verdict(wanted.id());
        }
        return r;
    }

    /** The rules of which any one would do; none where what is wanted is that rules are silent. */
    List<Alternative> alternatives() {
        return rules.stream().map(Alternative::new).toList();
    }

    /** True when only the answers to {@link #questions} can bear on it. */
    boolean closed() {
        return closed;
    }

    /** Ids of the figures that rules on the way compare. */
    Set<String> figures() {
        return figures;
    }

    /** Ids of the questions that rules on the way name. */
    Set<String> questions() {
        return questions;
    }

    private void verdict(String word) {
        closed = false;
        for (RuleCard c : RuleBook.judge().cards()) {
            RuleText t = RuleText.of(c);
            if (t.then().stream().anyMatch(call -> call.verb().equals(word))) {
                rules.add(t);
            }
        }
    }

    private void method(String id, boolean wanted) {
        if (!methodsSeen.add(id)) {
            return;
        }
        for (RuleCard c : RuleBook.method().cards()) {
            RuleText t = RuleText.of(c);
            for (RuleText.Call call : t.then()) {
                if (Set.of("choose", "refuse").contains(call.verb())
                        && call.words().get(0).equals(id)) {
                    read(t.when());
                    if (wanted && call.verb().equals("choose")) {
                        rules.add(t);
                    }
                }
            }
        }
    }

    private RuleText follow(RuleCard card) {
        RuleText text = RuleText.of(card);
        read(text.when());
        for (RuleText.Call call : text.then()) {
            if (call.verb().equals("choose")) {
                method(call.words().get(0), false);
            }
        }
        return text;
    }

    private void read(List<Condition> conditions) {
        for (Condition c : conditions) {
            if (c instanceof Condition.Not not) {
                read(not.all());
            } else {
                read((Condition.Fact) c);
            }
        }
    }

    private void read(Condition.Fact fact) {
        switch (fact.type()) {
            case "Material" -> questions.add("material");
            case "Said", "Unknown" -> fact.tests().forEach(t -> named(t, "question", questions));
            case "Method", "Refused" -> {
                Set<String> methods = new TreeSet<>();
                fact.tests().forEach(t -> named(t, "what", methods));
                methods.forEach(m -> method(m, false));
            }
            // What a figure rests on is known only when it is computed.
            default -> {
                closed = false;
                fact.tests().forEach(t -> named(t, "id", figures));
            }
        }
        if (questions.contains("ratio-by")) {
            questions.add("mix-ratio");
        }
    }

    private void named(Condition.Test test, String field, Set<String> into) {
        if (test instanceof Condition.OneOf one && one.field().equals(field)) {
            into.addAll(one.values());
            closed &= !one.not();
        } else if (test instanceof Condition.Any any) {
            any.some().forEach(t -> named(t, field, into));
        }
    }
}
