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
public record Against(String result, String figure, Estimate here, Estimate plan, Dimension dimension, boolean agree) {}
