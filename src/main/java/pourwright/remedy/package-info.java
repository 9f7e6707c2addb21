/**
 * The smallest change that makes a job work, and the region of batches and rooms in which it does. Every candidate is
 * tried by a consultation of its own, so what is offered works by construction. Pure: no clock, no file, no chance.
 */
package pourwright.remedy;
