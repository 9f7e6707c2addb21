package pourwright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pourwright.advice.BadAnswer;
import pourwright.advice.Wording;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Basis;
import pourwright.facts.Estimate;
import pourwright.facts.Shown;
import pourwright.figures.FigureValue;
import pourwright.figures.Scope;
import pourwright.kitfit.Fitted;
import pourwright.kitfit.KitState;
import pourwright.kitfit.PumpDownFit;
import pourwright.kitfit.RateOfRise;
import pourwright.kitfit.Reading;
import pourwright.kitfit.RiseVerdict;
import pourwright.kitfit.TestChamber;
import pourwright.knowledge.Knowledge;
import pourwright.physics.Constants;
import pourwright.physics.Gauge;
import pourwright.physics.GaugeKind;
import pourwright.physics.PhysicsException;
import pourwright.physics.Pump;
import pourwright.physics.PumpLine;
import pourwright.physics.VacuumLine;
import pourwright.units.Dimension;

/** Reads the readings, fits them, and draws the figures that rules compare. */
final class KitTest {
    static final String FALL = "pump-down-readings";
    static final String RISE = "rise-readings";

    private final Answers answers;
    private final Knowledge knowledge;
    private final Scope scope;
    private final Estimate airPa;
    private final Estimate volumeM3;
    private final boolean dial;
    private final KitFigures figures = new KitFigures();
    private final List<Shown> shown = new ArrayList<>();
    private final Set<String> assumed = new TreeSet<>();
    private List<KitReading> fallReadings = List.of();
    private List<KitReading> riseReadings = List.of();
    private PumpDownFit fall;
    private RateOfRise rise;
    private KitState state;
    private boolean deeperThanAir;

    private KitTest(Answers answers, Knowledge knowledge) {
        this.answers = answers;
        this.knowledge = knowledge;
        this.scope = new Scope(answers, knowledge, true);
        this.airPa = scope.get("barometric-pressure")
                .map(FigureValue::si)
                .orElse(Estimate.exactly(Constants.STANDARD_ATMOSPHERE_PA));
        this.volumeM3 = scope.get("chamber-volume").map(FigureValue::si).orElseThrow();
        this.dial = Set.of("below-local-air", "above-local-air").contains(answers.choice("gauge-kind"));
    }

    static KitTest of(Answers answers, Knowledge knowledge) {
        KitTest t = new KitTest(answers, knowledge);
        t.work();
        t.readings();
        t.fitted();
        return t;
    }

    /** How deep the work wants it. */
    private void work() {
        Optional<FigureValue> meant = answers.get("target-pressure").isPresent()
                ? scope.get("target-pressure")
                : answers.get("material").isPresent() ? scope.get("vacuum-pressure") : Optional.empty();
        if (meant.isPresent()) {
            figures.put(
                    "work-pressure",
                    meant.get().si(),
                    meant.get().basis(),
                    meant.get().answers().toArray(new String[0]));
        } else {
            figures.put(
                    "work-pressure",
                    Estimate.exactly(knowledge.guidelineSi("kit-usual-work-pressure")),
                    Basis.ASSUMED,
                    "target-pressure");
            if (answers.has(FALL) || answers.has(RISE)) {
                assumed.add("target-pressure");
            }
        }
        if (dial) {
            figures.put("best-dial-reading", airPa, basis("barometer"), "barometer", "altitude");
        }
    }

    private Basis basis(String question) {
        return answers.get(question).isPresent() ? Basis.TYPED : Basis.ASSUMED;
    }

    private void readings() {
        fallReadings = absolute(FALL);
        riseReadings = absolute(RISE);
        if (!fallReadings.isEmpty() || !riseReadings.isEmpty()) {
            if (answers.get("gauge-kind").isEmpty()) {
                assumed.add("gauge-kind");
            }
            if (dial
                    && answers.get("barometer").isEmpty()
                    && answers.get("altitude").isEmpty()) {
                assumed.add("altitude");
            }
            if (answers.get("chamber-volume").isEmpty()) {
                assumed.add("chamber-volume");
            }
        }
        if (deeperThanAir) {
            shown.add(new Shown("dial", "deeper-than-air", "gauge-kind"));
        }
    }

    private List<KitReading> absolute(String question) {
        List<KitReading> readings = new ArrayList<>();
        for (ReadingsText.Seen s : new ReadingsText(question, dial).read(answers.text(question))) {
            readings.add(new KitReading(s.typed(), s.timeS(), absolutePa(question, s)));
        }
        return List.copyOf(readings);
    }

    /** A dial that shows a little more than the air there is has a wrong zero or a wrong barometer; that is told, not refused. */
    private double absolutePa(String question, ReadingsText.Seen s) {
        if (!dial) {
            return s.shownPa();
        }
        double overPa = s.shownPa() - airPa.typical();
        if (overPa > 0 && overPa <= knowledge.guidelineSi("weather-swing") + airPa.high() - airPa.typical()) {
            deeperThanAir = true;
            return 0;
        }
        try {
            return Gauge.absolutePa(s.shownPa(), GaugeKind.BELOW_LOCAL_AIR, airPa.typical());
        } catch (PhysicsException e) {
            throw new BadAnswer(
                    question,
                    "A dial cannot show " + s.typed() + " here: the most that is possible is "
                            + Wording.one(airPa.typical(), Dimension.PRESSURE)
                            + ", all of the local air. Check barometer and gauge-kind.");
        }
    }

    private void fitted() {
        double stepPa = answers.get("gauge-step").orElse(null) instanceof Answer.Quantity q ? q.si().typical() : 0;
        double roomK = scope.get("room-temperature").map(v -> v.si().typical()).orElse(TestChamber.USUAL_ROOM_K);
        TestChamber chamber = new TestChamber(volumeM3.typical(), airPa.typical(), stepPa, roomK);
        if (fallReadings.isEmpty()) {
            shown.add(new Shown("pump-down", "not-done", FALL));
        } else {
            fall = PumpDownFit.of(plain(fallReadings), chamber);
            shown.add(KitAdvisor.shown("pump-down", fall.verdict(), FALL));
            fall.leftOut().ifPresent(r -> shown.add(new Shown("odd-reading", "pump-down", FALL)));
            ofFall();
        }
        if (riseReadings.isEmpty()) {
            shown.add(new Shown("rise", "not-done", RISE));
        } else {
            rise = RateOfRise.of(plain(riseReadings), chamber);
            shown.add(KitAdvisor.shown("rise", rise.verdict(), RISE));
            rise.leftOut().ifPresent(r -> shown.add(new Shown("odd-reading", "rise", RISE)));
        }
        if (fall != null && fall.speedM3PerS().known() && fall.basePa().known()) {
            ofState(chamber);
        }
        if (rise != null) {
            ofRise();
        }
    }

    private static List<Reading> plain(List<KitReading> readings) {
        return readings.stream().map(KitReading::reading).toList();
    }

    /** An absolute pressure from a dial is as uncertain as the local air is. */
    private Estimate level(Fitted f) {
        Estimate e = KitFigures.range(f);
        if (!dial) {
            return e;
        }
        double low = Math.max(0, e.low() - (airPa.typical() - airPa.low()));
        return new Estimate(low, e.typical(), e.high() + airPa.high() - airPa.typical());
    }

    private double volumeLow() {
        return volumeM3.low() / volumeM3.typical();
    }

    private double volumeHigh() {
        return volumeM3.high() / volumeM3.typical();
    }

    private void ofFall() {
        Basis volume = basis("chamber-volume");
        if (!Double.isNaN(fall.lowestPa())) {
            double p = fall.lowestPa();
            figures.put("lowest-reading", level(new Fitted(p, 0, p, p)), Basis.TYPED, FALL);
        }
        if (fall.speedM3PerS().known()) {
            Estimate speed = KitFigures.range(fall.speedM3PerS(), volumeLow(), volumeHigh());
            figures.put("effective-speed-measured", speed, volume, FALL, "chamber-volume");
        }
        if (fall.basePa().known()) {
            figures.put("base-pressure-measured", level(fall.basePa()), Basis.TYPED, FALL);
        }
        if (fall.gasLoadPaM3PerS().known()) {
            Estimate load = KitFigures.range(fall.gasLoadPaM3PerS(), volumeLow(), volumeHigh());
            figures.put("gas-load-measured", load, volume, FALL, "chamber-volume");
        }
    }

    private void ofState(TestChamber chamber) {
        RateOfRise risen = rise == null ? RateOfRise.of(List.of(), chamber) : rise;
        Estimate speed = scope.get("pump-speed").map(FigureValue::si).orElseThrow();
        Estimate ultimate = scope.get("pump-ultimate").map(FigureValue::si).orElse(Estimate.exactly(0));
        state = KitState.of(fall, risen, new Pump(speed.typical(), ultimate.typical()), line(0));
        KitState best = KitState.of(fall, risen, new Pump(speed.high(), ultimate.low()), line(1));
        KitState worst = KitState.of(fall, risen, new Pump(speed.low(), ultimate.high()), line(-1));
        String[] kit = {FALL, "pump-speed", "hose-bore", "hose-length"};
        Basis pump = basis("pump-speed");
        figures.put(
                "expected-speed",
                between(worst.expectedSpeedM3PerS(), state.expectedSpeedM3PerS(), best.expectedSpeedM3PerS()),
                pump,
                kit);
        figures.put(
                "hose-share-expected",
                between(worst.hoseShare(), state.hoseShare(), best.hoseShare()),
                basis("hose-bore"),
                kit);
        Estimate slow = KitFigures.range(best.speedShare());
        Estimate fast = KitFigures.range(worst.speedShare());
        Estimate share = between(slow.low() * volumeLow(), state.speedShare().value(), fast.high() * volumeHigh());
        figures.put(
                "speed-share-measured",
                share,
                pump.weaker(basis("chamber-volume")),
                FALL,
                "pump-speed",
                "hose-bore",
                "hose-length",
                "chamber-volume");
        assume("pump-speed", "hose-bore", "hose-length");
        if (state.lateOverEarly().known()) {
            figures.put("late-speed-share", KitFigures.range(state.lateOverEarly()), Basis.TYPED, FALL);
        }
        if (state.unexplainedPa().known()) {
            Estimate rest = between(
                    worst.unexplainedPa().low(),
                    state.unexplainedPa().value(),
                    best.unexplainedPa().high());
            Estimate base = figures.get("base-pressure-measured");
            if (dial) {
                rest = between(
                        rest.low() - (airPa.typical() - airPa.low()),
                        rest.typical(),
                        rest.high() + airPa.high() - airPa.typical());
            }
            rest = between(Math.max(0, rest.low()), Math.max(0, rest.typical()), Math.max(0, rest.high()));
            Basis rated = basis("pump-ultimate");
            figures.put("unexplained-base", rest, rated, FALL, RISE, "pump-ultimate");
            figures.put("unexplained-share-of-base", partOf(rest, base), rated, FALL, RISE, "pump-ultimate");
            assume("pump-ultimate");
        }
        // Which part is largest means something only where the rise told the leak.
        if (splits()) {
            shown.add(KitAdvisor.shown(state.mainIsSure() ? "base-surely" : "base-perhaps", state.main(), RISE));
        }
    }

    private void assume(String... questions) {
        for (String id : questions) {
            if (answers.get(id).isEmpty()) {
                assumed.add(id);
            }
        }
    }

    /** The hose: as usual, at its best or at its worst. */
    private VacuumLine line(int end) {
        Estimate bore = scope.get("hose-bore").map(FigureValue::si).orElseThrow();
        Estimate length = scope.get("hose-length").map(FigureValue::si).orElseThrow();
        return switch (end) {
            case 1 -> new VacuumLine(bore.high(), length.low());
            case -1 -> new VacuumLine(bore.low(), length.high());
            default -> new VacuumLine(bore.typical(), length.typical());
        };
    }

    private static Estimate between(double low, double typical, double high) {
        return new Estimate(Math.min(low, typical), typical, Math.max(high, typical));
    }

    /** One pressure over another; no share is above one for sure, but a range may reach there. */
    private static Estimate share(Estimate part, Estimate whole) {
        double typical = whole.typical() > 0 ? part.typical() / whole.typical() : 0;
        double low = whole.high() > 0 && !Double.isInfinite(whole.high()) ? part.low() / whole.high() : 0;
        double high = whole.low() > 0 ? part.high() / whole.low() : Double.POSITIVE_INFINITY;
        return between(low, typical, high);
    }

    /** A part of the base is no more than all of it, whatever the errors of the two allow. */
    private static Estimate partOf(Estimate part, Estimate whole) {
        Estimate e = share(part, whole);
        return new Estimate(Math.min(1, e.low()), Math.min(1, e.typical()), Math.min(1, e.high()));
    }

    private boolean splits() {
        return rise != null
                && Set.of(RiseVerdict.LEAK, RiseVerdict.BOTH, RiseVerdict.OUTGASSING)
                        .contains(rise.verdict());
    }

    private void ofRise() {
        rise.nextReadingS().ifPresent(s -> figures.put("next-rise-reading", Estimate.exactly(s), Basis.TYPED, RISE));
        if (rise.levelPa().known() && rise.levelPa().value() > 0) {
            figures.put("rise-level", level(rise.levelPa()), Basis.TYPED, RISE);
            if (rise.mayBeWater()) {
                figures.put(
                        "water-vapour-pressure",
                        Estimate.exactly(rise.waterPa()),
                        basis("room-temperature"),
                        "room-temperature");
                shown.add(new Shown("rise-level", "water", RISE));
            }
        }
        Fitted leak = rise.leakPaM3PerS();
        if (!leak.known()) {
            return;
        }
        Basis volume = basis("chamber-volume");
        Estimate rate = KitFigures.range(leak, volumeLow(), volumeHigh());
        Estimate speed = speedAtWork();
        Estimate work = figures.get("work-pressure");
        if (!splits()) {
            // Only the upper end means anything, and readings may leave it open.
            if (!Double.isInfinite(rate.high())) {
                Estimate most = Estimate.exactly(rate.high());
                figures.put("leak-at-most", most, volume, RISE, "chamber-volume");
                figures.put("leak-at-most-share", share(quotient(most, speed), work), volume, RISE, "chamber-volume");
            }
            return;
        }
        figures.put("leak-rate-measured", rate, volume, RISE, "chamber-volume");
        // Leak and measured speed rest on the same volume, which falls out of their quotient.
        Estimate cost = state != null && state.leakPartPa().known()
                ? KitFigures.range(state.leakPartPa())
                : quotient(rate, speed);
        figures.put("leak-cost", cost, volume, FALL, RISE, "chamber-volume");
        figures.put("leak-share-of-work", share(cost, work), Basis.TYPED, FALL, RISE);
        Estimate base = figures.get("base-pressure-measured");
        if (base != null) {
            figures.put("leak-share-of-base", partOf(cost, base), Basis.TYPED, FALL, RISE);
            if (state != null && state.gasPartPa().known()) {
                figures.put(
                        "gas-share-of-base",
                        partOf(KitFigures.range(state.gasPartPa()), base),
                        Basis.TYPED,
                        FALL,
                        RISE);
            }
        }
    }

    /** The speed that was measured, else that of the plate through the hose at the pressure of the work. */
    private Estimate speedAtWork() {
        Estimate measured = figures.get("effective-speed-measured");
        if (measured != null) {
            return measured;
        }
        assume("pump-speed", "hose-bore", "hose-length");
        double workPa = figures.get("work-pressure").typical();
        Estimate plate = scope.get("pump-speed").map(FigureValue::si).orElseThrow();
        return between(
                PumpLine.effectiveSpeedM3PerS(workPa, new Pump(plate.low(), 0), line(-1)),
                PumpLine.effectiveSpeedM3PerS(workPa, new Pump(plate.typical(), 0), line(0)),
                PumpLine.effectiveSpeedM3PerS(workPa, new Pump(plate.high(), 0), line(1)));
    }

    private static Estimate quotient(Estimate top, Estimate bottom) {
        return between(
                top.low() / bottom.high(),
                top.typical() / bottom.typical(),
                bottom.low() > 0 ? top.high() / bottom.low() : Double.POSITIVE_INFINITY);
    }

    /** Whether the tests show that something is wrong, so that it is worth looking for it. */
    boolean suspect(Knowledge k) {
        Estimate base = figures.get("base-pressure-measured");
        boolean shallow = base != null && base.typical() > k.guidelineSi("oil-pump-healthy-base");
        Estimate speed = figures.get("speed-share-measured");
        boolean slow = speed != null && speed.typical() < k.guidelineSi("kit-speed-share-low");
        boolean rises = rise != null && rise.verdict() != RiseVerdict.NO_RISE_SEEN;
        boolean untold = fall != null && !fall.basePa().known();
        return shallow || slow || rises || untold || fall == null;
    }

    Map<String, FigureValue> figures() {
        return figures.all();
    }

    List<Shown> shown() {
        return shown;
    }

    Set<String> assumed() {
        return assumed;
    }

    List<KitReading> fallReadings() {
        return fallReadings;
    }

    List<KitReading> riseReadings() {
        return riseReadings;
    }

    Optional<PumpDownFit> fall() {
        return Optional.ofNullable(fall);
    }

    Optional<RateOfRise> rise() {
        return Optional.ofNullable(rise);
    }

    Optional<KitState> state() {
        return Optional.ofNullable(state);
    }
}
