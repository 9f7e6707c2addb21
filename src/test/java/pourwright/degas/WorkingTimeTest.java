package pourwright.degas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import pourwright.physics.PhysicsException;
import pourwright.testing.Generated;

class WorkingTimeTest {

    private static WorkingTime inCup(Mix mix, Rating.End end, double massKg, double roomK) {
        return WorkingTime.of(mix, end, massKg, Vessel.cupAsHighAsWide(massKg / mix.density()), roomK, roomK);
    }

    private static Mix resin(Generated any, Rating rating) {
        return WorkingTime.fitted(
                CureCourseTest.resin(
                        any.pick(CureShape.SECOND_ORDER, CureShape.SELF_FEEDING),
                        any.uniform(40e3, 80e3),
                        any.uniform(0.4, 0.7),
                        any.uniform(0, 200)),
                rating);
    }

    private static Rating rating(Generated any) {
        return new Rating(
                any.logUniform(120, 50_000),
                any.logUniform(0.05, 0.5),
                any.uniform(293.15, 298.15),
                any.pick(Rating.End.GEL, Rating.End.DOUBLED));
    }

    @Test
    void repeats_its_own_rating_exactly() {
        Generated.tries(811, 150).forEach(any -> {
            Rating rating = rating(any);
            WorkingTime found = inCup(resin(any, rating), rating.end(), rating.massKg(), rating.temperatureK());
            assertThat(found.workableS()).as("%s", any).isCloseTo(rating.timeS(), withinPercentage(1e-6));
        });
    }

    @Test
    void more_mass_is_never_longer_and_never_cooler() {
        Generated.tries(812, 150).forEach(any -> {
            Rating rating = rating(any);
            Mix mix = resin(any, rating);
            double massKg = rating.massKg() * any.logUniform(0.2, 10);
            WorkingTime one = inCup(mix, rating.end(), massKg, rating.temperatureK());
            WorkingTime two = inCup(mix, rating.end(), 2 * massKg, rating.temperatureK());
            assertThat(two.workableS()).as("%s", any).isLessThanOrEqualTo(one.workableS() * (1 + 1e-3));
            assertThat(two.peakK()).as("%s", any).isGreaterThanOrEqualTo(one.peakK() - 0.1);
            assertThat(one.gelS()).as("%s", any).isGreaterThanOrEqualTo(one.workableS() * (1 - 1e-9));
        });
    }

    @Test
    void cooler_is_always_longer() {
        Generated.tries(813, 150).forEach(any -> {
            Rating rating = rating(any);
            Mix mix = resin(any, rating);
            double warm = inCup(mix, rating.end(), rating.massKg(), 303).workableS();
            double cool = inCup(mix, rating.end(), rating.massKg(), 293).workableS();
            assertThat(cool).as("%s", any).isGreaterThan(warm);
        });
    }

    @Test
    void ten_kelvin_halve_the_time_at_the_published_energy() {
        // "10 K hotter halves the pot life" (technical page of an epoxy maker, 18 F) is 51.2 kJ/mol from 20 to 30 °C,
        // where no heat stays in the mix.
        Mix mix = WorkingTime.fitted(
                CureCourseTest.resin(CureShape.SELF_FEEDING, 51.2e3, 0.6, 0),
                new Rating(3600, 0.1, 293.15, Rating.End.GEL));
        double warmS = inCup(mix, Rating.End.GEL, 0.1, 303.15).gelS();
        assertThat(3600 / warmS).isCloseTo(2, within(0.005));
    }

    private static Mix epoxy(double ratedS) {
        return WorkingTime.fitted(
                CureCourseTest.resin(CureShape.SELF_FEEDING, 55e3, 0.6, 200),
                new Rating(ratedS, 0.1, 298.15, Rating.End.GEL));
    }

    @Test
    void a_cup_of_fast_resin_is_nearly_adiabatic() {
        // "The gel test in a cup is essentially an adiabatic test": Richter and Macosko, Polym. Eng. Sci. 20, 1980. An
        // epoxy rated 15 min on 100 g gels in its cup hardly later than in a perfect flask.
        Mix fast = epoxy(900);
        WorkingTime flask = WorkingTime.of(fast, Rating.End.GEL, 0.1, Vessel.PERFECT_FLASK, 298.15, 298.15);
        assertThat(flask.gelS()).isBetween(0.93 * 900, 900.0);
        // So more mass cannot shorten it much, and the model says so: 41 times the mass, a US gallon.
        WorkingTime gallon = inCup(fast, Rating.End.GEL, 3.785e-3 * 1100, 298.15);
        assertThat(gallon.gelS()).isBetween(flask.gelS(), 0.97 * 900);
        assertThat(gallon.biot()).isGreaterThan(1);
    }

    @Test
    void a_slow_resin_depends_on_its_mass() {
        // Rated 8 h on 100 g: the cup loses its heat, a gallon keeps it. Common practice gives mass a power of 0.25 to
        // 0.55, within a factor of ten of the rated mass; this comes out of the heat balance alone.
        Mix slow = epoxy(8 * 3600);
        double oneS = inCup(slow, Rating.End.GEL, 0.1, 298.15).gelS();
        double tenS = inCup(slow, Rating.End.GEL, 1, 298.15).gelS();
        double power = Math.log(oneS / tenS) / Math.log(10);
        assertThat(power).isBetween(0.15, 0.55);
        assertThat(inCup(slow, Rating.End.GEL, 1, 298.15).peakK())
                .isGreaterThan(inCup(slow, Rating.End.GEL, 0.1, 298.15).peakK() + 20);
    }

    @Test
    void refuses_impossible_ratings() {
        assertThatThrownBy(() -> new Rating(0, 0.1, 293, Rating.End.GEL)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> new Rating(10, Double.NaN, 293, Rating.End.GEL))
                .isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> new Rating(10, 0.1, 293, null)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> new Vessel(-1, 1, 0)).isInstanceOf(PhysicsException.class);
        assertThatThrownBy(() -> Reaction.of(CureShape.SECOND_ORDER, 1, 293, 5e4, 1, 0))
                .isInstanceOf(PhysicsException.class);
    }
}
