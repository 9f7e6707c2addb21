package pourwright.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.facts.Limits;
import pourwright.units.Dimension;
import pourwright.units.UnitBook;

/**
 * Everything Pourwright knows in numbers and words: read once, never changed, passed in.
 *
 * @param questions every question, in the order a person finds natural
 * @param questionsById the same questions, by id
 * @param materials classes and own materials, by id
 * @param guidelines thresholds, by name
 * @param sources where things come from, by key
 * @param cautions cautions, by id
 * @param closing the sentence that ends every block of cautions
 * @param terms the trade's words
 * @param pumps kinds of pump, by id
 * @param processes ways of working, by id
 * @param agents what can spoil a cure, by id
 * @param steps words of the timetable, by id
 * @param decisions what can be done about a pocket of air, by id, the cheapest sure way first
 * @param remedies changes a workshop can make to a job that does not work
 * @param emergencies what to do first when something goes wrong at the bench
 * @param ownRuns what this workshop's own followed plans measured
 * @param leftOut ids of rules that are left out, to learn what rests on them; none in any advice that is given
 */
public record Knowledge(
        List<Question> questions,
        Map<String, Question> questionsById,
        Map<String, MaterialClass> materials,
        Map<String, Guideline> guidelines,
        Map<String, Source> sources,
        Map<String, Caution> cautions,
        String closing,
        Map<String, Term> terms,
        Map<String, PumpKind> pumps,
        Map<String, WayOfWorking> processes,
        Map<String, Agent> agents,
        Map<String, StepWords> steps,
        Map<String, PocketDecision> decisions,
        List<Remedy> remedies,
        List<Emergency> emergencies,
        List<OwnRun> ownRuns,
        Set<String> leftOut) {

    /** This knowledge with other questions to look up; the questions of a plan stay the same. */
    Knowledge withQuestionsById(Map<String, Question> byId) {
        return with(byId, leftOut);
    }

    /** The same without some rules, so that it can be seen which advice rests on them. */
    public Knowledge without(Set<String> rules) {
        return with(questionsById, Set.copyOf(rules));
    }

    private Knowledge with(Map<String, Question> byId, Set<String> silent) {
        return new Knowledge(
                questions,
                byId,
                materials,
                guidelines,
                sources,
                cautions,
                closing,
                terms,
                pumps,
                processes,
                agents,
                steps,
                decisions,
                remedies,
                emergencies,
                ownRuns,
                silent);
    }

    /** True when some of it is read only when somebody looks into it. */
    boolean isLazy() {
        return sources instanceof Lazily;
    }

    /** Reads what has not been read yet, so that nobody waits for it later; how many things there are. */
    public int readAll() {
        int things = 0;
        for (Map<String, ?> map :
                List.of(materials, guidelines, sources, cautions, terms, pumps, processes, agents, steps, decisions)) {
            things += map.size();
        }
        return things + remedies.size() + emergencies.size();
    }

    /** The question with that id. */
    public Optional<Question> question(String id) {
        return Optional.ofNullable(questionsById.get(id));
    }

    /**
     * A guideline's value in SI.
     *
     * @throws IllegalStateException when no guideline has that name: a fault of the rule or formula that asked
     */
    public double guidelineSi(String name) {
        Guideline g = guidelines.get(name);
        if (g == null) {
            throw new IllegalStateException("no guideline is called '" + name + "'");
        }
        return g.si();
    }

    /** The guidelines as rules see them: in SI, worked out once. */
    public Limits limits() {
        return this::guidelineSi;
    }

    /** The dimension a unit belongs to. */
    public static Dimension dimensionOf(String unit) {
        // "m" is a metre here, though people also type it for minutes.
        if (UnitBook.knows(unit, Dimension.LENGTH)) {
            return Dimension.LENGTH;
        }
        for (Dimension d : Dimension.values()) {
            if (UnitBook.knows(unit, d)) {
                return d;
            }
        }
        throw new IllegalStateException("no unit is called '" + unit + "'");
    }
}
