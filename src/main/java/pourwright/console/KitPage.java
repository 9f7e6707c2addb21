package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.advice.Wording;
import pourwright.kit.KitAdvice;
import pourwright.kit.KitReading;
import pourwright.kit.Sizing;
import pourwright.kitfit.Drift;
import pourwright.kitfit.KitDrift;
import pourwright.knowledge.Knowledge;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** What was found about a kit, as lines of text: the verdict first, then what to do in order, then the numbers. */
public final class KitPage {
    private static final List<String> NUMBERS = List.of(
            "effective-speed-measured",
            "expected-speed",
            "base-pressure-measured",
            "work-pressure",
            "leak-rate-measured",
            "leak-at-most",
            "leak-cost",
            "rise-level");

    private final KitAdvice a;
    private final KitLog.Past past;
    private final int width;
    private final Page page;
    private final Explained explained;
    private final Wording wording;

    public KitPage(KitAdvice a, KitLog.Past past, Knowledge knowledge, int width, boolean plain) {
        this.a = a;
        this.past = past;
        this.width = width;
        this.explained = new Explained(knowledge, width);
        this.wording = new Wording(knowledge, a.answers(), a.figures());
        this.page = new Page(consultation(a), knowledge, width, plain);
    }

    /** A test seen as a consultation, so that both are explained by one page. */
    private static Consultation consultation(KitAdvice a) {
        return new Consultation(
                a.answers(),
                a.verdict(),
                a.findings(),
                a.figures(),
                List.of(),
                Set.of(),
                Set.of(),
                List.of(),
                a.conclusions(),
                Set.copyOf(a.assumed()),
                a.unasked(),
                java.util.Map.of());
    }

    /** The first page. */
    public List<String> first() {
        List<String> out = new ArrayList<>(wrap(headline(), "", ""));
        group(out, "", Strength.STOP, Strength.CHANGE);
        group(out, "Do, in this order", Strength.DO);
        group(out, "Weigh up", Strength.CONSIDER);
        group(out, "Know", Strength.NOTE);
        numbers(out);
        a.sizing().ifPresent(s -> sizing(out, s));
        drift(out);
        if (!past.said().isEmpty()) {
            out.add("");
            out.addAll(wrap(past.said(), "", ""));
        }
        if (!a.assumed().isEmpty()) {
            out.add("");
            out.addAll(wrap(String.join(", ", a.assumed()) + ". Answer them for a sharper result.", "Assumed: ", "  "));
        }
        return out;
    }

    private String headline() {
        boolean tested = a.fall().isPresent() || a.rise().isPresent();
        long changes = a.findings().stream()
                .filter(f -> f.strength() == Strength.CHANGE)
                .count();
        return switch (a.verdict()) {
            case STOP -> "STOP. This kit is not safe to run.";
            case CHANGE -> "CHANGE " + (changes == 1 ? "one thing" : changes + " things") + " first. Then test again.";
            case GO ->
                !tested
                        ? a.sizing().isPresent() && a.findings().isEmpty()
                                ? "Pumps for the materials you named."
                                : "GO, as far as can be seen. Gauge readings would tell more."
                        : "GO. Nothing was found that keeps this kit from the work.";
        };
    }

    private void group(List<String> out, String title, Strength... strengths) {
        List<Finding> some = a.findings().stream()
                .filter(f -> List.of(strengths).contains(f.strength()))
                .toList();
        if (some.isEmpty()) {
            return;
        }
        out.add("");
        if (!title.isEmpty()) {
            out.add(title);
        }
        some.forEach(f -> out.addAll(wrap(f.say(), "  [" + (a.findings().indexOf(f) + 1) + "] ", "      ")));
    }

    private void numbers(List<String> out) {
        if (a.fall().isEmpty() && a.rise().isEmpty()) {
            return;
        }
        out.add("");
        for (String id : NUMBERS) {
            a.figure(id).ifPresent(v -> out.addAll(wrap(wording.show(v), id.replace('-', ' ') + ": ", "  ")));
        }
    }

    /** Each reading as it was typed and as absolute pressure. */
    public List<String> readings() {
        List<String> out = new ArrayList<>();
        readings(out, "Pump-down", a.fallReadings());
        readings(out, "Rise", a.riseReadings());
        return out.isEmpty() ? wrap("There are no readings.", "", "") : out;
    }

    private void readings(List<String> out, String title, List<KitReading> readings) {
        if (!readings.isEmpty()) {
            out.add(title + ", as absolute pressure");
            readings.forEach(r -> out.addAll(wrap(
                    wording.amounts().one(r.pressurePa(), Dimension.PRESSURE) + " (" + r.typed() + ")",
                    "  " + Show.time(r.timeS()) + ": ",
                    "    ")));
        }
    }

    private void sizing(List<String> out, Sizing s) {
        out.add("");
        List<Sizing.Want> none = s.wants().stream().filter(w -> !w.vacuum()).toList();
        if (!none.isEmpty()) {
            out.addAll(wrap(
                    none.stream().map(Sizing.Want::name).collect(Collectors.joining(", ")) + ".",
                    "Needs no pump: ",
                    "  "));
        }
        if (none.size() == s.wants().size()) {
            return;
        }
        out.addAll(wrap(
                s.pick()
                        .map(p -> "The smallest pump that serves: " + p.name() + ", " + speed(p.speedM3PerS()) + ".")
                        .orElse("No pump serves all of them in this chamber. A smaller chamber or batch would."),
                "",
                "  "));
        out.add("Kinds of pump");
        for (Sizing.Kind k : s.kinds()) {
            out.addAll(wrap(
                    k.serves().map(v -> "from " + speed(v) + ".").orElse("no, for " + k.material() + ". " + k.why()),
                    "  " + k.name() + ": ",
                    "    "));
        }
        out.add("A bigger pump stops helping");
        for (Sizing.Enough e : s.enough()) {
            out.addAll(
                    wrap("from " + speed(e.speedM3PerS()) + ": " + limit(e.limit()), "  " + e.name() + ", ", "    "));
        }
    }

    private static String speed(double m3PerS) {
        return Wording.one(m3PerS, Dimension.FLOW);
    }

    private static String limit(Sizing.Limit limit) {
        return switch (limit) {
            case HOSE -> "the hose passes no more.";
            case PUMP_DEPTH -> "this kind of pump is near the end of its depth.";
            case BOIL_OFF -> "the liquid would boil if it went deeper.";
            case FROTH -> "froth and hold take their time.";
            case NONE -> "each size that was tried still gains.";
        };
    }

    private void drift(List<String> out) {
        past.drift().ifPresent(d -> {
            out.add("");
            out.addAll(wrap(
                    overall(d), "History of " + past.tests() + (past.tests() == 1 ? " test" : " tests") + ": ", "  "));
            part(out, "speed", d.speed(), Dimension.FLOW);
            part(out, "base pressure", d.base(), Dimension.PRESSURE);
            part(out, "leak", d.leak(), Dimension.LEAK);
        });
    }

    private static String overall(KitDrift d) {
        return switch (d.overall()) {
            case TOO_FEW -> "too few to show a drift; it takes four on different days.";
            case STEADY -> "steady.";
            case IMPROVING -> "it gets better.";
            case WORSE -> "it gets worse. Look for the cause before it stops a job.";
        };
    }

    private void part(List<String> out, String name, Drift d, Dimension dimension) {
        if (d.verdict() == Drift.Verdict.IMPROVING || d.verdict() == Drift.Verdict.WORSE) {
            double perYear = d.perYear().value();
            out.addAll(wrap(
                    (perYear > 0 ? "up by " : "down by ") + wording.amounts().one(Math.abs(perYear), dimension)
                            + " a year, " + (d.verdict() == Drift.Verdict.WORSE ? "worse." : "better."),
                    "  " + name + ": ",
                    "    "));
        }
    }

    /** Why a finding was given. */
    public List<String> how(String which) {
        return a.findings().isEmpty()
                ? wrap("There is no finding that needs a reason.", "", "")
                : page.how(which.isBlank() ? "1" : which);
    }

    /** Every figure with its formula and source. */
    public List<String> figures() {
        List<String> out = new ArrayList<>();
        a.figures().values().forEach(v -> out.addAll(explained.figure(v, wording, "")));
        return out;
    }

    /** The rules that spoke. */
    public List<String> rules() {
        return page.rules();
    }

    /** Where it comes from. */
    public List<String> sources() {
        return page.sources();
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
