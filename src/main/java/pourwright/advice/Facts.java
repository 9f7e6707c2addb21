package pourwright.advice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Figure;
import pourwright.facts.Limits;
import pourwright.facts.Material;
import pourwright.facts.Method;
import pourwright.facts.Refused;
import pourwright.facts.Said;
import pourwright.facts.Unknown;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;

/** Turns answers and figures into the facts that rules match. */
public final class Facts {
    private Facts() {}

    /** The facts a plan is judged by: an open question is a fact of its own. */
    static List<Object> ofPlan(
            Answers answers, Knowledge knowledge, MaterialClass material, Map<String, FigureValue> figures) {
        List<Object> facts = new ArrayList<>(said(answers, knowledge.questions()));
        facts.add(0, material(material));
        Optional<String> opened = opened(answers, knowledge, material, figures);
        opened.ifPresent(choice -> facts.add(new Said(OPENED, choice)));
        for (Question q : knowledge.questions()) {
            if (answers.get(q.id()).isEmpty()
                    && implied(answers, q.id()).isEmpty()
                    && !(q.id().equals(OPENED) && opened.isPresent())) {
                facts.add(new Unknown(q.id()));
            }
        }
        Limits limits = knowledge.limits();
        figures.values().forEach(v -> facts.add(figure(v, limits)));
        return facts;
    }

    /** The facts that a finished plan was judged by. */
    public static List<Object> of(Consultation c, Knowledge knowledge) {
        MaterialClass material = knowledge.materials().get(c.answers().choice("material"));
        List<Object> facts = ofPlan(c.answers(), knowledge, material, c.figures());
        c.methods().forEach(m -> facts.add(new Method(m)));
        c.refused().forEach(r -> facts.add(new Refused(r)));
        return facts;
    }

    /** The material as a fact. */
    public static Material material(MaterialClass m) {
        return new Material(m.id(), m.family(), m.vacuum(), m.traits());
    }

    /** One fact per choice made, in the order of the questions. */
    public static List<Said> said(Answers answers, Collection<Question> questions) {
        List<Said> said = new ArrayList<>();
        for (Question q : questions) {
            List<String> choices = answers.choices(q.id());
            (choices.isEmpty() ? implied(answers, q.id()).stream().toList() : choices)
                    .forEach(c -> said.add(new Said(q.id(), c)));
        }
        return said;
    }

    /** The choice that another answer makes along with its own: "2:1 by volume" says how it is measured, too. */
    static Optional<String> implied(Answers answers, String question) {
        return question.equals("ratio-by")
                        && answers.get("mix-ratio").orElse(null) instanceof Answer.Ratio r
                        && !r.by().isEmpty()
                ? Optional.of(r.by())
                : Optional.empty();
    }

    /** The question how long the cans have been open, which a list of cans answers along with its own. */
    static final String OPENED = "stock";

    /**
     * How long the cans have been open, by the words of that question, where every part that was weighed out of a can has
     * its list of cans and nobody answered the question itself.
     */
    static Optional<String> opened(
            Answers answers, Knowledge knowledge, MaterialClass material, Map<String, FigureValue> figures) {
        boolean oneCan = List.of("none", "water").contains(material.mix().by());
        boolean listed = !answers.text("cans-first").isEmpty()
                && (oneCan || !answers.text("cans-second").isEmpty());
        if (answers.has(OPENED) || !listed) {
            return Optional.empty();
        }
        FigureValue longest = figures.get("opened-longest");
        double openS = longest == null ? 0 : longest.si().typical();
        if (openS > knowledge.guidelineSi("open-a-year")) {
            return Optional.of("year");
        }
        if (openS > knowledge.guidelineSi("open-some-months")) {
            return Optional.of("months");
        }
        return Optional.of(openS > knowledge.guidelineSi("open-some-weeks") ? "weeks" : "fresh");
    }

    /** A figure as a fact. */
    public static Figure figure(FigureValue v, Limits limits) {
        return new Figure(v.id(), v.si(), v::basis, List.copyOf(v.answers()), limits);
    }
}
