package pourwright.physics;

/** Slow flow of liquids through tubes, slots and fine gaps. */
public final class Flow {

    private Flow() {}

    /**
     * Laminar flow through a round tube: π d⁴ pressure / (128 viscosity length).
     * Valid while {@link #tubeReynolds} is below about 2000 and the length exceeds 0.06 Re d.
     * Source: Hagen-Poiseuille, as in Geankoplis, Transport Processes and Unit Operations, example 2.10-1.
     *
     * @param boreM        inner diameter d, m
     * @param lengthM      length, m
     * @param drivingPa    pressure difference between the ends, Pa, zero or more
     * @param viscosityPaS viscosity, Pa s
     * @return flow, m3/s
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double tubeM3PerS(double boreM, double lengthM, double drivingPa, double viscosityPaS) {
        Checked.positive("bore", boreM, "m");
        Checked.positive("length", lengthM, "m");
        Checked.zeroOrMore("driving pressure", drivingPa, "Pa");
        Checked.positive("viscosity", viscosityPaS, "Pa s");
        return Math.PI * Math.pow(boreM, 4) * drivingPa / (128 * viscosityPaS * lengthM);
    }

    /**
     * Laminar flow through a flat slot: width gap³ pressure / (12 viscosity length).
     * Valid for a width well above the gap.
     * Source: plane Poiseuille flow, as in K. Subramanya, 1000 Solved Problems in Fluid Mechanics, example 7.21.
     *
     * @param widthM       width across the flow, m
     * @param gapM         gap, m
     * @param lengthM      length along the flow, m
     * @param drivingPa    pressure difference between the ends, Pa, zero or more
     * @param viscosityPaS viscosity, Pa s
     * @return flow, m3/s
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double slotM3PerS(double widthM, double gapM, double lengthM, double drivingPa, double viscosityPaS) {
        Checked.positive("slot width", widthM, "m");
        Checked.positive("gap", gapM, "m");
        Checked.positive("length", lengthM, "m");
        Checked.zeroOrMore("driving pressure", drivingPa, "Pa");
        Checked.positive("viscosity", viscosityPaS, "Pa s");
        return widthM * gapM * gapM * gapM * drivingPa / (12 * viscosityPaS * lengthM);
    }

    /**
     * Reynolds number in a round tube: 4 density flow / (π d viscosity). Flow is laminar below about 2000.
     * Source: definition, as in Geankoplis, Transport Processes and Unit Operations, example 2.10-1.
     *
     * @param flowM3PerS   flow, m3/s, zero or more
     * @param boreM        inner diameter d, m
     * @param density      density, kg/m3
     * @param viscosityPaS viscosity, Pa s
     * @return Reynolds number, no unit
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double tubeReynolds(double flowM3PerS, double boreM, double density, double viscosityPaS) {
        Checked.zeroOrMore("flow", flowM3PerS, "m3/s");
        Checked.positive("bore", boreM, "m");
        Checked.positive("density", density, "kg/m3");
        Checked.positive("viscosity", viscosityPaS, "Pa s");
        return 4 * density * flowM3PerS / (Math.PI * boreM * viscosityPaS);
    }

    /**
     * Time for the level in a vessel to fall while it drains through a tube:
     * 128 viscosity length area / (π d⁴ density g) × ln(start head / end head).
     * Source: Hagen-Poiseuille with a falling head.
     *
     * @param vesselAreaM2 area of the liquid's surface, m2
     * @param startHeadM   head over the tube's outlet at the start, m
     * @param endHeadM     head at the end, m, between zero and the start head
     * @param boreM        inner diameter d of the tube, m
     * @param lengthM      length of the tube, m
     * @param density      density, kg/m3
     * @param viscosityPaS viscosity, Pa s
     * @return time, s; infinite for an end head of zero
     * @throws PhysicsException when an input is not a number, negative or out of range
     */
    public static double drainTimeS(
            double vesselAreaM2,
            double startHeadM,
            double endHeadM,
            double boreM,
            double lengthM,
            double density,
            double viscosityPaS) {
        Checked.positive("area of the surface", vesselAreaM2, "m2");
        Checked.positive("head at the start", startHeadM, "m");
        Checked.within("head at the end", endHeadM, 0, startHeadM, "m");
        Checked.positive("density", density, "kg/m3");
        double flowPerHeadM2PerS = tubeM3PerS(boreM, lengthM, density * Constants.G, viscosityPaS);
        return vesselAreaM2 / flowPerHeadM2PerS * Math.log(startHeadM / endHeadM);
    }

    /**
     * How far a wetting liquid creeps into a fine tube by itself: L² = tension r cos(angle) t / (2 viscosity).
     * Valid without gravity and for times above density r²/viscosity.
     * Source: Lucas 1918, Washburn 1921.
     *
     * @param radiusM      inner radius r, m
     * @param sigma        surface tension, N/m
     * @param contactRad   contact angle, radians, 0 to π
     * @param viscosityPaS viscosity, Pa s
     * @param timeS        time, s
     * @return length, m; zero when the liquid does not wet the wall (angle of 90 degrees and more)
     * @throws PhysicsException when an input is not a number, negative or out of range
     */
    public static double washburnM(double radiusM, double sigma, double contactRad, double viscosityPaS, double timeS) {
        Checked.positive("radius", radiusM, "m");
        Checked.zeroOrMore("surface tension", sigma, "N/m");
        Checked.within("contact angle", contactRad, 0, Math.PI, "rad");
        Checked.positive("viscosity", viscosityPaS, "Pa s");
        Checked.zeroOrMore("time", timeS, "s");
        double squareM2 = sigma * radiusM * Math.cos(contactRad) * timeS / (2 * viscosityPaS);
        return Math.sqrt(Math.max(0, squareM2));
    }

    /**
     * Height to which a liquid stands in a fine tube: 2 tension cos(angle) / (density g r).
     * Valid for a radius well below the capillary length, 2.7 mm in water.
     * Source: Jurin's law, as in K. Subramanya, 1000 Solved Problems in Fluid Mechanics, example 1.18.
     *
     * @param radiusM    inner radius r, m
     * @param sigma      surface tension, N/m
     * @param contactRad contact angle, radians, 0 to π
     * @param density    density, kg/m3
     * @return height, m; negative when the liquid does not wet the wall
     * @throws PhysicsException when an input is not a number, negative or out of range
     */
    public static double jurinHeightM(double radiusM, double sigma, double contactRad, double density) {
        Checked.positive("radius", radiusM, "m");
        Checked.zeroOrMore("surface tension", sigma, "N/m");
        Checked.within("contact angle", contactRad, 0, Math.PI, "rad");
        Checked.positive("density", density, "kg/m3");
        return 2 * sigma * Math.cos(contactRad) / (density * Constants.G * radiusM);
    }

    /**
     * Time for a liquid to run into an empty flat gap under a steady pressure: 6 viscosity length² / (gap² pressure).
     * Source: plane Poiseuille flow behind a moving front, length² = gap² pressure time / (6 viscosity).
     *
     * @param lengthM      how far it must run, m
     * @param gapM         gap, m
     * @param viscosityPaS viscosity, Pa s, taken as constant
     * @param drivingPa    driving pressure (head, surface tension and vacuum together), Pa, zero or more
     * @return time, s; infinite without pressure
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double slotFillTimeS(double lengthM, double gapM, double viscosityPaS, double drivingPa) {
        Checked.positive("gap", gapM, "m");
        return fillTimeS(6, lengthM, gapM, viscosityPaS, drivingPa);
    }

    /**
     * Time for a liquid to run into an empty round tube under a steady pressure: 4 viscosity length² / (r² pressure).
     * Source: Hagen-Poiseuille flow behind a moving front, length² = r² pressure time / (4 viscosity).
     *
     * @param lengthM      how far it must run, m
     * @param radiusM      inner radius r, m
     * @param viscosityPaS viscosity, Pa s, taken as constant
     * @param drivingPa    driving pressure, Pa, zero or more
     * @return time, s; infinite without pressure
     * @throws PhysicsException when an input is not a number, negative, or zero where it must not be
     */
    public static double tubeFillTimeS(double lengthM, double radiusM, double viscosityPaS, double drivingPa) {
        Checked.positive("radius", radiusM, "m");
        return fillTimeS(4, lengthM, radiusM, viscosityPaS, drivingPa);
    }

    private static double fillTimeS(
            double shape, double lengthM, double acrossM, double viscosityPaS, double drivingPa) {
        Checked.zeroOrMore("length", lengthM, "m");
        Checked.positive("viscosity", viscosityPaS, "Pa s");
        Checked.zeroOrMore("driving pressure", drivingPa, "Pa");
        if (lengthM == 0) {
            return 0;
        }
        double slenderness = lengthM / acrossM;
        return shape * viscosityPaS * slenderness * slenderness / drivingPa;
    }
}
