package pourwright.course;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.degas.DegasSample;
import pourwright.facts.Estimate;
import pourwright.units.Dimension;

/**
 * One pull, in the cup or in the mould.
 *
 * @param mould true in the mould
 * @param results what comes of it, by name; times count from the opening of the pump valve
 * @param samples the typical run, in the order of time, s from the opening of the pump valve
 * @param pulledS how long the pump stays on, s
 * @param rimM height of the rim over the floor, m, where the cup is known
 */
public record StageCourse(
        boolean mould, Map<String, Result> results, List<DegasSample> samples, double pulledS, Optional<Double> rimM) {

    /**
     * A result with its range.
     *
     * @param si low, typical and high, SI; infinite where it never comes
     * @param dimension what it measures
     */
    public record Result(Estimate si, Dimension dimension) {}

    public StageCourse {
        results = Collections.unmodifiableMap(new LinkedHashMap<>(results));
        samples = List.copyOf(samples);
    }

    /** False where the bubbles leave so fast that no froth stands, at least in the typical run. */
    public boolean froths() {
        return Double.isFinite(results.get("first-rise").si().typical());
    }

    /** Samples evenly over time, at most that many: enough for a picture. */
    public List<DegasSample> thinned(int most) {
        if (samples.size() <= most) {
            return samples;
        }
        return java.util.stream.IntStream.range(0, most)
                .mapToObj(i -> at(endS() * i / (most - 1)))
                .distinct()
                .toList();
    }

    /** The sample nearest before a time. */
    public DegasSample at(double timeS) {
        DegasSample last = samples.get(0);
        for (DegasSample s : samples) {
            if (s.timeS() > timeS) {
                break;
            }
            last = s;
        }
        return last;
    }

    /** When the last sample was taken. */
    public double endS() {
        return samples.get(samples.size() - 1).timeS();
    }
}
