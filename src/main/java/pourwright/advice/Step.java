package pourwright.advice;

import pourwright.facts.Estimate;

/**
 * One step of a timetable.
 *
 * @param id the step's id
 * @param atS seconds from the start of mixing; negative before it
 * @param lastsS how long it lasts, seconds
 * @param say what to do
 * @param watch what to look for; empty when there is nothing
 */
public record Step(String id, Estimate atS, Estimate lastsS, String say, String watch) {}
