/**
 * A plan followed at the bench: what was done and seen, and when; where the work stands; and what it says about the next
 * estimate. Pure: the time comes in as seconds from the start of mixing.
 */
package pourwright.follow;
