package pourwright.degas;

import pourwright.physics.PhysicsException;
import pourwright.physics.Require;

/**
 * Working time to gel and peak temperature for one mass, vessel and room, scaled to a material's own rating.
 *
 * <p>The speed of the reaction is set so that the rated mass, in a thin cup as high as wide, ends its rated time exactly.
 * Warming of the rated mass is therefore in the rating, as it is in the cup. Source of the parts: Arrhenius law, heat
 * balance of one temperature with a Biot number; see {@link CureCourse}.
 *
 * <p>A cup of fast resin keeps nearly all its heat already, so mass above the rated one hardly shortens it here: an epoxy of
 * 25 min gels in 24 min at ten times the mass. One of 8 h gels in 4.9 h. Habit says more for the fast one (power 0.4 of the
 * mass); take the shorter of the two. Trust the time within a third, the rise within a quarter while the Biot number is
 * below 1 (from memory); no published table of peak against mass could be found.
 *
 * @param gelS       time from mixing to gel, s; infinite when it is not reached
 * @param workableS  time from mixing to the end that the rating means, s
 * @param peakK      highest mean temperature of the mix, K
 * @param peakS      when it is hottest, s from mixing
 * @param biot       resistance to heat inside over outside; above about 1 the core is hotter than the peak here
 */
public record WorkingTime(double gelS, double workableS, double peakK, double peakS, double biot) {

    /** Doublings of the speed searched to either side of the first guess. */
    private static final int MOST_DOUBLINGS = 200;

    private static final int MOST_TURNS = 200;
    private static final double EXACT = 1e-12;

    /**
     * The working time.
     *
     * @param mix    the mix, with its reaction already {@link #fitted}
     * @param end    what ends the workable time
     * @param massKg mass, kg, above zero
     * @param vessel what holds it
     * @param roomK  temperature of the room, K
     * @param startK temperature of the mix at the start, K
     * @return the working time
     * @throws PhysicsException when a value is not a number or out of its range
     */
    public static WorkingTime of(Mix mix, Rating.End end, double massKg, Vessel vessel, double roomK, double startK) {
        CureCourse course = CureCourse.of(mix, massKg, vessel, roomK, startK, 0);
        return new WorkingTime(
                course.gelS(),
                endS(course, end),
                course.peakK(),
                course.peakS(),
                vessel.biot(massKg / mix.density(), mix.conductivityWPerMK()));
    }

    /**
     * The mix with the speed of its reaction set to a rating.
     *
     * @param mix    the mix; the shape, energy, heat and gel conversion of its reaction are kept
     * @param rating the data sheet's rating
     * @return the mix that ends its rated time exactly
     * @throws PhysicsException when no speed does
     */
    public static Mix fitted(Mix mix, Rating rating) {
        return fitted(mix, rating, Vessel.cupAsHighAsWide(rating.massKg() / mix.density()));
    }

    /**
     * The same for a rating that was measured in a known vessel.
     *
     * @param mix    the mix
     * @param rating the rating
     * @param vessel the vessel of the rating
     * @return the mix that ends its rated time exactly
     * @throws PhysicsException when no speed does
     */
    public static Mix fitted(Mix mix, Rating rating, Vessel vessel) {
        Require.given("mix", mix);
        Require.given("rating", rating);
        // Logarithm of the speed against logarithm of the time falls with a slope of at least one.
        double low = 0;
        double high = 0;
        double start = excess(mix, rating, vessel, 0);
        double lowExcess = start;
        double highExcess = start;
        for (int i = 0; i < MOST_DOUBLINGS && !(highExcess <= 0); i++) {
            low = high;
            lowExcess = highExcess;
            high += Math.max(Math.log(2), Double.isFinite(highExcess) ? highExcess : 0);
            highExcess = excess(mix, rating, vessel, high);
        }
        for (int i = 0; i < MOST_DOUBLINGS && !(lowExcess >= 0); i++) {
            high = low;
            highExcess = lowExcess;
            low -= Math.max(Math.log(2), -lowExcess);
            lowExcess = excess(mix, rating, vessel, low);
        }
        if (!(lowExcess >= 0 && highExcess <= 0)) {
            throw new PhysicsException("No speed of the reaction ends after the rated " + rating.timeS() + " s.");
        }
        double middle = high;
        int kept = 0;
        for (int turn = 0; turn < MOST_TURNS && high - low > EXACT; turn++) {
            // Regula falsi with the Illinois rule: sure as halving, and a few turns instead of forty.
            double share = Double.isFinite(lowExcess) ? lowExcess / (lowExcess - highExcess) : 0.5;
            middle = low + share * (high - low);
            double found = excess(mix, rating, vessel, middle);
            if (Math.abs(found) <= EXACT) {
                break;
            }
            if (found > 0) {
                low = middle;
                lowExcess = found;
                highExcess = kept > 0 ? highExcess / 2 : highExcess;
                kept = 1;
            } else {
                high = middle;
                highExcess = found;
                lowExcess = kept < 0 ? lowExcess / 2 : lowExcess;
                kept = -1;
            }
        }
        return mix.with(mix.reaction().faster(Math.exp(middle)));
    }

    /** Logarithm of the time found over the time rated, with the reaction made faster by a factor of e^logSpeed. */
    private static double excess(Mix mix, Rating rating, Vessel vessel, double logSpeed) {
        Mix tried = mix.with(mix.reaction().faster(Math.exp(logSpeed)));
        CureCourse course =
                CureCourse.of(tried, rating.massKg(), vessel, rating.temperatureK(), rating.temperatureK(), 0);
        return Math.log(endS(course, rating.end()) / rating.timeS());
    }

    private static double endS(CureCourse course, Rating.End end) {
        return end == Rating.End.GEL ? course.gelS() : course.doubledS();
    }
}
