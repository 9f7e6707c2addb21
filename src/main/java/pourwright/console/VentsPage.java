package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pourwright.advice.Finding;
import pourwright.advice.Wording;
import pourwright.facts.Answer;
import pourwright.geometry.Attitude;
import pourwright.geometry.MeshReport;
import pourwright.geometry.Picture;
import pourwright.geometry.Pocket;
import pourwright.geometry.Trapped;
import pourwright.geometry.Vec3;
import pourwright.geometry.VentPlan;
import pourwright.knowledge.Knowledge;
import pourwright.rulebook.RuleCard;
import pourwright.sheet.MouldOnSheet;
import pourwright.vents.MeshFindings;
import pourwright.vents.Treatment;
import pourwright.vents.VentAdvice;

/** What was found about trapped air, as lines of text: the answer first, then each pocket, the vents, and other ways up. */
public final class VentsPage {
    /** Pockets beyond this many stand on a page of their own. */
    private static final int FIRST_POCKETS = 8;

    private static final int MOST_ON_SHEET = 6;

    private static final double MM = 1000;
    private static final double TENTH_MM = 0.1;
    private static final double DROP_MM3 = 50;
    private static final double LITRE_M3 = 1e-3;

    private final VentAdvice a;
    private final Knowledge knowledge;
    private final int width;
    private final boolean plain;
    private final double metresPerUnit;
    private final String unit;
    private final Explained explained;

    /**
     * @param unit the unit in which places are shown: that of the mesh, or mm
     * @param metresPerUnit its length, m
     */
    public VentsPage(VentAdvice a, Knowledge knowledge, int width, boolean plain, String unit, double metresPerUnit) {
        this.a = a;
        this.knowledge = knowledge;
        this.width = width;
        this.plain = plain;
        this.unit = unit;
        this.metresPerUnit = metresPerUnit;
        this.explained = new Explained(knowledge, width);
    }

    /** The first page. */
    public List<String> first() {
        List<String> out = new ArrayList<>(wrap(headline(), "", ""));
        assumptions().ifPresent(s -> out.addAll(wrap(s, "", "  ")));
        a.mesh().ifPresent(m -> mesh(out, m));
        if (!a.treatments().isEmpty()) {
            out.add("");
            out.addAll(pockets(FIRST_POCKETS));
        }
        a.mesh().ifPresent(m -> {
            vents(out, m);
            attitudes(out, m);
        });
        List<Finding> cautions =
                a.findings().stream().filter(Finding::isCaution).toList();
        if (!cautions.isEmpty()) {
            out.add("");
            out.addAll(wrap(
                    cautions.stream()
                                    .map(f -> Words.lower(knowledge
                                            .cautions()
                                            .get(f.caution())
                                            .hazard()))
                                    .collect(Collectors.joining("; "))
                            + ".",
                    "Hazards: ",
                    "  "));
        }
        return out;
    }

    private String headline() {
        int vents = a.vents();
        if (a.mesh().map(m -> m.trapped().noOutlet()).orElse(false)) {
            return "No outlet: nothing can fill. The gate is the only opening, and it lies at the lowest point. Make "
                    + counted(Math.max(1, vents), "vent") + ".";
        }
        if (a.treatments().isEmpty()) {
            return a.mesh().isPresent()
                    ? "No vent needed. No air is trapped that would be seen."
                    : "No vent needed. A smooth open shape traps no air.";
        }
        String others = a.treatments().stream()
                .filter(t -> !t.vented() && !t.decision().equals("leave"))
                .map(t -> knowledge.decisions().get(t.decision()).name())
                .distinct()
                .collect(Collectors.joining("; "));
        String rest = others.isEmpty() ? "" : " Besides: " + others + ".";
        return vents == 0 ? "No vent needed." + rest : "Make " + counted(vents, "vent") + "." + rest;
    }

    private static String counted(int n, String what) {
        return n + "\u00a0" + what + (n == 1 ? "" : "s");
    }

    private Optional<String> assumptions() {
        List<String> taken = new ArrayList<>();
        for (String id : a.assumed()) {
            Answer given = a.job().answers().get(id).orElse(null);
            if (given == null && !a.treatments().isEmpty()) {
                given = a.treatments().get(0).job().answers().get(id).orElse(null);
            }
            if (given != null) {
                taken.add(id + " = " + Page.said(id, given, knowledge));
            }
        }
        return taken.isEmpty()
                ? Optional.empty()
                : Optional.of("Taken, since nobody said: " + String.join("; ", taken) + ".");
    }

    private void mesh(List<String> out, MeshFindings m) {
        MeshReport report = m.mesh().report();
        Trapped trapped = m.trapped();
        out.add("");
        out.addAll(wrap(size(report) + " " + report.triangles() + "\u00a0triangles.", "Mesh: ", "  "));
        report.notes().forEach(n -> out.addAll(wrap(n, "  ", "  ")));
        trapped.notes().forEach(n -> out.addAll(wrap(n, "  ", "  ")));
        if (trapped.gate() != null) {
            out.addAll(wrap(
                    "at " + place(trapped.gate())
                            + (trapped.gateAssumed() ? " (taken: the lowest point, since none was given)." : "."),
                    "Gate: ",
                    "  "));
        }
        if (trapped.ignored() > 0) {
            out.addAll(wrap(
                    counted(trapped.ignored(), "place") + " too small to tell hold " + volume(trapped.ignoredM3())
                            + " together.",
                    "  ",
                    "  "));
        }
        double flatCm2 = trapped.flatCeilingM2() * MM * MM / 100;
        if (flatCm2 >= 1) {
            out.addAll(wrap(
                    "Flat ceilings of " + number(flatCm2)
                            + "\u00a0cm\u00b2 let their air out sideways, but a film may stay. Lean the mould a little.",
                    "  ",
                    "  "));
        }
        for (Trapped.Region r : trapped.unreachable()) {
            out.addAll(wrap(
                    "Nothing reaches the space of " + volume(r.volumeM3()) + " under " + place(r.place()) + ".",
                    "  ",
                    "  "));
        }
    }

    /** The size of a mesh, as it is shown for confirmation. */
    static String size(MeshReport report) {
        Vec3 d = report.high().minus(report.low());
        return String.format(
                Locale.ROOT,
                "%s \u00d7 %s \u00d7 %s, holding %s.",
                length(d.x()),
                length(d.y()),
                length(d.z()),
                volume(report.volumeM3()));
    }

    /** Each pocket with what to do about it. */
    public List<String> pockets(int most) {
        List<String> out = new ArrayList<>();
        int n = 0;
        for (Treatment t : a.treatments()) {
            if (++n > most) {
                out.addAll(wrap(
                        "And " + (a.treatments().size() - most) + " smaller ones: \"pockets\" lists them all.",
                        "",
                        ""));
                break;
            }
            out.addAll(wrap(what(t) + " " + t.say() + leaning(t), mark(n), "     "));
        }
        return out;
    }

    private String what(Treatment t) {
        String air = t.figure("pocket-volume")
                .map(v -> v.si().exact()
                        ? volume(v.si().typical())
                        : new Wording(knowledge, t.job().answers(), t.job().figures()).show(v))
                .orElse("air");
        if (t.pocket().isEmpty()) {
            return (a.count() > 1 ? a.count() + " places, each " : "This place, ") + air + " of air:";
        }
        Pocket p = t.pocket().get();
        String part = p.parent() > 0 ? " (a part of " + p.parent() + ")" : "";
        return volume(p.volumeM3()) + part + " under " + place(p.peak()) + ", sealed " + length(p.depthM())
                + " below its top:";
    }

    private String leaning(Treatment t) {
        return t.lean().map(up -> " It fills with " + direction(up) + " up.").orElse("");
    }

    private void vents(List<String> out, MeshFindings m) {
        List<VentPlan.Vent> vents = m.vents().vents();
        if (vents.isEmpty()) {
            return;
        }
        out.add("");
        int n = 0;
        for (VentPlan.Vent v : vents) {
            String purpose = n == 0 && m.trapped().noOutlet()
                    ? ": without it nothing fills."
                    : ", for " + volume(v.freedM3()) + " of air.";
            out.addAll(wrap("at " + place(v.place()) + wide() + purpose + rise(v), "Vent V" + ++n + " ", "  "));
        }
        double left = m.vents().left().trappedM3();
        String rest = left > 0
                ? "Then " + volume(left) + " is left, for the other remedies above."
                : "Then nothing is left that would be seen.";
        out.addAll(wrap(m.vents().enough() ? rest : "Even so many vents do not free all of it.", "", ""));
    }

    private static String rise(VentPlan.Vent v) {
        return v.riseM() * MM < TENTH_MM
                ? ""
                : " Its mouth must stand " + length(v.riseM()) + " higher, level with the liquid at the end.";
    }

    private void attitudes(List<String> out, MeshFindings m) {
        if (m.attitudes().isEmpty()) {
            return;
        }
        out.add("");
        out.addAll(wrap(
                "Ways to stand it, best of " + m.tried() + " tried and its flat faces. Numbers are the mesh's axes:",
                "",
                ""));
        int n = 0;
        for (Attitude at : m.attitudes()) {
            String trapped = at.trappedM3() > 0
                    ? volume(at.trappedM3()) + " trapped without"
                    : at.vents() > 0 ? "or nothing fills" : "no air trapped";
            out.addAll(wrap(
                    direction(at.up()) + " up: " + counted(at.vents(), "vent") + ", " + trapped + ", "
                            + length(at.fillHeightM()) + " high.",
                    "  " + (char) ('a' + n++) + ". ",
                    "     "));
        }
    }

    /** How the mould stands and what to do to it, for a sheet, with its picture. */
    public MouldOnSheet onSheet() {
        List<String> lines = new ArrayList<>();
        a.mesh().ifPresent(m -> {
            lines.add("Stand it with " + direction(m.setup().up()) + " up.");
            List<VentPlan.Vent> vents = m.vents().vents();
            for (int i = 0; i < vents.size(); i++) {
                lines.add(
                        "Vent V" + (i + 1) + " at " + place(vents.get(i).place()) + wide() + "." + rise(vents.get(i)));
            }
        });
        a.treatments().stream()
                .filter(t -> !t.vented() && !t.decision().equals("leave"))
                .limit(MOST_ON_SHEET)
                .forEach(t -> lines.add(what(t) + " " + t.say() + leaning(t)));
        return new MouldOnSheet(lines, a.mesh().map(m -> Picture.svg(m.mesh(), m.vented(), m.trapped())));
    }

    private String wide() {
        return a.job()
                .figure("vent-diameter")
                .map(v ->
                        ", " + new Wording(knowledge, a.job().answers(), a.job().figures()).show(v) + " wide")
                .orElse("");
    }

    /** The picture as text. */
    public List<String> picture() {
        return a.mesh()
                .map(m ->
                        Picture.text(m.mesh(), m.vented(), m.trapped()).lines().toList())
                .orElseGet(() -> wrap("There is no picture without a mesh.", "", ""));
    }

    /** All advice about the mould and the pour, numbered on from the pockets. */
    public List<String> more() {
        List<String> out = new ArrayList<>();
        List<Finding> findings = advice();
        for (int i = 0; i < findings.size(); i++) {
            out.addAll(wrap(findings.get(i).say(), mark(a.treatments().size() + i + 1), "     "));
        }
        return out.isEmpty() ? wrap("There is no further advice.", "", "") : out;
    }

    private List<Finding> advice() {
        return a.findings().stream().filter(f -> !f.isCaution()).toList();
    }

    /** All cautions, and the sentence that ends them. */
    public List<String> cautions() {
        List<String> out = new ArrayList<>();
        a.findings().stream()
                .filter(Finding::isCaution)
                .forEach(f -> out.addAll(
                        wrap(Words.upper(knowledge.cautions().get(f.caution()).hazard()) + ". " + f.say(), "", "  ")));
        out.add("");
        out.addAll(wrap(knowledge.closing(), "", ""));
        return out;
    }

    /** Why a pocket is treated as it is, or why a piece of advice was given. */
    public List<String> how(String which) {
        int n = which.matches("\\d{1,4}") ? Integer.parseInt(which) : which.isBlank() ? 1 : 0;
        int pockets = a.treatments().size();
        if (n >= 1 && n <= pockets) {
            Treatment t = a.treatments().get(n - 1);
            List<String> out = new ArrayList<>(wrap(what(t) + " " + t.say() + leaning(t), mark(n), "     "));
            Wording wording = new Wording(knowledge, t.job().answers(), t.job().figures());
            reason(out, t.rule());
            for (String id : List.of("pocket-volume", "pocket-bubble", "residue-diameter", "vent-diameter")) {
                t.figure(id).ifPresent(v -> out.addAll(explained.figure(v, wording, "  figure: ")));
            }
            for (String id : List.of("undercut-width", "undercut-depth", "head-height", "pocket-freed-by-tilt")) {
                if (t.job().answers().has(id)) {
                    out.addAll(
                            wrap(explained.answer(id, t.job().answers(), t.job().assumed()), "  answer: ", "    "));
                }
            }
            t.rule().sources().forEach(k -> out.addAll(wrap(explained.source(k), "  source: ", "    ")));
            return out;
        }
        List<Finding> findings = advice();
        if (n > pockets && n <= pockets + findings.size()) {
            Finding f = findings.get(n - pockets - 1);
            List<String> out = new ArrayList<>(wrap(f.say(), mark(n), "     "));
            reason(out, f.rule());
            f.answers()
                    .forEach(id -> out.addAll(
                            wrap(explained.answer(id, a.job().answers(), a.job().assumed()), "  answer: ", "    ")));
            f.rule().sources().forEach(k -> out.addAll(wrap(explained.source(k), "  source: ", "    ")));
            return out;
        }
        return wrap(
                pockets + findings.size() == 0
                        ? "Nothing here needs a reason: no air is trapped."
                        : "There is no number \"" + Clean.quoted(which) + "\". They run from 1 to "
                                + (pockets + findings.size()) + "; \"how 1\" explains the first.",
                "",
                "");
    }

    private void reason(List<String> out, RuleCard rule) {
        out.addAll(wrap(rule.because(), "  because: ", "    "));
        out.addAll(wrap(rule.says() + " (" + rule.folder() + "/" + rule.id() + ")", "  rule: ", "    "));
    }

    /** The rules that decided about pockets. */
    public List<String> rules() {
        Map<String, String> fired = new TreeMap<>();
        a.treatments()
                .forEach(t -> fired.put(
                        t.rule().folder() + "/" + t.rule().id(), t.rule().says()));
        a.findings()
                .forEach(f ->
                        fired.put(f.rule().folder() + "/" + f.id(), f.rule().says()));
        List<String> out = new ArrayList<>();
        fired.forEach((id, says) -> out.addAll(wrap(says, id + ": ", "    ")));
        return out;
    }

    /** Where it comes from. */
    public List<String> sources() {
        TreeSet<String> keys = new TreeSet<>();
        a.treatments().forEach(t -> keys.addAll(t.rule().sources()));
        a.findings().forEach(f -> keys.addAll(f.rule().sources()));
        List<String> out = new ArrayList<>();
        keys.forEach(k -> out.addAll(wrap(explained.source(k), k + ": ", "    ")));
        return out;
    }

    private String mark(int n) {
        String mark = "[" + n + "] ";
        return plain ? mark : " ".repeat(Math.max(0, 5 - mark.length())) + mark;
    }

    private String place(Vec3 at) {
        Vec3 p = at.times(1 / metresPerUnit);
        return "(" + number(p.x()) + ", " + number(p.y()) + ", " + number(p.z()) + ")\u00a0" + unit;
    }

    private static String direction(Vec3 up) {
        return "(" + number(up.x()) + ", " + number(up.y()) + ", " + number(up.z()) + ")";
    }

    /** Three digits are as near as a finger finds a place. */
    private static String number(double value) {
        if (value == 0 || Math.abs(value) < 5e-4) {
            return "0";
        }
        int whole = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        int digits = Math.max(0, Math.min(3, 3 - whole));
        String text = String.format(Locale.ROOT, "%." + digits + "f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    private static String length(double metres) {
        return metres < 1 ? number(metres * MM) + "\u00a0mm" : number(metres) + "\u00a0m";
    }

    /** A pocket may hold less than a drop: then cubic millimetres say more. */
    private static String volume(double cubicMetres) {
        double mm3 = cubicMetres * MM * MM * MM;
        if (mm3 < DROP_MM3) {
            return number(mm3) + "\u00a0mm\u00b3";
        }
        return cubicMetres < LITRE_M3 ? number(mm3 / MM) + "\u00a0mL" : number(cubicMetres / LITRE_M3) + "\u00a0L";
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
