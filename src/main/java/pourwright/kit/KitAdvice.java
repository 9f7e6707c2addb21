package pourwright.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.advice.Finding;
import pourwright.advice.Verdict;
import pourwright.facts.Answers;
import pourwright.figures.FigureValue;
import pourwright.kitfit.KitDrift;
import pourwright.kitfit.KitState;
import pourwright.kitfit.PumpDownFit;
import pourwright.kitfit.RateOfRise;
import pourwright.rulebook.Conclusion;

/**
 * What was found about a kit.
 *
 * @param answers      what was said
 * @param verdict      {@code go} fit for the work, {@code change} after a repair that is named, {@code stop} unsafe
 * @param findings     advice, strongest first
 * @param figures      what the tests gave, by id
 * @param fallReadings the pump-down as absolute pressures
 * @param riseReadings the rise as absolute pressures
 * @param fall         the fitted pump-down, if there was one
 * @param rise         the judged rise, if there was one
 * @param state        both put together, where the pump-down told a speed and a base
 * @param sizing       pumps for the materials that were named, if any were
 * @param conclusions  all that the rules concluded
 * @param assumed      questions whose usual value stood in for an answer
 * @param unasked      questions that bear on this and have no answer
 */
public record KitAdvice(
        Answers answers,
        Verdict verdict,
        List<Finding> findings,
        Map<String, FigureValue> figures,
        List<KitReading> fallReadings,
        List<KitReading> riseReadings,
        Optional<PumpDownFit> fall,
        Optional<RateOfRise> rise,
        Optional<KitState> state,
        Optional<Sizing> sizing,
        List<Conclusion> conclusions,
        List<String> assumed,
        List<String> unasked) {
    /** Ids of the rules that spoke, sorted, each once. */
    public List<String> rulesFired() {
        return conclusions.stream().map(c -> c.rule().id()).distinct().sorted().toList();
    }

    /** A figure by id. */
    public Optional<FigureValue> figure(String id) {
        return Optional.ofNullable(figures.get(id));
    }

    /** True when there is something worth keeping for later: a speed, a base or a leak. */
    public boolean measured() {
        return figure("effective-speed-measured").isPresent()
                || figure("leak-rate-measured").isPresent();
    }

    /** What goes into the history, as measured on a day. */
    public KitDrift.Test test(long day) {
        return new KitDrift.Test(
                day, value("effective-speed-measured"), value("base-pressure-measured"), value("leak-rate-measured"));
    }

    private java.util.OptionalDouble value(String id) {
        return figure(id)
                .map(v -> java.util.OptionalDouble.of(v.si().typical()))
                .orElse(java.util.OptionalDouble.empty());
    }
}
