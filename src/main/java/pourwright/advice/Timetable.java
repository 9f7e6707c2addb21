package pourwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pourwright.facts.Basis;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.figures.Scope;
import pourwright.figures.TimeFigures;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.StepWords;
import pourwright.physics.Viscosity;
import pourwright.units.Dimension;

/**
 * Lays the chosen ways of working out on one clock that starts with mixing, and gives the figures that follow from it:
 * when the pour is done, how much of the working time that takes, what is left, and how thick the mix is by then.
 */
final class Timetable {
    /** A range narrower than this can be put on a scale. */
    private static final double NARROW = 1.05;

    private static final Estimate NOTHING = Estimate.exactly(0);
    private static final Set<String> VACUUM =
            Set.of("degas-mix", "degas-before-thickening", "degas-in-mould", "degas-component");

    private static final Set<String> DEGASSED = Set.of("degas-mix", "degas-before-thickening");

    /** In an open box or on a coat no vent shows how far the liquid has come. */
    private static final Set<String> OPEN = Set.of("rubber-around-master", "brush-on-mould");

    private final Scope scope;
    private final Knowledge knowledge;
    private final Set<String> methods;
    private final List<Step> steps = new ArrayList<>();
    private final Set<String> answers = new TreeSet<>();
    private Estimate clock = NOTHING;

    private Timetable(Scope scope, Knowledge knowledge, Set<String> methods) {
        this.scope = scope;
        this.knowledge = knowledge;
        this.methods = methods;
    }

    /** The steps; the figures that follow are put into the scope. */
    static List<Step> of(Scope scope, Knowledge knowledge, Set<String> methods) {
        Timetable t = new Timetable(scope, knowledge, methods);
        if (!t.mixed()) {
            t.before();
        }
        t.work();
        t.after();
        return List.copyOf(t.steps);
    }

    /** What comes before mixing, laid out backwards from it. */
    private void before() {
        List<String> order = new ArrayList<>();
        if (methods.stream().anyMatch(VACUUM::contains)) {
            order.add("pump-start");
            order.add("pump-test");
        }
        if (methods.contains("degas-component")) {
            order.add("degas-component");
        }
        if (weighable()) {
            order.add(batches() && scope.get("batch-count").get().si().exact() ? "weigh-batches" : "weigh");
        } else if (scope.get("mix-mass").isPresent()) {
            order.add("weigh-mass");
        }
        double total = order.stream().mapToDouble(this::lengthS).sum();
        for (String step : order) {
            add(step, Estimate.exactly(-total), Estimate.exactly(lengthS(step)));
            total -= lengthS(step);
        }
    }

    private double lengthS(String step) {
        return knowledge.guidelineSi(
                switch (step) {
                    case "pump-start" -> "pump-warm-up-time";
                    case "pump-test" -> "pump-test-time";
                    case "degas-component" -> "component-degas-time";
                    default -> "weighing-time";
                });
    }

    /** Two masses can be put on a scale only when the ratio is known, not a class's range. */
    private boolean weighable() {
        return scope.get("part-mass-a")
                .map(v -> v.si().exact() || v.si().high() / v.si().low() < NARROW)
                .orElse(false);
    }

    /** True when the parts have met already and somebody said when. */
    private boolean mixed() {
        return scope.get("mixed-ago").isPresent();
    }

    /** A cup too small for the whole mix is filled several times, and each filling takes all the steps. */
    private boolean batches() {
        return !mixed()
                && methods.stream().anyMatch(DEGASSED::contains)
                && scope.get("batch-count").map(v -> v.si().typical() > 1).orElse(false);
    }

    private void work() {
        if (scope.traits().contains("melts")) {
            next("melt", NOTHING);
            return;
        }
        if (scope.traits().contains("dries")) {
            next("dry-coats", NOTHING);
            return;
        }
        if (mixed()) {
            // What stands in the cup is mixed: the clock is there already.
            clock = of("mixing-time");
        } else {
            next("mix", of("mixing-time"));
        }
        boolean before = methods.contains("degas-before-thickening");
        if (methods.contains("degas-mix") || before) {
            degas();
        } else if (methods.contains("stand")
                && scope.get("bubble-clear-time-air").isPresent()) {
            next("stand", of("bubble-clear-time-air"));
        }
        if (before) {
            next("thicken", guide("thickening-time"));
        }
        if (methods.contains("detail-coat")) {
            next("detail-coat", guide("detail-coat-time"));
        }
        if (scope.choice("job").equals("brush-on-mould")) {
            next("brush", of("pour-time"));
        } else {
            next(methods.contains("thin-stream") ? "pour" : "pour-plain", of("pour-time"));
        }
        figure("poured-at", Dimension.TIME, clock);
        viscosityAtPour();
        if (batches()) {
            add("next-batch", clock, NOTHING);
        }
        if (methods.contains("vents") && !OPEN.contains(scope.choice("job"))) {
            add("vents-watch", clock, NOTHING);
        }
        if (methods.contains("tilt")) {
            next("tilt", guide("tilting-time"));
        }
        if (methods.contains("vibrate")) {
            next("vibrate", guide("vibrating-time"));
        }
        if (methods.contains("degas-in-mould") && scope.get("second-degas-time").isPresent()) {
            next("second-degas", of("second-degas-time"));
        }
        if (methods.contains("pressure-cure")) {
            add("pressure", clock, NOTHING);
        }
    }

    private void degas() {
        if (scope.get("degas-time").isEmpty()) {
            return;
        }
        Estimate open = clock;
        Estimate release = of("release-time");
        Estimate whole = of("degas-time");
        boolean froths = scope.get("froth-crest-time").isPresent() && TimeFigures.frothDecides(scope);
        Estimate down = scope.get("pump-down-time").map(FigureValue::si).orElse(NOTHING);
        add("degas-open", open, down);
        if (froths) {
            add("degas-crest", sum(open, of("froth-crest-time")), NOTHING);
            add("degas-fall", sum(open, of("froth-fall-time")), of("hold-time"));
        } else {
            add("degas-hold", sum(open, down), of("hold-time"));
        }
        clock = sum(open, whole);
        add("degas-release", minus(clock, release), release);
    }

    private void after() {
        Optional<FigureValue> working = scope.get("working-time");
        Estimate done = clock;
        if (working.isPresent() && done.high() > 0) {
            answers.addAll(working.get().answers());
            Estimate gel = working.get().si();
            figure(
                    "time-share",
                    Dimension.FRACTION,
                    new Estimate(
                            share(done.low(), gel.high()),
                            share(done.typical(), gel.typical()),
                            share(done.high(), gel.low())));
            if (!Double.isInfinite(done.typical())) {
                figure(
                        "time-margin",
                        Dimension.TIME,
                        new Estimate(gel.low() - done.high(), gel.typical() - done.typical(), gel.high() - done.low()));
            }
            add("gel", gel, NOTHING);
            if (methods.contains("layers")) {
                add("layers", gel, NOTHING);
            }
        }
        scope.get("demould-time").ifPresent(v -> add("demould", v.si(), NOTHING));
        scope.get("full-cure-time").ifPresent(v -> add("full-cure", v.si(), NOTHING));
    }

    private void viscosityAtPour() {
        Optional<FigureValue> gel = scope.get("working-time");
        Optional<FigureValue> fresh = scope.get("viscosity");
        if (gel.isEmpty() || fresh.isEmpty()) {
            return;
        }
        double share = knowledge.guidelineSi("doubling-share");
        answers.addAll(fresh.get().answers());
        figure(
                "viscosity-at-pour",
                Dimension.VISCOSITY,
                new Estimate(
                        thick(
                                fresh.get().si().low(),
                                clock.low(),
                                gel.get().si().high(),
                                share),
                        thick(
                                fresh.get().si().typical(),
                                clock.typical(),
                                gel.get().si().typical(),
                                share),
                        thick(
                                fresh.get().si().high(),
                                clock.high(),
                                gel.get().si().low(),
                                share)));
    }

    private static double thick(double fresh, double at, double gel, double share) {
        return at >= gel ? Double.POSITIVE_INFINITY : Viscosity.atTimePaS(fresh, at, gel, share);
    }

    private static double share(double part, double whole) {
        return Double.isInfinite(part) ? part : part / whole;
    }

    private void figure(String id, Dimension d, Estimate si) {
        Optional<FigureValue> working = scope.get("working-time");
        scope.put(new FigureValue(
                id,
                d,
                si,
                new TreeSet<>(answers),
                null,
                null,
                List.of("working-time", "degas-time", "mixing-time", "pour-time"),
                () -> working.map(w -> new FigureValue.Sensitivity(w.basis(), w.dependsOnMost()))
                        .orElse(new FigureValue.Sensitivity(Basis.CLASS, ""))));
    }

    private Estimate of(String figure) {
        Optional<FigureValue> v = scope.get(figure);
        v.ifPresent(x -> answers.addAll(x.answers()));
        return v.map(FigureValue::si).orElse(NOTHING);
    }

    private Estimate guide(String name) {
        return Estimate.exactly(knowledge.guidelineSi(name));
    }

    private void next(String step, Estimate lasts) {
        add(step, clock, lasts);
        clock = sum(clock, lasts);
    }

    private void add(String id, Estimate at, Estimate lasts) {
        StepWords words = knowledge.steps().get(id);
        if (words == null) {
            throw new IllegalStateException("no words for the step '" + id + "'");
        }
        steps.add(new Step(id, at, lasts, words.say(), words.watch() == null ? "" : words.watch()));
    }

    /** The steps with figures filled in; done last, when all figures are known. */
    static List<Step> worded(List<Step> steps, Wording wording) {
        return steps.stream()
                .map(s -> new Step(s.id(), s.atS(), s.lastsS(), wording.fill(s.say()), wording.fill(s.watch())))
                .toList();
    }

    private static Estimate sum(Estimate a, Estimate b) {
        return new Estimate(a.low() + b.low(), a.typical() + b.typical(), a.high() + b.high());
    }

    private static Estimate minus(Estimate a, Estimate b) {
        return new Estimate(a.low() - b.typical(), a.typical() - b.typical(), a.high() - b.typical());
    }
}
