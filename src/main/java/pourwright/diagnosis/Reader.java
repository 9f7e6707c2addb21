package pourwright.diagnosis;

import java.util.Optional;
import pourwright.facts.Said;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Question;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.Verb;

/** Reads a rule's conclusion as evidence: strength words become decibans, observations their fact. */
final class Reader {
    private final DiagnosticKnowledge k;
    private final Scale scale;

    Reader(DiagnosticKnowledge k) {
        this.k = k;
        this.scale = new Scale(k.base());
    }

    /** The evidence in a conclusion; none when it concludes something else. */
    Optional<Evidence> evidence(Conclusion c) {
        if (c.verb() != Verb.SPEAKS_FOR && c.verb() != Verb.SPEAKS_AGAINST) {
            return Optional.empty();
        }
        if (!k.causes().containsKey(c.target())) {
            throw new IllegalStateException("no cause is called '" + c.target() + "'");
        }
        int weight = scale.decibans(c.say());
        String about =
                c.said().isEmpty() ? c.figures().first() : c.said().get(0).question();
        String choice = c.said().isEmpty() ? "" : c.said().get(0).choice();
        return Optional.of(new Evidence(
                c.target(), c.verb() == Verb.SPEAKS_FOR ? weight : -weight, fact(c, about), about, choice, c));
    }

    private String fact(Conclusion c, String about) {
        if (!c.rule().fact().isEmpty()) {
            return c.rule().fact();
        }
        return c.said().stream()
                .map(Said::question)
                .findFirst()
                .flatMap(k::observation)
                .map(Question::fact)
                .orElse(about);
    }
}
