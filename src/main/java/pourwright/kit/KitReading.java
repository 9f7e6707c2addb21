package pourwright.kit;

import pourwright.kitfit.Reading;

/**
 * One reading of the gauge, as it was typed and as it is meant.
 *
 * @param typed      the pressure as it was typed, with its unit
 * @param timeS      time on the clock of the test, s
 * @param pressurePa absolute pressure, Pa
 */
public record KitReading(String typed, double timeS, double pressurePa) {
    Reading reading() {
        return new Reading(timeS, pressurePa);
    }
}
