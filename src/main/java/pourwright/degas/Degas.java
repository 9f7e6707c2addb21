package pourwright.degas;

import java.util.Locale;
import pourwright.physics.Bubble;
import pourwright.physics.PhysicsException;
import pourwright.physics.PumpLine;
import pourwright.physics.Require;

/**
 * Follows a batch through one pull: standing, pumping, letting air in, standing to the pour.
 *
 * <p>The cure runs on its own ({@link CureCourse}); it gives viscosity and temperature to the bubbles ({@link Column}).
 * Chamber and froth are tied: gas that breaks out loads the pump, and froth that swells takes room from the chamber.
 * Pumping takes midpoint steps, short against the fall of the pressure.
 */
public final class Degas {

    /** First step, s, and growth of the step with time since the valve was turned. */
    private static final double FIRST_STEP_S = 0.05;

    private static final double STEP_PER_TIME = 0.02;

    /** Largest share by which the pressure may fall in one step: midpoint steps are then good to 1e-4. */
    private static final double MOST_FALL = 0.04;

    /** Largest share of the gas that leaves in one step. */
    private static final double MOST_LOSS = 0.05;

    /** Where nothing else sets the step, s. */
    private static final double LONGEST_STEP_S = 120;

    private static final double SHORTEST_STEP_S = 1e-3;

    private static final int RELEASE_STEPS = 40;

    private static final double LITRES_PER_M3 = 1000;

    private static final double PRESSURE_ACCURACY = 1e-12;

    /** How near to the cap breaking must come, relative: far below what can be seen. */
    private static final double AT_CAP = 1e-6;

    private static final int MOST_TURNS = 60;

    private final Charge charge;
    private final VacuumKit kit;
    private final Stage stage;
    private final CureCourse cure;
    private final Column column;
    private final double restM;
    private final double startGas;
    private final double startGasM3;
    private final Trace trace;
    private final boolean merging;
    private final double stepScale;

    private double timeS;
    private double pressurePa;
    private double chamber;
    private double leaked;
    private double letIn;
    private double vapour;
    private double pumped;
    private double clearS = Double.POSITIVE_INFINITY;
    private double fastestReynolds;
    private boolean boils;

    private Degas(Charge charge, VacuumKit kit, Stage stage, boolean merging, double stepScale) {
        this.merging = merging;
        this.charge = charge;
        this.kit = kit;
        this.stage = stage;
        this.stepScale = stepScale;
        Mix mix = charge.mix();
        double liquidM3 = charge.liquidM3();
        double airM3 = charge.bubbles().volumeAtAirM3(kit.airPa(), mix.sigma());
        restM = (liquidM3 + airM3) / stage.surfaceM2();
        if (kit.freeM3() <= mix.frothCap() * (liquidM3 + airM3)) {
            throw new PhysicsException(String.format(
                    Locale.ROOT,
                    "The froth can fill %.3g\u00a0L, and the chamber has %.3g\u00a0L free.",
                    LITRES_PER_M3 * mix.frothCap() * (liquidM3 + airM3),
                    LITRES_PER_M3 * kit.freeM3()));
        }
        cure = CureCourse.of(
                mix, charge.massKg(), stage.vessel(), stage.roomK(), charge.temperatureK(), charge.conversion());
        column = new Column(mix, charge.bubbles(), kit.airPa(), liquidM3, liquidM3 / stage.surfaceM2());
        startGas = column.amount();
        pressurePa = kit.airPa();
        column.swell(pressurePa, vapourPa());
        startGasM3 = column.gasM3(pressurePa, vapourPa());
        chamber = pressurePa * kit.freeM3();
        trace = new Trace(restM, stage.openAtS());
    }

    /**
     * Follows a batch.
     *
     * @param charge the batch as it stands
     * @param kit    the chamber and pump
     * @param stage  the vessel and the times
     * @return what happens
     * @throws PhysicsException when something is missing, or the chamber has no room for the froth
     */
    public static DegasResult of(Charge charge, VacuumKit kit, Stage stage) {
        return of(charge, kit, stage, false, 1);
    }

    /**
     * The same where bubbles that touch merge as fast as their films allow: the soonest that froth can go.
     *
     * @param charge the batch as it stands
     * @param kit    the chamber and pump
     * @param stage  the vessel and the times
     * @return what happens
     * @throws PhysicsException when something is missing, or the chamber has no room for the froth
     */
    public static DegasResult merging(Charge charge, VacuumKit kit, Stage stage) {
        return of(charge, kit, stage, true, 1);
    }

    /** The same with every step multiplied, so that a test can halve it. */
    static DegasResult of(Charge charge, VacuumKit kit, Stage stage, boolean merging, double stepScale) {
        Require.given("charge", charge);
        Require.given("vacuum kit", kit);
        Require.given("stage", stage);
        return new Degas(charge, kit, stage, merging, stepScale).followed();
    }

    private DegasResult followed() {
        double startPaM3 = chamber + startGas;
        sample(false);
        stand(stage.openAtS());
        pump(stage.openAtS() + stage.pumpedS());
        release(stage.openAtS() + stage.pumpedS() + stage.releaseS());
        stand(stage.endS());
        return result(startPaM3);
    }

    /** Standing in air: bubbles rise, and what leaves goes to the room. */
    private void stand(double untilS) {
        double beganS = timeS;
        while (timeS < untilS) {
            double stepS = Math.min(step(timeS - beganS), untilS - timeS);
            double before = column.amount();
            rise(stepS);
            timeS += stepS;
            // The lid is off: the chamber stays at air pressure whatever comes.
            held(kit.airPa(), before);
            sample(false);
        }
    }

    private void pump(double untilS) {
        double beganS = timeS;
        while (timeS < untilS) {
            double outPaM3PerS = PumpLine.throughput(pressurePa, kit.pump(), kit.line());
            double fallPaPerS = (outPaM3PerS - kit.leakPaM3PerS()) / kit.freeM3();
            double stepS = step(timeS - beganS);
            if (fallPaPerS > 0) {
                stepS = Math.min(stepS, stepScale * MOST_FALL * pressurePa / fallPaPerS);
            }
            stepS = Math.min(Math.max(stepS, SHORTEST_STEP_S), untilS - timeS);
            double middlePa = Math.max(0, pressurePa - fallPaPerS * stepS / 2);
            double taken = PumpLine.throughput(middlePa, kit.pump(), kit.line()) * stepS;
            double before = column.amount();
            rise(stepS);
            timeS += stepS;
            chamber += before - column.amount() + kit.leakPaM3PerS() * stepS - taken;
            leaked += kit.leakPaM3PerS() * stepS;
            pumped += taken;
            settle();
            sample(true);
        }
    }

    /** Air comes back evenly over the release; the pump is shut off. */
    private void release(double untilS) {
        double fromPa = pressurePa;
        double beganS = timeS;
        for (int i = 1; i <= RELEASE_STEPS; i++) {
            double share = (double) i / RELEASE_STEPS;
            double stepS = beganS + share * (untilS - beganS) - timeS;
            double before = column.amount();
            rise(stepS);
            timeS += stepS;
            held(fromPa + share * (kit.airPa() - fromPa), before);
            sample(false);
        }
    }

    /** Brings the chamber to a pressure by letting air in or out. */
    private void held(double wantedPa, double gasBefore) {
        double now = wantedPa * (kit.freeM3() - extraM3(wantedPa, vapourPa()));
        letIn += now - chamber - (gasBefore - column.amount());
        chamber = now;
        pressurePa = wantedPa;
    }

    private double step(double sinceS) {
        double viscosity = cure.viscosityPaSAt(timeS);
        double usualS = stepScale * Math.min(LONGEST_STEP_S, FIRST_STEP_S + STEP_PER_TIME * sinceS);
        double left = column.amount();
        if (left <= 0 || viscosity == Double.POSITIVE_INFINITY) {
            return usualS;
        }
        double crowd = column.crowd(column.topFraction(pressurePa, vapourPa()));
        double lossPerS = column.outflowPerS(viscosity, crowd) / left;
        return Math.max(SHORTEST_STEP_S, Math.min(usualS, stepScale * MOST_LOSS / lossPerS));
    }

    private void rise(double stepS) {
        if (column.amount() <= 0) {
            return;
        }
        double vapourPa = vapourPa();
        column.swell(pressurePa, vapourPa);
        double fraction = column.topFraction(pressurePa, vapourPa);
        double viscosity = cure.viscosityPaSAt(timeS + stepS / 2);
        column.rise(stepS, viscosity, column.crowd(fraction));
        if (merging && fraction >= Column.TOUCHING) {
            column.merge(stepS, viscosity);
        }
    }

    /** Pressure and froth that belong together after a step, with bubbles broken at the cap and the floor held. */
    private void settle() {
        double vapourPa = vapourPa();
        double mostM3 = charge.mix().frothCap() * restM * stage.surfaceM2() - charge.liquidM3();
        balance(vapourPa);
        for (int turn = 0; turn < MOST_TURNS && column.gasM3(pressurePa, vapourPa) > mostM3 * (1 + AT_CAP); turn++) {
            double before = column.amount();
            column.breakDownTo(mostM3, pressurePa, vapourPa);
            chamber += before - column.amount();
            balance(vapourPa);
        }
        double floorPa = Math.max(kit.lowestPa(), vapourPa);
        if (pressurePa < floorPa) {
            double now = floorPa * (kit.freeM3() - extraM3(floorPa, vapourPa));
            if (vapourPa >= kit.lowestPa()) {
                vapour += now - chamber;
                boils = true;
            } else {
                letIn += now - chamber;
            }
            chamber = now;
            pressurePa = floorPa;
        }
    }

    /**
     * Solves pressure × room = gas in the chamber, where the froth takes its room: the secant rule, a few turns. The skin
     * pressure of the bubbles is that at the start of the step.
     */
    private void balance(double vapourPa) {
        double last = pressurePa;
        double lastOff = last * (kit.freeM3() - extraM3(last, vapourPa)) - chamber;
        double now = Math.max(last * 0.5, last - lastOff / kit.freeM3());
        for (int turn = 0; turn < MOST_TURNS && now != last; turn++) {
            double off = now * (kit.freeM3() - extraM3(now, vapourPa)) - chamber;
            if (Math.abs(off) <= PRESSURE_ACCURACY * chamber || off == lastOff) {
                break;
            }
            double next = Math.max(now * 0.5, now - off * (now - last) / (off - lastOff));
            last = now;
            lastOff = off;
            now = next;
        }
        pressurePa = now;
    }

    private double extraM3(double overPa, double vapourPa) {
        return column.gasM3(overPa, vapourPa) - startGasM3;
    }

    private double vapourPa() {
        return charge.mix().vapour().isEmpty() ? 0 : charge.mix().vapour().get().pressurePa(cure.temperatureKAt(timeS));
    }

    private void sample(boolean underPump) {
        double heightM = (charge.liquidM3() + column.gasM3(pressurePa, vapourPa())) / stage.surfaceM2();
        trace.add(
                new DegasSample(
                        timeS,
                        pressurePa,
                        heightM,
                        cure.temperatureKAt(timeS),
                        cure.viscosityPaSAt(timeS),
                        startGas == 0 ? 0 : column.amount() / startGas),
                underPump);
        if (clearS == Double.POSITIVE_INFINITY && column.largestAtAirM() < stage.visibleM()) {
            clearS = Math.max(0, timeS - stage.openAtS());
        }
        double viscosity = cure.viscosityPaSAt(timeS);
        if (underPump && viscosity < Double.POSITIVE_INFINITY) {
            double d = column.medianM();
            double speed = Bubble.stokesRiseMPerS(d, charge.mix().density(), 0, viscosity);
            fastestReynolds = Math.max(
                    fastestReynolds, Bubble.reynolds(speed, d, charge.mix().density(), viscosity));
        }
    }

    private DegasResult result(double startPaM3) {
        Mix mix = charge.mix();
        double conversion = cure.conversionAt(timeS);
        Bubbles left = column.left();
        double airM3 = left.volumeAtAirM3(kit.airPa(), mix.sigma());
        double gelS = charge.agedS() + cure.gelS();
        return new DegasResult(
                trace.firstRiseS(),
                trace.crestS(),
                trace.fallBegunS(),
                trace.fallenS(),
                clearS,
                trace.crestM() / restM,
                trace.crestM(),
                trace.firstAbove(stage.heightM()),
                trace.lowestPa(),
                boils,
                airM3 / (airM3 + charge.liquidM3()),
                column.largestAtAirM(),
                cure.viscosityPaSAt(timeS),
                cure.temperatureKAt(timeS),
                trace.peakK(),
                gelS,
                (charge.agedS() + timeS) / gelS,
                fastestReynolds,
                new GasBooks(
                        startPaM3,
                        leaked,
                        letIn,
                        vapour,
                        pumped,
                        pressurePa * (kit.freeM3() - extraM3(pressurePa, vapourPa())),
                        column.amount()),
                new Charge(mix, charge.massKg(), left, conversion, cure.temperatureKAt(timeS), charge.agedS() + timeS),
                trace.samples());
    }
}
