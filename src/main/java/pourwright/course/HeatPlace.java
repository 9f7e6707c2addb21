package pourwright.course;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.degas.CureSample;

/**
 * Cure and warmth in one place.
 *
 * @param where cup or mould
 * @param results what comes of it, by name; times count from the start of mixing
 * @param startS when the mix came there, s from the start of mixing
 * @param samples the typical run; times count from then
 */
public record HeatPlace(
        String where, Map<String, StageCourse.Result> results, double startS, List<CureSample> samples) {
    /** More would not show in a picture. */
    static final int MOST_SAMPLES = 61;

    public HeatPlace {
        results = Collections.unmodifiableMap(new LinkedHashMap<>(results));
        samples = List.copyOf(samples);
    }
}
