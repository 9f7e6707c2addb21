package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Step;
import pourwright.advice.Strength;
import pourwright.advice.Verdict;
import pourwright.advice.Wording;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.remedy.Goal;
import pourwright.units.Dimension;
import pourwright.units.Show;

/**
 * What a consultation looks like as lines of text: the answer first, the reasons on request. Numbers in square brackets
 * are what {@code how} takes.
 */
public final class Page {
    private static final int CLOCK = 8;

    /** Topic of the one thing to do with what is mixed already. */
    private static final String NOW = "now";

    /** From here on a clock of minutes says nothing more. */
    private static final double LONG_S = 6 * 3600;

    private final Consultation c;
    private final Knowledge knowledge;
    private final int width;
    private final boolean plain;
    private final Wording wording;
    private final List<Finding> numbered;
    private final Explained explained;

    public Page(Consultation c, Knowledge knowledge, int width, boolean plain) {
        this.c = c;
        this.knowledge = knowledge;
        this.width = width;
        this.plain = plain;
        this.wording = new Wording(knowledge, c.answers(), c.figures());
        this.numbered = c.findings();
        this.explained = new Explained(knowledge, width);
    }

    /** The first page: verdict, what to change, amounts, timetable, cautions by name. */
    public List<String> first() {
        return first(true);
    }

    /**
     * The first page.
     *
     * @param talk true when the person can ask for more; then it says how
     */
    public List<String> first(boolean talk) {
        List<String> out = new ArrayList<>();
        // With a warm cup in the hand this is all there is time to read.
        c.findings().stream()
                .filter(f -> f.topic().equals(NOW))
                .findFirst()
                .ifPresent(f -> out.addAll(wrap(f.say(), "", "")));
        out.addAll(wrap(verdictLine(), "", ""));
        List<Finding> musts = c.findings().stream()
                .filter(f -> f.strength() == Strength.STOP || f.strength() == Strength.CHANGE)
                .toList();
        if (!musts.isEmpty()) {
            out.add("");
            musts.forEach(f -> out.addAll(wrap(f.say(), mark(f), "     ")));
        }
        if (talk && c.verdict() != Verdict.GO) {
            out.addAll(wrap("\"fix\" looks for the smallest change that makes it work.", "", ""));
        }
        amounts().ifPresent(a -> {
            out.add("");
            out.addAll(wrap(a, "Mix: ", "     "));
        });
        if (!c.timetable().isEmpty()) {
            out.add("");
            out.addAll(timetable());
        }
        Bench.corrected(c).ifPresent(line -> {
            out.add("");
            out.addAll(wrap(line, "", "  "));
        });
        List<Finding> cautions =
                c.findings().stream().filter(Finding::isCaution).toList();
        if (!cautions.isEmpty() && talk) {
            out.add("");
            String names = cautions.stream()
                    .map(f -> knowledge.cautions().get(f.caution()).hazard())
                    .map(h -> h.substring(0, 1).toLowerCase(Locale.ROOT) + h.substring(1))
                    .collect(Collectors.joining("; "));
            out.addAll(wrap(names + ". Type \"cautions\" to read them before you start.", "Hazards: ", "  "));
        }
        long more = c.findings().stream()
                .filter(f -> f.strength().compareTo(Strength.CHANGE) > 0 && !f.isCaution())
                .count();
        if (more > 0 && talk) {
            out.add("");
            out.addAll(wrap("\"more\" shows " + more + " further pieces of advice.", "", ""));
        }
        return out;
    }

    /** True when a search for the smallest change has something to look for. */
    boolean wantsFix() {
        return Goal.of(c) != Goal.NOTHING;
    }

    /** True when there is a degas of the mix to follow. */
    boolean degasses() {
        return c.methods().contains("degas-mix") || c.methods().contains("degas-in-mould");
    }

    private String verdictLine() {
        String when = "";
        Optional<FigureValue> margin = c.figure("time-margin");
        Optional<FigureValue> working = c.figure("working-time");
        if (margin.isPresent() && working.isPresent()) {
            double left = margin.get().si().typical();
            String of = " of a working time of " + wording.show(working.get()) + ".";
            when = left >= 0
                    ? " You finish " + (degasses() ? "pouring and degassing" : "pouring") + " with " + minutes(left)
                            + " to spare" + of
                    : " The steps take " + minutes(-left) + " more than you have," + of.substring(0, of.length());
        }
        long changes = c.findings().stream()
                .filter(f -> f.strength() == Strength.CHANGE)
                .count();
        return switch (c.verdict()) {
            case GO -> "GO. The job works as you described it." + when;
            case CHANGE -> "CHANGE " + (changes == 1 ? "one thing" : changes + " things") + " first." + when;
            case STOP -> "STOP. Do not do it like this.";
        };
    }

    private static String minutes(double seconds) {
        return Wording.one(seconds, Dimension.TIME);
    }

    private Optional<String> amounts() {
        Optional<FigureValue> a = c.figure("part-mass-a");
        Optional<FigureValue> b = c.figure("part-mass-b");
        Optional<FigureValue> all = c.figure("mix-mass");
        if (all.isEmpty() || c.figure("mixed-ago").isPresent()) {
            return Optional.empty();
        }
        StringBuilder s = new StringBuilder();
        if (a.isPresent()
                && b.isPresent()
                && narrow(a.get().si())
                && narrow(b.get().si())) {
            s.append(wording.fill("{part-mass-a} of {first-can} + {part-mass-b} of {second-can} = "));
        }
        s.append(Wording.one(all.get().si().typical(), Dimension.MASS));
        c.figure("mix-volume")
                .ifPresent(v -> s.append(" (")
                        .append(Wording.one(v.si().typical(), Dimension.VOLUME))
                        .append(')'));
        boolean degassed = c.methods().contains("degas-mix") || c.methods().contains("degas-before-thickening");
        Optional<FigureValue> batches = c.figure("batch-count");
        if (degassed && batches.isPresent() && batches.get().si().typical() > 1) {
            s.append(wording.fill(", in {batch-count} batches of at most {batch-mass-max} in this cup"));
        }
        return Optional.of(s.append('.').toString());
    }

    private static boolean narrow(Estimate e) {
        return e.exact() || e.low() > 0 && e.high() / e.low() < 1.05;
    }

    private List<String> timetable() {
        List<String> out = new ArrayList<>();
        for (Step s : c.timetable()) {
            String at = clock(s.atS().typical());
            String lasts = s.lastsS().typical() > 0 ? " (" + minutes(s.lastsS().typical()) + ")" : "";
            String text = s.say() + lasts + (s.watch().isEmpty() ? "" : " Look for: " + s.watch() + ".");
            if (plain) {
                out.addAll(wrap(text, at + ": ", "  "));
            } else {
                out.addAll(wrap(text, " ".repeat(Math.max(0, CLOCK - at.length())) + at + "  ", " ".repeat(CLOCK + 2)));
            }
        }
        out.addAll(wrap("Times count from the start of mixing; \"-\" means before it.", "", ""));
        return out;
    }

    static String clock(double seconds) {
        if (Double.isInfinite(seconds)) {
            return "never";
        }
        if (seconds >= LONG_S) {
            return Show.quantity(seconds, "h", Dimension.TIME);
        }
        return seconds < 0 ? "-" + Show.time(-seconds) : Show.time(seconds);
    }

    /** Everything beyond the first page: what to do, to weigh up and to know. */
    public List<String> more() {
        List<String> out = new ArrayList<>();
        group(out, Strength.DO, "Do");
        group(out, Strength.CONSIDER, "Weigh up");
        group(out, Strength.NOTE, "Know");
        if (!c.assumed().isEmpty()) {
            out.add("");
            out.addAll(wrap(
                    String.join(", ", c.assumed()) + ". Answer them for a sharper plan.",
                    "Taken from the class or assumed: ",
                    "  "));
        }
        return out;
    }

    private void group(List<String> out, Strength strength, String title) {
        List<Finding> some = c.findings().stream()
                .filter(f -> f.strength() == strength && !f.isCaution())
                .toList();
        if (some.isEmpty()) {
            return;
        }
        if (!out.isEmpty()) {
            out.add("");
        }
        out.add(title);
        some.forEach(f -> out.addAll(wrap(f.say(), mark(f), "     ")));
    }

    private String mark(Finding f) {
        String n = "[" + (numbered.indexOf(f) + 1) + "] ";
        return plain ? n : " ".repeat(Math.max(0, 5 - n.length())) + n;
    }

    /** All cautions, and the sentence that ends them. */
    public List<String> cautions() {
        List<String> out = new ArrayList<>();
        for (Finding f : c.findings()) {
            if (f.isCaution()) {
                String hazard = knowledge.cautions().get(f.caution()).hazard();
                out.addAll(wrap(
                        hazard.substring(0, 1).toUpperCase(Locale.ROOT) + hazard.substring(1) + ". " + f.say(),
                        mark(f),
                        "     "));
            }
        }
        out.add("");
        out.addAll(wrap(knowledge.closing(), "", ""));
        return out;
    }

    /** Why a finding was given: its reason, rule, figures, answers and sources. */
    public List<String> how(String which) {
        Optional<Finding> found = which.matches("\\d{1,4}")
                ? numbered.stream()
                        .skip(Math.max(0, Integer.parseInt(which) - 1L))
                        .findFirst()
                : c.finding(which);
        if (found.isEmpty()) {
            return wrap(
                    "There is no finding \"" + which + "\". They are numbered 1 to " + numbered.size()
                            + "; \"how 1\" explains the first.",
                    "",
                    "");
        }
        Finding f = found.get();
        List<String> out = new ArrayList<>(wrap(f.say(), mark(f), "     "));
        out.addAll(wrap(f.because(), "  because: ", "    "));
        out.addAll(wrap(f.rule().says() + " (" + f.rule().folder() + "/" + f.id() + ")", "  rule: ", "    "));
        f.figures().forEach(id -> c.figure(id).ifPresent(v -> out.addAll(explained.figure(v, wording, "  figure: "))));
        f.methods().forEach(m -> chosenBy(m).ifPresent(line -> out.addAll(wrap(line, "  since: ", "    "))));
        f.answers()
                .forEach(id -> out.addAll(wrap(explained.answer(id, c.answers(), c.assumed()), "  answer: ", "    ")));
        f.rule().sources().forEach(k -> out.addAll(wrap(explained.source(k), "  source: ", "    ")));
        return out;
    }

    private Optional<String> chosenBy(String method) {
        return c.conclusions().stream()
                .filter(x -> x.target().equals(method))
                .map(x -> method + ", by the rule \"" + x.rule().says() + "\" ("
                        + x.rule().id() + ")")
                .findFirst();
    }

    static String echo(Answer answer) {
        if (answer instanceof Answer.Quantity q) {
            return q.echo();
        }
        if (answer instanceof Answer.Ratio r) {
            return r.echo();
        }
        if (answer instanceof Answer.Text t) {
            return t.text();
        }
        return answer instanceof Answer.Choice ch ? ch.id() : "don't know";
    }

    /** Every computed figure with its formula, source and validity. */
    public List<String> figures() {
        List<String> out = new ArrayList<>();
        for (FigureValue v : c.figures().values()) {
            if (v.defined().isPresent()) {
                out.addAll(explained.figure(v, wording, ""));
            }
        }
        c.uncomputed().forEach((id, why) -> out.addAll(wrap(why, id + ": not computed. ", "    ")));
        return out;
    }

    /** The rules that fired, by folder. */
    public List<String> rules() {
        List<String> out = new ArrayList<>();
        Map<String, String> fired = new TreeMap<>();
        c.conclusions().stream()
                .filter(x -> !x.rule().folder().equals("interview"))
                .forEach(x -> fired.put(
                        x.rule().folder() + "/" + x.rule().id(), x.rule().says()));
        fired.forEach((id, says) -> out.addAll(wrap(says, id + ": ", "    ")));
        return out;
    }

    /** Where it all comes from. */
    public List<String> sources() {
        List<String> out = new ArrayList<>();
        TreeSet<String> keys = new TreeSet<>();
        c.findings().forEach(f -> keys.addAll(f.rule().sources()));
        c.figures().values().forEach(v -> v.defined().ifPresent(d -> keys.addAll(d.sources())));
        keys.forEach(k -> out.addAll(wrap(explained.source(k), k + ": ", "    ")));
        return out;
    }

    /** The answers so far, numbered, as they were typed and as they were read. */
    public static List<String> answers(Answers answers, Knowledge knowledge, int width) {
        List<String> out = new ArrayList<>();
        int n = 1;
        for (Map.Entry<String, Answers.Given> e : answers.all().entrySet()) {
            String said = said(e.getKey(), e.getValue().answer(), knowledge);
            out.addAll(Wrap.text(said, width, n + ". " + e.getKey() + ": ", "    "));
            n++;
        }
        if (out.isEmpty()) {
            out.add("No answers yet.");
        }
        return out;
    }

    /** The texts of several choices, in the order of the question. */
    static String several(Question q, Answer.Several several) {
        return several.ids().stream()
                .map(id -> q.choice(id).map(Question.Choice::text).orElse(id))
                .collect(Collectors.joining("; "));
    }

    /** An answer in words. */
    static String said(String question, Answer answer, Knowledge knowledge) {
        if (answer instanceof Answer.Choice choice) {
            if (knowledge.materials().containsKey(choice.id())) {
                return knowledge.materials().get(choice.id()).name();
            }
            Optional<Question.Choice> named = knowledge.question(question).flatMap(q -> q.choice(choice.id()));
            return named.isPresent() ? named.get().text() : choice.id();
        }
        if (answer instanceof Answer.Several s) {
            return knowledge.question(question).map(q -> several(q, s)).orElse(String.join(", ", s.ids()));
        }
        return echo(answer);
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
