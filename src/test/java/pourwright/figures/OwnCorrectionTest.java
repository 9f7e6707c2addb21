package pourwright.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import pourwright.facts.Estimate;

/** A workshop's own runs against Bayes' rule done by brute force, and at its limits. */
class OwnCorrectionTest {
    private static final double SCATTER = 0.15;
    private static final double DOUBT = 0.2;
    private static final double TENTH = 1.2816;

    private static OwnCorrection corrected(Estimate e, double... ratios) {
        return OwnCorrection.updated(e, DoubleStream.of(ratios).map(Math::log).toArray(), SCATTER, DOUBT);
    }

    /** Prior times likelihood on a fine grid of the logarithm; the mean of what comes out. */
    private static double bruteForce(double priorSd, double eachSd, double[] ratios) {
        double sum = 0;
        double weight = 0;
        for (double x = -4; x <= 4; x += 0.0005) {
            double log = -x * x / (2 * priorSd * priorSd);
            for (double r : ratios) {
                double off = Math.log(r) - x;
                log -= off * off / (2 * eachSd * eachSd);
            }
            double w = Math.exp(log);
            sum += w * x;
            weight += w;
        }
        return sum / weight;
    }

    @Test
    void theUpdateIsBayesRule() {
        SplittableRandom random = new SplittableRandom(5);
        for (int n = 0; n < 40; n++) {
            double wide = random.nextDouble(1.3, 4);
            Estimate e = new Estimate(100 / wide, 100, 100 * wide);
            double[] ratios = random.doubles(random.nextInt(1, 6), 0.4, 2.5).toArray();
            double expected = bruteForce(Math.log(wide) / TENTH, Math.log(1 + SCATTER), ratios);
            assertThat(Math.log(corrected(e, ratios).factor())).isCloseTo(expected, within(1e-6));
        }
    }

    @Test
    void manyRunsDecideAndOneMovesPartOfTheWay() {
        Estimate e = new Estimate(60, 100, 170);
        double one = corrected(e, 1.6).factor();
        assertThat(one).isBetween(1.2, 1.6);
        double[] forty = DoubleStream.generate(() -> 1.6).limit(40).toArray();
        assertThat(corrected(e, forty).factor()).isCloseTo(1.6, within(0.01));
    }

    @Test
    void aWiderBandTrustsTheRunsMore() {
        double narrow = corrected(new Estimate(90, 100, 110), 1.5).factor();
        double wide = corrected(new Estimate(30, 100, 300), 1.5).factor();
        assertThat(narrow).isLessThan(wide);
        // Even a figure without a band is doubted a little.
        assertThat(corrected(Estimate.exactly(100), 1.5).factor()).isGreaterThan(1.2);
    }

    @Test
    void theBandNeverGrows() {
        SplittableRandom random = new SplittableRandom(6);
        for (int n = 0; n < 500; n++) {
            Estimate e = new Estimate(100 / random.nextDouble(1, 5), 100, 100 * random.nextDouble(1, 5));
            OwnCorrection c =
                    corrected(e, random.doubles(random.nextInt(1, 9), 0.3, 3).toArray());
            assertThat(c.si().high() / c.si().typical()).isLessThanOrEqualTo(e.high() / e.typical() * (1 + 1e-12));
            assertThat(c.si().typical() / c.si().low()).isLessThanOrEqualTo(e.typical() / e.low() * (1 + 1e-12));
        }
    }

    @Test
    void aSlipOfTheClockCountsForNothing() {
        assertThat(OwnCorrection.usable(11)).isEmpty();
        assertThat(OwnCorrection.usable(0.05)).isEmpty();
        assertThat(OwnCorrection.usable(0)).isEmpty();
        assertThat(OwnCorrection.usable(Double.NaN)).isEmpty();
        assertThat(OwnCorrection.usable(1.4)).hasValue(1.4);
    }
}
