package pourwright.course;

import pourwright.facts.Estimate;
import pourwright.units.Dimension;

/**
 * One result of the course beside the plan's own figure of the same thing.
 *
 * @param result name of the result
 * @param figure id of the plan's figure
 * @param here the result
 * @param plan the plan's figure
 * @param dimension what both measure
 * @param agree true when each lies within the range of the other, or the typical ones within a quarter
 */
public record Against(String result, String figure, Estimate here, Estimate plan, Dimension dimension, boolean agree) {
    private static final double NEAR = 1.25;

    static Against of(String result, String figure, StageCourse.Result here, Estimate plan) {
        double a = here.si().typical();
        double b = plan.typical();
        boolean near = a == b || Math.max(a, b) <= NEAR * Math.min(a, b);
        boolean inside = within(a, plan) && within(b, here.si());
        return new Against(result, figure, here.si(), plan, here.dimension(), near || inside);
    }

    private static boolean within(double v, Estimate e) {
        return e.low() <= v && v <= e.high();
    }
}
