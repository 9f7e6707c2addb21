/**
 * A plan on one page for the wall of the workshop: what to weigh, when to do what, what to look out for. Pure: the page is
 * made from a consultation, and written by whoever asked for it.
 */
package pourwright.sheet;
