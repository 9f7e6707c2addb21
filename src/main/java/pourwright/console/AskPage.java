package pourwright.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pourwright.advice.Consultation;
import pourwright.advice.Difference;
import pourwright.advice.Finding;
import pourwright.advice.Nearest;
import pourwright.advice.Strength;
import pourwright.ask.Deciding;
import pourwright.ask.RuleProse;
import pourwright.ask.Sensitive;
import pourwright.ask.Setting;
import pourwright.ask.Swing;
import pourwright.ask.Wanted;
import pourwright.ask.WantedWords;
import pourwright.ask.Way;
import pourwright.ask.WhyNot;
import pourwright.ask.WhyNotAnswer;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.units.Dimension;

/** Questions to a plan, answered as lines of text: why not, what to measure next, what an answer would settle. */
public final class AskPage {
    private static final int MOST_SETS = 6;
    private static final int MOST_MEASURED = 6;
    private static final int MOST_NAMED = 2;
    private static final int MOST_IN_SET = 6;

    private final Knowledge knowledge;
    private final int width;

    public AskPage(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    /** Why a plan does not advise what was typed, and when it would. */
    public List<String> whyNot(String typed, Consultation c) {
        if (typed.isBlank()) {
            return wrap(
                    "Say what you expected: \"why-not degas-in-mould\", \"why-not pressure cure\", \"why-not go\", or the"
                            + " id of a rule.",
                    "",
                    "");
        }
        Optional<WantedWords.Found> found = WantedWords.find(typed, knowledge);
        if (found.isEmpty()) {
            return wrap(
                    "Nothing a plan can advise is called \"" + Clean.quoted(typed)
                            + "\". Ways of working: "
                            + String.join(", ", knowledge.processes().keySet()) + ". Verdicts: go, change, stop."
                            + " \"rules\" lists ids of rules.",
                    "",
                    "");
        }
        List<String> out = new ArrayList<>();
        if (!found.get().exact()) {
            out.addAll(understood(typed, found.get()));
        }
        out.addAll(whyNot(WhyNot.of(c, found.get().wanted(), knowledge)));
        return out;
    }

    private List<String> understood(String typed, WantedWords.Found found) {
        String others = found.others().isEmpty()
                ? ""
                : " Also near: " + found.others().stream().map(Wanted::id).collect(Collectors.joining(", ")) + ".";
        return wrap(
                "\"" + Clean.quoted(typed) + "\" comes nearest to " + called(found.wanted()) + "." + others, "", "  ");
    }

    private static String called(Wanted w) {
        return switch (w.kind()) {
            case VERDICT -> w.says();
            case METHOD -> "\"" + w.says() + "\" (" + w.id() + ")";
            case FINDING -> "the rule \"" + w.says() + "\" (" + w.id() + ")";
        };
    }

    private List<String> whyNot(WhyNotAnswer a) {
        if (a.already()) {
            return wrap(already(a), "", "");
        }
        List<String> out = new ArrayList<>(wrap(
                switch (a.wanted().kind()) {
                    case VERDICT ->
                        "The verdict is \"" + a.before().verdict().word() + "\", not \""
                                + a.wanted().id() + "\".";
                    case METHOD -> "The plan is not to " + a.wanted().says() + ".";
                    case FINDING -> "The rule \"" + a.wanted().says() + "\" does not speak here.";
                },
                "",
                ""));
        a.against().stream()
                .map(c -> c.rule().says() + " (" + c.rule().id() + ")")
                .distinct()
                .forEach(say -> out.addAll(wrap(say, "  against it: ", "    ")));
        if (a.rule() != null && !a.lacking().isEmpty()) {
            List<String> conditions = new RuleProse(knowledge, Map.of()).conditions(a.rule());
            if (a.wanted().kind() == Wanted.Kind.METHOD) {
                out.addAll(wrap(
                        "\"" + a.rule().card().says() + "\" (" + a.rule().card().id() + ").",
                        "The rule that comes nearest: ",
                        "  "));
            }
            a.lacking().forEach(i -> out.addAll(wrap(conditions.get(i), "  not met: ", "    ")));
        }
        if (a.ways().isEmpty()) {
            out.addAll(wrap(none(a), "", ""));
            return out;
        }
        out.add("");
        out.addAll(wrap("It would be advised if this were so, and all else as it is:", "", ""));
        Map<String, List<Way>> sets = sets(a.ways());
        sets.values().stream().limit(MOST_SETS).forEach(ways -> set(out, ways, a.before()));
        if (sets.size() > MOST_SETS) {
            out.addAll(
                    wrap((sets.size() - MOST_SETS) + " further sets are left out; --json has them all.", "  ", "  "));
        }
        out.addAll(wrap(
                "This explains the plan and recommends nothing. Change an answer only when it is true, above all one about"
                        + " safety.",
                "",
                ""));
        out.addAll(wrap("Each was worked out as a plan of its own, " + a.tried() + " in all.", "", ""));
        return out;
    }

    private static String already(WhyNotAnswer a) {
        return switch (a.wanted().kind()) {
            case VERDICT -> "That is the verdict as it is.";
            case METHOD -> "The plan is to " + a.wanted().says() + " already.";
            case FINDING ->
                "That is advised already: \"how "
                        + (1
                                + a.before().findings().stream()
                                        .map(Finding::id)
                                        .toList()
                                        .indexOf(a.wanted().id()))
                        + "\" explains it.";
        };
    }

    private static String none(WhyNotAnswer a) {
        if (a.proved()) {
            return "No change of one or two answers does: every answer that its rules look at was tried, alone and in"
                    + " pairs, " + a.tried() + " plans in all.";
        }
        return "No other answers were found that would bring it. That is no proof: single answers were tried, and the sets"
                + " that its conditions point to, "
                + a.tried() + " plans in all"
                + (a.whole() ? "." : "; the search ended at its limit.");
    }

    /** Single answers to one question stand together; every other set stands alone. */
    private static Map<String, List<Way>> sets(List<Way> ways) {
        Map<String, List<Way>> sets = new LinkedHashMap<>();
        for (Way w : ways) {
            String key = w.changes().size() == 1 && w.grade() != Setting.Grade.UNKNOWN
                    ? w.changes().get(0).question() + " " + w.after().verdict()
                    : w.changes().toString();
            sets.computeIfAbsent(key, k -> new ArrayList<>()).add(w);
        }
        return sets;
    }

    private void set(List<String> out, List<Way> ways, Consultation before) {
        Way first = ways.get(0);
        List<String> parts = new ArrayList<>();
        if (ways.size() > 1) {
            String some = ways.stream()
                    .limit(MOST_IN_SET)
                    .map(w -> said(w.changes().get(0)))
                    .collect(Collectors.joining(", or "));
            int more = ways.size() - MOST_IN_SET;
            parts.add(first.changes().get(0).question() + " = " + some + (more > 0 ? ", or " + more + " others" : ""));
        } else {
            first.changes().forEach(s -> parts.add(s.question() + " = " + said(s) + now(s, before)));
        }
        out.addAll(wrap(String.join("; and ", parts), "  * ", "    "));
        String verdict = first.after().verdict().word().toUpperCase(Locale.ROOT);
        out.addAll(wrap(
                verdict + ". To see all of it: what-if "
                        + first.changes().stream().map(AskPage::typed).collect(Collectors.joining(" ")),
                "    then ",
                "      "));
    }

    private static String typed(Setting s) {
        return s.question() + "=" + (s.typed() == null ? "don't know" : s.typed());
    }

    private String said(Setting s) {
        return s.typed() == null ? "don't know" : Page.said(s.question(), s.answer(), knowledge);
    }

    private String now(Setting s, Consultation before) {
        Answers.Given given = before.answers().all().get(s.question());
        return given == null || given.raw() == null
                ? " (not answered now)"
                : " (now " + Page.said(s.question(), given.answer(), knowledge) + ")";
    }

    /** Which uncertain answer to measure next. */
    public List<String> sensitive(Consultation c) {
        List<Swing> all = Sensitive.of(c, knowledge);
        List<Swing> some = all.stream().filter(s -> !s.idle()).toList();
        if (some.isEmpty()) {
            return wrap(
                    all.isEmpty()
                            ? "Every answer that matters is known exactly."
                            : "No uncertain answer moves the verdict, the time to spare or what to do: " + all.size()
                                    + " were tried.",
                    "",
                    "");
        }
        List<String> out =
                new ArrayList<>(wrap("What to measure or find out next, the answer that matters most first:", "", ""));
        int n = 1;
        for (Swing s : some.stream().limit(MOST_MEASURED).toList()) {
            swing(out, s, n++);
        }
        out.addAll(wrap(
                "Each was tried at its ends, or with every choice, and all else as it is: " + all.size()
                        + " uncertain answers, " + (all.size() - some.size()) + " of them with no effect.",
                "",
                ""));
        return out;
    }

    private void swing(List<String> out, Swing s, int n) {
        Question q = knowledge.question(s.question()).orElseThrow();
        String what = s.turnsVerdict()
                ? "it turns the verdict"
                : s.marginShare() > 0 ? "it moves the time to spare by " + time(s.marginS()) : "it moves what to do";
        out.addAll(wrap(s.question() + ": " + what + "; " + s.why().words() + ".", n + ". ", "   "));
        outcomes(s.trials(), Swing::asks)
                .forEach((outcome, answers) -> out.addAll(wrap(some(answers) + ": " + outcome, "   ", "     ")));
        out.addAll(wrap(q.help(), "   how to find it: ", "     "));
    }

    private static String some(List<String> answers) {
        int more = answers.size() - MOST_IN_SET;
        return answers.stream().limit(MOST_IN_SET).collect(Collectors.joining(", or "))
                + (more > 0 ? ", or " + more + " others" : "");
    }

    /** What follows from each trial, with the answers it follows from. */
    private Map<String, List<String>> outcomes(List<Swing.Trial> trials, Predicate<Finding> told) {
        Map<String, List<String>> outcomes = new LinkedHashMap<>();
        for (Swing.Trial t : trials) {
            outcomes.computeIfAbsent(outcome(t.difference(), told), k -> new ArrayList<>())
                    .add(said(t.setting()));
        }
        return outcomes;
    }

    private static String outcome(Difference d, Predicate<Finding> told) {
        StringBuilder out = new StringBuilder(d.after().verdict().word().toUpperCase(Locale.ROOT));
        d.after()
                .figure("time-margin")
                .filter(v -> Double.isFinite(v.si().typical()))
                .ifPresent(v -> {
                    double s = v.si().typical();
                    out.append(s < 0 ? ", " + time(-s) + " too late" : ", " + time(s) + " to spare");
                });
        name(out, "new", d.fresh().stream().filter(told).toList());
        name(out, "gone", d.gone().stream().filter(told).toList());
        return out.append('.').toString();
    }

    private static void name(StringBuilder out, String word, List<Finding> findings) {
        if (!findings.isEmpty()) {
            int more = findings.size() - MOST_NAMED;
            out.append("; ").append(word).append(": ");
            out.append(findings.stream().limit(MOST_NAMED).map(Finding::id).collect(Collectors.joining(", ")));
            out.append(more > 0 ? " and " + more + " more" : "");
        }
    }

    private static String time(double seconds) {
        return pourwright.advice.Wording.one(seconds, Dimension.TIME);
    }

    /** Why a question is asked, and what its answer would settle. */
    public List<String> why(String id, Answers answers) {
        Optional<Question> q = knowledge.question(id.strip());
        if (q.isEmpty()) {
            Map<String, String> asked =
                    knowledge.questions().stream().collect(Collectors.toMap(Question::id, Question::ask));
            List<String> near = Nearest.of(id, asked);
            return wrap(
                    "No question is called \"" + Clean.quoted(id) + "\"."
                            + (near.isEmpty() ? "" : " Perhaps " + String.join(" or ", near) + "."),
                    "",
                    "");
        }
        Deciding d = Deciding.of(q.get(), answers, knowledge);
        List<String> out = new ArrayList<>(wrap(q.get().ask(), "", ""));
        if (d.reasons().isEmpty()) {
            out.addAll(wrap("No rule asks for it with these answers. " + q.get().help(), "  ", "    "));
        }
        d.reasons().forEach(r -> out.addAll(wrap(r, "  why: ", "    ")));
        out.addAll(differs(d));
        return out;
    }

    /** What would differ with each plausible answer; no line where it cannot be tried. */
    List<String> differs(Deciding d) {
        if (d.trials().isEmpty()) {
            return List.of();
        }
        Map<String, List<String>> outcomes =
                outcomes(d.trials(), f -> f.strength().compareTo(Strength.DO) <= 0);
        if (outcomes.size() == 1) {
            return wrap(
                    "Alone it alters no verdict and nothing to do, as far as the other answers go.",
                    "What would differ: ",
                    "  ");
        }
        List<String> out = new ArrayList<>(List.of("What would differ:"));
        outcomes.entrySet().stream()
                .limit(MOST_SETS)
                .forEach(e -> out.addAll(wrap(some(e.getValue()) + ": " + e.getKey(), "  ", "    ")));
        return out;
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
