package pourwright.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.rule.Match;
import pourwright.facts.Figure;
import pourwright.facts.Material;
import pourwright.facts.Method;
import pourwright.facts.Refused;
import pourwright.facts.Said;
import pourwright.facts.Shown;
import pourwright.facts.Unknown;

/**
 * Where rules hand their conclusions: one verb each. It notes which rule spoke and which facts it had matched, so that
 * every conclusion can be explained. One per session.
 */
public final class Advice extends DefaultAgendaEventListener {
    private final Map<String, RuleCard> cards;
    private final List<Conclusion> conclusions = new ArrayList<>();
    private Match current;

    Advice(Map<String, RuleCard> cards) {
        this.cards = cards;
    }

    @Override
    public void beforeMatchFired(BeforeMatchFiredEvent event) {
        current = event.getMatch();
    }

    /** No allowed way works, or someone could be hurt. */
    public void stop(String say) {
        conclude(Verb.STOP, "", say);
    }

    /** The job as described must change. */
    public void change(String say) {
        conclude(Verb.CHANGE, "", say);
    }

    /** Something to do. */
    public void suggest(String say) {
        conclude(Verb.DO, "", say);
    }

    /** Something to weigh up. */
    public void consider(String say) {
        conclude(Verb.CONSIDER, "", say);
    }

    /** Something to know. */
    public void note(String say) {
        conclude(Verb.NOTE, "", say);
    }

    /** A hazard is present; its words stand in the knowledge of cautions. */
    public void caution(String id) {
        conclude(Verb.CAUTION, id, "");
    }

    /** A question is worth asking. */
    public void need(String question) {
        conclude(Verb.NEED, question, "");
    }

    /** A way of working fits the job. */
    public void choose(String method, String say) {
        conclude(Verb.CHOOSE, method, say);
    }

    /** A way of working is ruled out, whatever else speaks for it. */
    public void refuse(String method, String say) {
        conclude(Verb.REFUSE, method, say);
    }

    /**
     * What to do about one pocket of air: {@code leave}, {@code vent}, {@code vacuum}, {@code tilt} or
     * {@code detail-coat}.
     */
    public void decide(String decision, String say) {
        conclude(Verb.DECIDE, decision, say);
    }

    /** Evidence for a cause; strength is {@code decisive}, {@code strong}, {@code moderate} or {@code slight}. */
    public void speaksFor(String cause, String strength) {
        conclude(Verb.SPEAKS_FOR, cause, strength);
    }

    /** Evidence against a cause, in the same strengths. */
    public void speaksAgainst(String cause, String strength) {
        conclude(Verb.SPEAKS_AGAINST, cause, strength);
    }

    /** The way of working makes a cause impossible. */
    public void rulesOut(String cause) {
        conclude(Verb.RULES_OUT, cause, "");
    }

    /** Two answers cannot both be true; the sentence asks which is right. */
    public void contradicts(String first, String second, String say) {
        conclude(Verb.CONTRADICTS, first + " " + second, say);
    }

    private void conclude(Verb verb, String target, String say) {
        TreeSet<String> answers = new TreeSet<>();
        TreeSet<String> figures = new TreeSet<>();
        TreeSet<String> methods = new TreeSet<>();
        List<Said> said = new ArrayList<>();
        for (Object fact : current.getObjects()) {
            if (fact instanceof Figure f) {
                figures.add(f.getId());
                answers.addAll(f.getAnswers());
            } else if (fact instanceof Said s) {
                answers.add(s.question());
                said.add(s);
            } else if (fact instanceof Unknown u) {
                answers.add(u.question());
            } else if (fact instanceof Shown s) {
                answers.add(s.question());
            } else if (fact instanceof Material) {
                answers.add("material");
            } else if (fact instanceof Method m) {
                methods.add(m.what());
            } else if (fact instanceof Refused r) {
                methods.add(r.what());
            }
        }
        RuleCard card = cards.get(current.getRule().getName());
        conclusions.add(new Conclusion(card, verb, target, say, answers, figures, methods, List.copyOf(said)));
    }

    List<Conclusion> conclusions() {
        return List.copyOf(conclusions);
    }
}
