package pourwright.console;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pourwright.advice.Finding;
import pourwright.advice.Nearest;
import pourwright.advice.Wording;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.Diagnosis;
import pourwright.diagnosis.Evidence;
import pourwright.diagnosis.RankedCause;
import pourwright.diagnosis.Replan;
import pourwright.knowledge.Cause;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;
import pourwright.rulebook.Verb;

/** A diagnosis as lines of text: the likeliest cause first, then the test, the repair, the change and the evidence. */
public final class DiagnosisPage {
    private static final int FIRST = 3;
    private static final int LISTED = 10;
    private static final int PERCENT = 100;
    private static final int CERTAIN = 99;

    private final Diagnosis d;
    private final Diagnoser diagnoser;
    private final DiagnosticKnowledge k;
    private final Knowledge base;
    private final int width;
    private final boolean plain;
    private final Explained explained;

    public DiagnosisPage(Diagnosis d, Diagnoser diagnoser, int width, boolean plain) {
        this.d = d;
        this.diagnoser = diagnoser;
        this.k = diagnoser.knowledge();
        this.base = k.base();
        this.width = width;
        this.plain = plain;
        this.explained = new Explained(base, width);
    }

    /** The first page. */
    public List<String> first() {
        List<String> out = new ArrayList<>();
        if (d.ranked().isEmpty()) {
            out.addAll(
                    wrap("Every cause I know is ruled out by what was said. \"change 1\" alters an answer.", "", ""));
            return out;
        }
        RankedCause top = d.ranked().get(0);
        out.addAll(wrap(headline(top), "", ""));
        out.add("");
        for (int i = 0; i < Math.min(FIRST, d.ranked().size()); i++) {
            out.addAll(causeLines(i, d.ranked().get(i)));
        }
        d.findings().stream()
                .filter(f -> !f.isCaution())
                .forEach(
                        f -> out.addAll(wrap(f.say() + " Both answers are left out until then.", "Unsettled: ", "  ")));
        out.add("");
        nextTest(top).forEach(t -> out.addAll(wrap(t, "Test next: ", "  ")));
        out.addAll(wrap(top.cause().repair(), "Now: ", "  "));
        for (int i = 0; i < top.cause().prevent().size(); i++) {
            out.addAll(wrap(top.cause().prevent().get(i).say(), "Next time (" + (i + 1) + "): ", "  "));
        }
        List<String> hazards = cautionIds().stream()
                .map(id -> base.cautions().get(id).hazard())
                .map(Words::lower)
                .toList();
        if (!hazards.isEmpty()) {
            out.add("");
            out.addAll(wrap(
                    String.join("; ", hazards) + ". Type \"cautions\" to read them before you test or repair.",
                    "Hazards: ",
                    "  "));
        }
        return out;
    }

    private String headline(RankedCause top) {
        if (!d.fits()) {
            return "This picture fits none of the causes I know well. The nearest are below; treat them as guesses.";
        }
        return "Most likely: " + top.cause().name() + " (" + odds(top.probability()) + ").";
    }

    private List<String> causeLines(int i, RankedCause c) {
        List<String> out = new ArrayList<>();
        String n = "[" + (i + 1) + "] ";
        out.addAll(wrap(c.cause().name() + ": " + odds(c.probability()) + ".", plain ? n : "  " + n, "      "));
        reasons(c, true).ifPresent(r -> out.addAll(wrap(r, "      for: ", "        ")));
        reasons(c, false).ifPresent(r -> out.addAll(wrap(r, "      against: ", "        ")));
        return out;
    }

    private Optional<String> reasons(RankedCause c, boolean speaksFor) {
        List<String> some = c.evidence().stream()
                .filter(e -> e.decibans() > 0 == speaksFor)
                .limit(FIRST)
                .map(this::observed)
                .toList();
        return some.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", some) + ".");
    }

    /** An observation as a person would say it. */
    private String observed(Evidence e) {
        if (e.choice().isEmpty()) {
            return Words.lower(e.conclusion().rule().says());
        }
        String text = base.question(e.question())
                .flatMap(q -> q.choice(e.choice()))
                .map(Question.Choice::text)
                .orElse(e.choice());
        return e.question() + " = " + text;
    }

    private List<String> nextTest(RankedCause top) {
        List<String> out = new ArrayList<>();
        if (d.parting().isPresent() && d.ranked().size() > 1) {
            Diagnosis.Parting p = d.parting().get();
            Question q = base.question(p.question()).orElseThrow();
            out.add(q.ask() + " \"" + text(q, p.forFirst()) + "\" points to "
                    + top.cause().name() + ", \"" + text(q, p.forSecond()) + "\" to "
                    + d.ranked().get(1).cause().name() + ".");
        }
        out.add(top.cause().test());
        return out;
    }

    private static String text(Question q, String choice) {
        return q.choice(choice).map(Question.Choice::text).orElse(choice);
    }

    /** Odds in words and numbers. */
    static String odds(double p) {
        int hundredths = (int) Math.round(p * PERCENT);
        String number = hundredths > CERTAIN
                ? "more than 99 in 100"
                : hundredths < 1 ? "less than 1 in 100" : "about " + hundredths + "\u00a0in\u00a0100";
        return Words.chance(p) + ", " + number;
    }

    /** The ten likeliest causes, one line each. */
    public List<String> causes() {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < Math.min(LISTED, d.ranked().size()); i++) {
            RankedCause c = d.ranked().get(i);
            out.addAll(wrap(c.cause().name() + ": " + odds(c.probability()), "[" + (i + 1) + "] ", "    "));
        }
        out.addAll(wrap(
                "Each cause has its own odds: several can be true at once, and they need not add up to 100.", "", ""));
        if (!d.ruledOut().isEmpty()) {
            out.addAll(wrap(
                    d.ruledOut().size() + " causes are impossible with this liquid or this way of working.", "", ""));
        }
        return out;
    }

    /** Everything about one cause: what it is, the evidence for and against, what is not known, the test, the source. */
    public List<String> how(String which) {
        Optional<RankedCause> found = find(which);
        if (found.isEmpty()) {
            return wrap(noCause(which), "", "");
        }
        RankedCause c = found.get();
        List<String> out = new ArrayList<>(wrap(c.cause().name() + ": " + odds(c.probability()) + ".", "", "  "));
        out.addAll(wrap(c.cause().is(), "  what it is: ", "    "));
        out.addAll(wrap(c.cause().physics(), "  why: ", "    "));
        out.addAll(wrap(
                "about " + Math.max(1, Math.round(PERCENT / (1 + Math.pow(10, -c.prior() / 10))))
                        + "\u00a0in\u00a0100 with this symptom and liquid",
                "  before any observation: ",
                "    "));
        for (Evidence e : c.evidence()) {
            String label = e.decibans() > 0 ? "  for (" : "  against (";
            out.addAll(wrap(
                    observed(e) + ". " + e.conclusion().rule().because() + " ["
                            + e.conclusion().rule().id() + "]",
                    label + e.conclusion().say() + "): ",
                    "    "));
        }
        if (!c.unknown().isEmpty()) {
            out.addAll(wrap(String.join(", ", c.unknown()), "  not yet known: ", "    "));
        }
        out.addAll(wrap(c.cause().test(), "  test: ", "    "));
        out.addAll(wrap(c.cause().repair(), "  now: ", "    "));
        c.cause().prevent().forEach(p -> out.addAll(wrap(p.say(), "  next time: ", "    ")));
        TreeSet<String> sources = new TreeSet<>();
        sources.add(c.cause().source());
        c.evidence().forEach(e -> sources.addAll(e.conclusion().rule().sources()));
        sources.forEach(s -> out.addAll(wrap(explained.source(s), "  source: ", "    ")));
        return out;
    }

    private Optional<RankedCause> find(String which) {
        String wanted = which.isBlank() ? "1" : which;
        if (wanted.matches("\\d{1,3}")) {
            return d.ranked().stream()
                    .skip(Math.max(0, Integer.parseInt(wanted) - 1L))
                    .findFirst();
        }
        return d.ranked().stream().filter(c -> c.cause().id().equals(wanted)).findFirst();
    }

    private String noCause(String which) {
        return "There is no cause \"" + Clean.quoted(which) + "\". They are numbered 1 to "
                + d.ranked().size() + "; \"causes\" lists the likeliest.";
    }

    /** The change for the next pour, planned again: old against new. */
    public List<String> prevent(String which) {
        Optional<RankedCause> found = find(which);
        if (found.isEmpty()) {
            return wrap(noCause(which), "", "");
        }
        Cause cause = found.get().cause();
        List<String> out = new ArrayList<>();
        for (Cause.Prevention p : cause.prevent()) {
            out.addAll(wrap(p.say(), "- ", "  "));
            Replan.of(p, d.answers(), base).filter(Replan::tells).ifPresent(r -> {
                r.changes().forEach(c -> out.addAll(wrap(c, "    planned again with ", "      ")));
                out.addAll(wrap(r.verdicts(), "    verdict: ", "      "));
                r.figures().forEach(f -> out.addAll(wrap(f, "    ", "      ")));
            });
        }
        return out;
    }

    /** Single answers that would put another cause first. */
    public List<String> otherwise() {
        List<Diagnosis.Otherwise> all = diagnoser.otherwise(d.answers());
        if (all.isEmpty()) {
            return wrap("No single other answer would put another cause first.", "", "");
        }
        List<String> out = new ArrayList<>();
        for (Diagnosis.Otherwise o : all) {
            Question q = base.question(o.question()).orElseThrow();
            out.addAll(wrap(
                    q.ask() + " If the answer were \"" + text(q, o.choice()) + "\", "
                            + k.causes().get(o.cause()).name() + " would come first.",
                    "- ",
                    "  "));
        }
        return out;
    }

    /** Why a cause does not come first, and what would put it there. */
    public List<String> whyNot(String typed) {
        Optional<String> cause = causeCalled(typed, k);
        if (cause.isEmpty()) {
            return wrap(
                    "Say which cause: \"why-not warp\" or a name that \"causes\" lists."
                            + (typed.isBlank() ? "" : " None comes near \"" + Clean.quoted(typed) + "\"."),
                    "",
                    "");
        }
        String name = k.causes().get(cause.get()).name();
        if (!d.ranked().isEmpty() && d.ranked().get(0).cause().id().equals(cause.get())) {
            return wrap("It comes first already: \"how 1\" explains it.", "", "");
        }
        List<String> out = new ArrayList<>();
        if (d.ruledOut().contains(cause.get())) {
            return wrap(Words.upper(name) + " is impossible with this liquid or way of working.", "", "");
        }
        d.ranked().stream()
                .filter(r -> r.cause().id().equals(cause.get()))
                .findFirst()
                .ifPresent(r -> {
                    out.addAll(wrap(
                            Words.upper(name) + ": " + Words.chance(r.probability()) + ", about "
                                    + Math.round(r.probability() * 100) + " in 100.",
                            "",
                            ""));
                    r.evidence().stream()
                            .filter(e -> e.decibans() < 0)
                            .forEach(e -> out.addAll(wrap(e.conclusion().rule().because(), "  against it: ", "    ")));
                });
        Diagnosis.Wish wish = diagnoser.whyNot(d.answers(), cause.get());
        if (wish.sets().isEmpty()) {
            out.addAll(wrap(
                    "No one or two observations were found that would put it first; " + wish.tried() + " were tried.",
                    "",
                    ""));
            return out;
        }
        out.addAll(wrap("It would come first if you had seen:", "", ""));
        for (List<Diagnosis.Otherwise> set : wish.sets()) {
            out.addAll(wrap(
                    set.stream()
                            .map(o -> o.question() + " = "
                                    + text(base.question(o.question()).orElseThrow(), o.choice()))
                            .collect(Collectors.joining("; and ")),
                    "  * ",
                    "    "));
        }
        return out;
    }

    /** The cause that is meant: by its id, its name, or what comes near. */
    public static Optional<String> causeCalled(String typed, DiagnosticKnowledge k) {
        String id = typed.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
        if (k.causes().containsKey(id)) {
            return Optional.of(id);
        }
        Map<String, String> names = new TreeMap<>();
        k.causes().forEach((cause, c) -> names.put(cause, c.name()));
        return names.entrySet().stream()
                .filter(e -> e.getValue().equalsIgnoreCase(typed.strip()))
                .map(Map.Entry::getKey)
                .findFirst()
                .or(() -> typed.isBlank()
                        ? Optional.empty()
                        : Nearest.of(typed, names).stream().findFirst());
    }

    private List<String> cautionIds() {
        TreeSet<String> ids = new TreeSet<>();
        d.findings().stream().filter(Finding::isCaution).forEach(f -> ids.add(f.caution()));
        d.ranked().stream().limit(FIRST).forEach(c -> ids.addAll(c.cause().cautions()));
        MaterialClass material = base.materials().get(d.answers().choice("material"));
        ids.removeIf(id -> !base.cautions().get(id).concerns(material));
        return List.copyOf(ids);
    }

    /** Cautions for the part as it is and for the tests and repairs of the first causes. */
    public List<String> cautions() {
        List<String> out = new ArrayList<>();
        for (String id : cautionIds()) {
            out.addAll(wrap(
                    Words.upper(base.cautions().get(id).hazard()) + ". "
                            + base.cautions().get(id).say(),
                    "- ",
                    "  "));
        }
        if (!out.isEmpty()) {
            out.add("");
        }
        out.addAll(wrap(base.closing(), "", ""));
        return out;
    }

    /** The figures of the job as it was done. */
    public List<String> figures() {
        Wording wording = new Wording(base, d.answers(), d.figures());
        List<String> out = new ArrayList<>();
        d.figures().values().forEach(v -> {
            if (v.defined().isPresent()) {
                out.addAll(explained.figure(v, wording, ""));
            }
        });
        return out.isEmpty() ? wrap("Nothing was said from which a figure could be computed.", "", "") : out;
    }

    /** The rules of evidence that spoke. */
    public List<String> rules() {
        Map<String, String> fired = new TreeMap<>();
        d.conclusions().forEach(c -> fired.put(c.rule().id(), c.rule().says()));
        List<String> out = new ArrayList<>();
        fired.forEach((id, says) -> out.addAll(wrap(says, "diagnosis/" + id + ": ", "    ")));
        return out;
    }

    /** Where it all comes from. */
    public List<String> sources() {
        TreeSet<String> keys = new TreeSet<>(List.of(k.rates().source()));
        d.conclusions().stream()
                .filter(c -> c.verb() != Verb.NEED)
                .forEach(c -> keys.addAll(c.rule().sources()));
        d.ranked().stream().limit(FIRST).forEach(c -> keys.add(c.cause().source()));
        List<String> out = new ArrayList<>();
        keys.stream()
                .sorted(Comparator.naturalOrder())
                .forEach(key -> out.addAll(wrap(explained.source(key), key + ": ", "    ")));
        return out;
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
