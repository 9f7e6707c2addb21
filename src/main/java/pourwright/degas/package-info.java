/**
 * A degas followed from minute to minute, in the cup and again in the mould, and the cure that sets its clock.
 *
 * <p>The model: a chamber of one pressure is pumped through its hose and fed by its leak, the vapour and the gas that
 * breaks out of the mix. Bubbles of many sizes swell (Boyle, head, Laplace, vapour), rise hindered where they do not
 * touch (Richardson and Zaki 1954), and break layer by layer where they do (film life of Debregeas, de Gennes and
 * Brochard-Wyart, Science 279:1704, 1998, from memory). The mix warms by its own cure (Kamal and Sourour 1973; Arrhenius;
 * loss by the Biot number) and thickens to gel. The speed of the cure is set to the material's own rating.
 *
 * <p>Left out: dissolved gas that comes or goes, bubbles that merge (but for a bound), bubbles on walls, boiling inside the liquid beyond
 * the swelling of bubbles, uneven temperature, loss of mass over the rim, gas that warms with the mix. Flow is laminar.
 *
 * <p>Trust: times of the froth within a factor of about 2, heights roughly, and air left as an order of magnitude. A mixed
 * 20 Pa s silicone with 2.5 mm bubbles, 70 mm deep, crests at 1.2 min in a chamber emptied in 30 s, as casters expect.
 * In one emptied in 3 min it crests at 4.3 min and begins to fall at 4.9 min. Casters expect 3.5 and 4 min, so it is a
 * quarter late there. Merging would bring both forward: where touching bubbles merge as fast as their films allow, the crest
 * comes at 0.6 and 3.3 min, and half as high. Truth lies between, so a band takes both. Nothing is tuned to these times.
 * Fitted working time repeats the rating exactly; away from it trust a third. Pure functions in SI units, one value for each
 * input: ranges are for the caller.
 */
package pourwright.degas;
