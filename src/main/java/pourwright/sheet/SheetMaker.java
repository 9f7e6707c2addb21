package pourwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.advice.Verdict;
import pourwright.advice.Wording;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;
import pourwright.units.Show;

/** Lays a plan out for a sheet. */
public final class SheetMaker {
    /** More batches than this would fill the page: one line then says how often. */
    private static final int MOST_BATCHES = 6;

    /** A range narrower than this can be put on a scale. */
    private static final double NARROW = 1.05;

    private static final Set<String> VACUUM =
            Set.of("degas-mix", "degas-before-thickening", "degas-in-mould", "degas-component");

    private final Consultation c;
    private final Knowledge knowledge;
    private final Wording wording;

    private SheetMaker(Consultation c, Knowledge knowledge) {
        this.c = c;
        this.knowledge = knowledge;
        this.wording = new Wording(knowledge, c.answers(), c.figures());
    }

    /**
     * The sheet of a plan.
     *
     * @param title what to call the job; blank for liquid and job
     * @param mould how the mould stands with its vents, where it is known
     * @param version what made it
     */
    public static Sheet of(
            Consultation c, Knowledge knowledge, String title, Optional<MouldOnSheet> mould, String version) {
        return new SheetMaker(c, knowledge).sheet(title, mould, version);
    }

    private Sheet sheet(String title, Optional<MouldOnSheet> mould, String version) {
        boolean stop = c.verdict() == Verdict.STOP;
        return new Sheet(
                title.isBlank() ? ownTitle() : title,
                facts(),
                verdict(),
                stop ? List.of() : weighings(),
                stop ? "Nothing is weighed while the advice is to stop." : scaleNote(),
                stop ? "" : gauge(),
                stop ? List.of() : rows(),
                mould.map(MouldOnSheet::lines).orElseGet(this::aboutMould),
                mould.flatMap(MouldOnSheet::picture),
                cautions(),
                knowledge.closing(),
                version);
    }

    private String ownTitle() {
        String name = wording.fill("{material}");
        String job = said("job");
        return upper(name) + (job.isEmpty() ? "" : ": " + job);
    }

    private String said(String question) {
        return knowledge
                .question(question)
                .flatMap(q -> q.choice(c.answers().choice(question)))
                .map(Question.Choice::text)
                .orElse("");
    }

    private List<Sheet.Fact> facts() {
        List<Sheet.Fact> out = new ArrayList<>();
        out.add(new Sheet.Fact("Liquid", wording.fill("{material}")));
        if (!said("job").isEmpty()) {
            out.add(new Sheet.Fact("Job", said("job")));
        }
        c.figure("mix-mass").ifPresent(m -> {
            String volume = c.figure("mix-volume")
                    .map(v -> " (" + wording.amounts().one(v.si().typical(), Dimension.VOLUME) + ")")
                    .orElse("");
            String times = batches() > 1 ? ", in " + batches() + " batches" : "";
            out.add(new Sheet.Fact("Amount", wording.amounts().one(m.si().typical(), Dimension.MASS) + volume + times));
        });
        if (c.methods().contains("degas-mix") || c.methods().contains("degas-before-thickening")) {
            fact(out, "Cup", "cup-volume");
            fact(out, "Froth wants", "froth-volume");
        }
        fact(out, "Working time", "working-time");
        fact(out, "Pour by", "pour-by");
        fact(out, "Room", "room-temperature");
        if (c.methods().contains("pressure-cure")) {
            fact(out, "Pressure", "pressure-cure");
        }
        return out;
    }

    private void fact(List<Sheet.Fact> out, String label, String figure) {
        c.figure(figure).ifPresent(v -> out.add(new Sheet.Fact(label, wording.show(v))));
    }

    private Sheet.Verdict verdict() {
        List<String> musts = c.findings().stream()
                .filter(f -> f.strength() == Strength.STOP || f.strength() == Strength.CHANGE)
                .map(Finding::say)
                .toList();
        return new Sheet.Verdict(
                switch (c.verdict()) {
                    case GO -> "GO: the job works as it was described.";
                    case CHANGE -> "CHANGE this first:";
                    case STOP -> "STOP: do not do it like this.";
                },
                musts);
    }

    private int batches() {
        boolean degassed = c.methods().contains("degas-mix") || c.methods().contains("degas-before-thickening");
        return degassed ? (int) Math.max(1, Math.round(typical("batch-count").orElse(1.0))) : 1;
    }

    private Optional<Double> typical(String figure) {
        return c.figure(figure).map(v -> v.si().typical());
    }

    private boolean mixed() {
        return c.figure("mixed-ago").isPresent();
    }

    /** True after a wrong weighing: what stands in the cup is no longer what the plan began with. */
    private boolean inTheCup() {
        return c.answers().get("put-first").isPresent();
    }

    private List<String> weighings() {
        int batches = batches();
        boolean each = batches > 1;
        Optional<FigureValue> a = c.figure("part-mass-a").filter(SheetMaker::narrow);
        Optional<FigureValue> b = c.figure("part-mass-b").filter(SheetMaker::narrow);
        if (mixed() || inTheCup()) {
            return List.of();
        }
        if (a.isEmpty() || b.isEmpty()) {
            return typical("mix-mass").map(m -> List.of(mass(m) + " in all")).orElse(List.of());
        }
        double first = a.get().si().typical() / batches;
        double second = b.get().si().typical() / batches;
        String one = mass(first) + " of " + wording.fill("{first-can}");
        String other = mass(second) + " of " + wording.fill("{second-can}");
        boolean inOrder = first >= second;
        List<String> out = new ArrayList<>();
        int listed = batches <= MOST_BATCHES ? batches : 1;
        for (int i = 1; i <= listed; i++) {
            String which = !each ? "" : listed == 1 ? batches + " times: " : "Batch " + i + ": ";
            out.add(which + (inOrder ? one : other));
            out.add(which + (inOrder ? other : one) + " (" + mass(first + second) + " in all)");
        }
        return out;
    }

    /** Two masses can be put on a scale only when the ratio is known, not a class's range. */
    private static boolean narrow(FigureValue v) {
        Estimate e = v.si();
        return e.exact() || e.low() > 0 && e.high() / e.low() < NARROW;
    }

    private String mass(double kg) {
        return wording.amounts().one(kg, Dimension.MASS);
    }

    private String scaleNote() {
        if (mixed()) {
            return "It is mixed already: nothing is added.";
        }
        if (inTheCup()) {
            return "Something is in the cup already. What to add, if anything, stands at the top.";
        }
        if (weighings().size() > 1) {
            return "The larger part first, the scale at zero before each. In brackets: what it shows without that.";
        }
        return weighings().isEmpty() ? "" : "In the ratio on the label, the larger part first.";
    }

    private String gauge() {
        boolean pulls = c.methods().stream().anyMatch(VACUUM::contains);
        return pulls && c.figure("planned-pressure").isPresent() ? wording.fill("{gauge-target}") : "";
    }

    private List<Sheet.Row> rows() {
        return c.timetable().stream()
                .filter(s -> !(inTheCup() && s.id().startsWith("weigh")))
                .map(s -> new Sheet.Row(
                        Show.clock(s.atS().typical()),
                        s.say()
                                + (s.lastsS().typical() > 0
                                        ? " ("
                                                + wording.amounts()
                                                        .one(s.lastsS().typical(), Dimension.TIME) + ")"
                                        : ""),
                        s.watch()))
                .toList();
    }

    /** Without a mesh: what the rules say to do about the mould. */
    private List<String> aboutMould() {
        return c.findings().stream()
                .filter(f -> f.strength() == Strength.DO && f.rule().folder().equals("mould"))
                .map(Finding::say)
                .toList();
    }

    private List<Sheet.Caution> cautions() {
        return c.findings().stream()
                .filter(Finding::isCaution)
                .map(f -> new Sheet.Caution(
                        upper(knowledge.cautions().get(f.caution()).hazard()), f.say()))
                .toList();
    }

    private static String upper(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
