/**
 * What a vacuum kit can do, from its own gauge readings: fits of a pump-down and of a rate-of-rise test, with errors.
 *
 * <p>The models: a chamber of constant effective speed falls exponentially to its base pressure. A closed chamber rises
 * on a straight line by a leak, toward a level by outgassing or vapour, or both. The sources stand at each class.
 * Left out: the change of speed with pressure (it is noticed, not fitted), temperature drift, and gauge non-linearity.
 * Trust a fit as far as its interval, which holds only while the model fits; its verdict says when it does not.
 *
 * <p>A fit never throws for readings that cannot tell: it gives a verdict and the numbers behind it. Pure functions in SI.
 */
package pourwright.kitfit;
