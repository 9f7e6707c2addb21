package pourwright.degas;

import java.util.Optional;
import pourwright.physics.Pump;
import pourwright.physics.VacuumLine;

/** Usual jobs that the tests start from. */
final class Jobs {

    static final double AIR_PA = 101_325;
    static final double ROOM_K = 296.15;

    private Jobs() {}

    /** A mould silicone: 20 Pa s, working time 40 min on 100 g, next to no heat; typical data sheet values. */
    static Mix silicone(double viscosityPaS) {
        Reaction reaction = Reaction.of(CureShape.SECOND_ORDER, 1e-4, ROOM_K, 50e3, 0.6, 3);
        Mix mix = new Mix(1150, viscosityPaS, ROOM_K, 15e3, 0.5, 0.021, 1.25, 5, 1460, 0.2, reaction, Optional.empty());
        return WorkingTime.fitted(mix, new Rating(40 * 60, 0.1, ROOM_K, Rating.End.GEL));
    }

    static VacuumKit kit(double freeM3, double emptiedInS, double ultimatePa) {
        double speed = freeM3 / emptiedInS * Math.log((AIR_PA - ultimatePa) / (3000 - ultimatePa));
        return new VacuumKit(freeM3, new Pump(speed, ultimatePa), VacuumLine.NONE, 0, AIR_PA, ultimatePa);
    }
}
