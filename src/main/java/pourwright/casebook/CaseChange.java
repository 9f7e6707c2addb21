package pourwright.casebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;

/**
 * What differs between a case as it was recorded and as the rules of now judge it, and which rules make the difference.
 *
 * @param verdictWas the recorded verdict, empty for a diagnosis
 * @param verdictIs the verdict now
 * @param come findings that are new
 * @param gone findings that are no more
 * @param causesWere the first causes as recorded
 * @param causesAre the first causes now
 * @param speaks for each cause the rules that speak for or against it now
 * @param leftOut rules that were left out on purpose
 */
public record CaseChange(
        String verdictWas,
        String verdictIs,
        List<String> come,
        List<String> gone,
        List<String> causesWere,
        List<String> causesAre,
        Map<String, List<String>> speaks,
        Set<String> leftOut) {
    /** Compares a case with what is found now. */
    public static CaseChange between(CaseFile was, CaseFile is, Map<String, List<String>> speaks, Set<String> leftOut) {
        return new CaseChange(
                was.verdict(),
                is.verdict(),
                is.findings().stream()
                        .filter(f -> !was.findings().contains(f))
                        .distinct()
                        .toList(),
                was.findings().stream()
                        .filter(f -> !is.findings().contains(f))
                        .distinct()
                        .toList(),
                was.causes(),
                is.causes(),
                speaks,
                leftOut);
    }

    /** True when nothing differs. */
    public boolean none() {
        return verdictWas.equals(verdictIs) && come.isEmpty() && gone.isEmpty() && causesWere.equals(causesAre);
    }

    /** Each difference as a line, with its rule. */
    public List<String> lines() {
        List<String> out = new ArrayList<>();
        if (!verdictWas.equals(verdictIs)) {
            out.add("the verdict was " + verdictWas + " and is " + verdictIs);
        }
        come.forEach(f -> out.add("new: " + f + " ("
                + rule(f).map(r -> "rule " + r.folder() + "/" + r.id()).orElse("no rule of now") + " speaks now)"));
        gone.forEach(f -> out.add("gone: " + f + " (" + why(f) + ")"));
        if (!causesWere.equals(causesAre)) {
            out.add("the first causes were " + causesWere + " and are " + causesAre + by());
        }
        return out;
    }

    private String why(String finding) {
        Optional<RuleCard> rule = rule(finding);
        if (leftOut.contains(finding)) {
            return "its rule is left out";
        }
        return rule.map(r -> "rule " + r.folder() + "/" + r.id() + " is silent now")
                .orElse("there is no such rule any more");
    }

    /** The rules that speak about the causes which moved, those that fell out of the first ones too. */
    private String by() {
        String moved = Stream.concat(causesAre.stream(), causesWere.stream())
                .distinct()
                .filter(c -> causesAre.indexOf(c) != causesWere.indexOf(c))
                .map(c -> c + " ("
                        + String.join(", ", speaks.getOrDefault(c, List.of("no rule speaks for or against it now")))
                        + ")")
                .collect(Collectors.joining("; "));
        return moved.isEmpty() ? "" : "; about those that moved speak now: " + moved;
    }

    private static Optional<RuleCard> rule(String finding) {
        return RuleBook.card(finding);
    }
}
