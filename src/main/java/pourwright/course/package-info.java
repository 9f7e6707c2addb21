/**
 * A plan's degas, and its cure and warmth with or without a vacuum, followed from minute to minute: the simulation of {@link pourwright.degas}, fed with the figures of a
 * consultation. Three runs, one with every input at its quick end, one typical and one at the slow end, give each result
 * its range. Pure: no clock, no file, no chance.
 */
package pourwright.course;
