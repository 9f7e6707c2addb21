package pourwright.degas;

import java.util.Optional;
import pourwright.physics.Cure;
import pourwright.physics.Require;
import pourwright.physics.Viscosity;

/**
 * A mixed casting liquid.
 *
 * @param density             density, kg/m3
 * @param viscosityPaS        viscosity just after mixing at the temperature below, Pa s
 * @param viscosityAtK        temperature of that viscosity, K
 * @param flowEnergyJPerMol   activation energy of flow, J/mol; 0 when warmth does not thin it
 * @param doublingShare       share of the gel time at which the viscosity has doubled at one temperature, 0 to 1
 * @param sigma               surface tension, N/m
 * @param speedFactor         rise speed of a bubble over the Stokes speed, 1 (dirty) to 1.5 (clean)
 * @param frothCap            height factor at which packed bubbles break, 1 or more
 * @param specificHeatJPerKgK specific heat, J/(kg K)
 * @param conductivityWPerMK  heat conductivity, W/(m K)
 * @param reaction            the cure
 * @param vapour              what boils off, if anything
 */
public record Mix(
        double density,
        double viscosityPaS,
        double viscosityAtK,
        double flowEnergyJPerMol,
        double doublingShare,
        double sigma,
        double speedFactor,
        double frothCap,
        double specificHeatJPerKgK,
        double conductivityWPerMK,
        Reaction reaction,
        Optional<Vapour> vapour) {

    /**
     * Checks the liquid.
     *
     * @throws pourwright.physics.PhysicsException when a value is not a number or out of its range
     */
    public Mix {
        Require.positive("liquid density", density, "kg/m3");
        Require.positive("viscosity", viscosityPaS, "Pa s");
        Require.positive("temperature of the viscosity", viscosityAtK, "K");
        Require.zeroOrMore("activation energy of flow", flowEnergyJPerMol, "J/mol");
        Viscosity.growthExponent(doublingShare);
        Require.zeroOrMore("surface tension", sigma, "N/m");
        Require.positive("speed factor", speedFactor, "");
        Require.within("largest froth factor", frothCap, 1, Double.MAX_VALUE, "");
        Require.positive("specific heat", specificHeatJPerKgK, "J/(kg K)");
        Require.positive("heat conductivity", conductivityWPerMK, "W/(m K)");
        Require.given("reaction", reaction);
        Require.given("vapour", vapour);
    }

    /**
     * Viscosity by conversion and temperature: the start value × exp(E/R (1/T - 1/T0)) × (1 - age)^(-k).
     * At one temperature it is {@link Viscosity#atTimePaS} of the isothermal gel time.
     *
     * @param conversion   conversion, 0 to 1
     * @param temperatureK temperature, K
     * @return viscosity, Pa s; infinite at gel and beyond
     */
    public double viscosityPaS(double conversion, double temperatureK) {
        return Viscosity.atTimePaS(
                viscosityPaS * Cure.rateFactor(temperatureK, viscosityAtK, flowEnergyJPerMol),
                reaction.ageAt(conversion),
                1,
                doublingShare);
    }

    /**
     * The same liquid with another reaction.
     *
     * @param other the reaction
     * @return the liquid
     */
    public Mix with(Reaction other) {
        return new Mix(
                density,
                viscosityPaS,
                viscosityAtK,
                flowEnergyJPerMol,
                doublingShare,
                sigma,
                speedFactor,
                frothCap,
                specificHeatJPerKgK,
                conductivityWPerMK,
                other,
                vapour);
    }
}
