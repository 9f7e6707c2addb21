package pourwright.console;

import java.time.Duration;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import pourwright.advice.Consultation;
import pourwright.advice.Step;
import pourwright.advice.Wording;
import pourwright.facts.Estimate;
import pourwright.follow.Follow;
import pourwright.follow.FollowLog;
import pourwright.follow.Measured;
import pourwright.knowledge.Knowledge;
import pourwright.units.Dimension;
import pourwright.units.DontKnow;
import pourwright.units.Show;

/**
 * The dialogue in which a plan is followed at the bench: step by step, with the clock, what is left of the working time, and
 * one short word for whatever happens. Every entry is kept before the next is asked for.
 */
final class Bench {
    private static final String PROMPT = "bench > ";
    private static final String CLOCK = "        ";
    private static final Duration STALE = Duration.ofHours(24);
    private static final int LONGEST_VALUE = 100;
    private static final int PUNCTUAL_S = 15;
    private static final int NOTHING_TYPED = 3;
    private static final List<String> WORDS =
            List.of("crest", "fall", "gel", "gauge", "overflow", "note", "skip", "undo", "time", "steps", "quit");
    private static final String USAGE =
            "Enter = done. Also: crest, fall, gel, gauge 40 mbar, overflow, note TEXT, skip, undo,"
                    + " time, steps, quit.";

    private final Door door;
    private final Consultation c;
    private final Knowledge knowledge;
    private final InstantSource clock;
    private final Consumer<String> keep;
    private final Follow plan;
    private FollowLog log;

    /**
     * @param door the way to the person
     * @param c the plan to follow
     * @param clock what time it is
     * @param keep takes the log as text, each time it has changed
     */
    Bench(Door door, Consultation c, Knowledge knowledge, InstantSource clock, Consumer<String> keep) {
        this.door = door;
        this.c = c;
        this.knowledge = knowledge;
        this.clock = clock;
        this.keep = keep;
        this.plan = new Follow(c, knowledge);
    }

    /** Follows the plan until it is done or left; what was logged, with what had been logged before. */
    FollowLog run() {
        log = begunBefore();
        if (plan.steps().stream().noneMatch(Follow::startsTheClock)) {
            say("This plan has no steps on the clock of a mix, so there is nothing to follow.");
            return log;
        }
        say(USAGE);
        if (log.began().isEmpty() && !before()) {
            return log;
        }
        mixed();
        return log;
    }

    private FollowLog begunBefore() {
        Optional<FollowLog> left = FollowLog.parse(c.answers().text("bench-log"));
        if (left.isEmpty() || left.get().began().isEmpty()) {
            return FollowLog.EMPTY;
        }
        Duration since = Duration.between(left.get().began().get(), clock.instant());
        if (since.isNegative() || since.compareTo(STALE) > 0) {
            say("A log of an earlier day stands with this plan. A new one begins now and takes its place.");
            return FollowLog.EMPTY;
        }
        say("Mixing of this plan began " + Show.time((double) since.toSeconds())
                + " ago. Go on with it? (Enter = yes, or \"anew\")");
        String picked = new Pick(door, PROMPT, List.of("yes", "anew"), "\"anew\" begins a new log.")
                .ask()
                .orElse("yes");
        return picked.equals("yes") ? left.get() : FollowLog.EMPTY;
    }

    /** What comes before mixing has no clock yet; false when the person leaves. */
    private boolean before() {
        List<Step> steps = plan.before();
        for (int i = 0; i <= steps.size(); i++) {
            if (i < steps.size()) {
                Step s = steps.get(i);
                say("Step " + (i + 1) + " of " + plan.steps().size() + ". " + text(s) + " Enter = " + done(s) + ".");
            } else {
                say("Have the watch ready. Enter = mixing begins now; the clock starts with it.");
            }
            String word = word(ask());
            switch (word) {
                case "quit" -> {
                    return false;
                }
                case "undo", "back" -> i = Math.max(-1, i - 2);
                case "steps" -> {
                    steps().forEach(door::say);
                    i--;
                }
                case "", "skip", "done" -> {}
                default -> {
                    say("The clock has not started, so nothing is logged yet. Enter goes on, \"quit\" leaves.");
                    i--;
                }
            }
        }
        log = FollowLog.EMPTY.begun(clock.instant().truncatedTo(ChronoUnit.SECONDS));
        keep.accept(log.text());
        return true;
    }

    private void mixed() {
        int nothing = 0;
        boolean shows = true;
        while (true) {
            Optional<Step> due = plan.due(log);
            if (due.isEmpty()) {
                say("All steps are done. \"log\" shows the times, \"save NAME\" keeps them with the case.");
                return;
            }
            if (shows) {
                show(due.get());
            }
            String line = ask();
            String word = word(line);
            nothing = DontKnow.typed(line) && !line.isEmpty() ? nothing + 1 : 0;
            if (word.equals("quit") || nothing >= NOTHING_TYPED) {
                say("Left. \"follow\" goes on from here; the clock runs on.");
                return;
            }
            shows = act(due.get(), line, word);
        }
    }

    /** Does what a line says; true when the step that is due now should be shown. */
    private boolean act(Step due, String line, String word) {
        String rest = line.contains(" ") ? line.substring(line.indexOf(' ') + 1).strip() : "";
        rest = rest.length() > LONGEST_VALUE ? rest.substring(0, LONGEST_VALUE) : Clean.text(rest);
        switch (word) {
            case "", "done" -> note(due.id(), "");
            case "crest" -> note("degas-crest", "");
            case "fall" -> note("degas-fall", "");
            case "gel" -> note("gel", "");
            case "skip" -> note(FollowLog.SKIP, due.id());
            case "overflow" -> {
                note(FollowLog.OVERFLOW, "");
                say(knowledge.steps().get("overflow").say());
            }
            case "gauge" -> {
                return gauge(rest);
            }
            case "note" -> {
                if (rest.isEmpty()) {
                    say("Type the note behind the word, for example \"note lid creaked\".");
                    return false;
                }
                note(FollowLog.NOTE, rest);
                say("  = " + Show.time(nowS()) + " " + rest);
                return false;
            }
            case "undo", "back" -> {
                if (log.entries().isEmpty()) {
                    say("Nothing is logged yet.");
                    return false;
                }
                log = log.withoutLast();
                keep.accept(log.text());
            }
            case "time", "why" -> say(Show.time(nowS()) + " since mixing began." + pot());
            case "steps" -> steps().forEach(door::say);
            default -> {
                say((word.equals("help") ? "" : "\"" + Clean.quoted(line) + "\" is not a word here. ") + USAGE);
                return false;
            }
        }
        return !word.equals("time") && !word.equals("why") && !word.equals("steps");
    }

    private boolean gauge(String reading) {
        Optional<Double> pa = Measured.pressurePa(c.answers(), knowledge, reading);
        if (pa.isEmpty()) {
            say("\"" + Clean.quoted(reading)
                    + "\" is no reading of a gauge here. Accepted: a pressure with its unit, for"
                    + " example \"gauge 40 mbar\" or \"gauge 28 inHg\".");
            return false;
        }
        note(FollowLog.GAUGE, reading);
        say("  = " + Show.quantity(pa.get(), "mbar", Dimension.PRESSURE) + " absolute at " + Show.time(nowS()) + ".");
        return false;
    }

    private void note(String what, String value) {
        log = log.with(nowS(), what, value);
        keep.accept(log.text());
    }

    private void show(Step s) {
        double now = nowS();
        int number = plan.steps().indexOf(s) + 1;
        String at = Show.time(now);
        String clockColumn =
                door.plain() ? at + ": " : CLOCK.substring(Math.min(CLOCK.length(), at.length() + 2)) + at + "  ";
        wrap("Step " + number + " of " + plan.steps().size() + ". " + text(s), clockColumn);
        wrap(timing(s, now) + pot() + " Enter = " + done(s) + ".", door.plain() ? "" : CLOCK);
    }

    /** When it should be done by the plan, and when with the delay so far. */
    private String timing(Step s, double now) {
        double planned = plan.doneAtS(s);
        double due = plan.dueAtS(s, log);
        String by = "By the plan at " + Show.time(planned);
        if (Math.abs(due - planned) >= PUNCTUAL_S) {
            by += ", at this pace at " + Show.time(due);
        }
        return by + (now > due + PUNCTUAL_S ? ", so " + Show.time(now - due) + " ago." : ".");
    }

    /** What is left of the working time, and a warning where the rest of the work does not fit. */
    private String pot() {
        double now = nowS();
        Optional<Estimate> left = plan.leftS(now);
        if (left.isEmpty() || Double.isInfinite(left.get().typical())) {
            return "";
        }
        if (left.get().typical() <= 0) {
            return " " + knowledge.steps().get("pot-over").say();
        }
        String pot = " In the pot: about " + Show.time(left.get().typical()) + " left"
                + (left.get().low() <= 0
                        ? "; it may gel any moment."
                        : left.get().exact()
                                ? "."
                                : ", at worst " + Show.time(left.get().low()) + ".");
        Optional<Double> ends = plan.endsAtS(log, now);
        return ends.isPresent() && ends.get() - now > left.get().low()
                ? pot + " At this pace the work ends at " + Show.time(ends.get()) + ", which may be too late."
                : pot;
    }

    private List<String> steps() {
        List<String> lines = new ArrayList<>();
        for (Step s : plan.steps()) {
            String state =
                    log.settles(s.id()) || log.began().isPresent() && s.atS().typical() < 0 ? "done: " : "to do: ";
            lines.addAll(Wrap.text(s.say(), door.width(), state, "  "));
        }
        return lines;
    }

    private static String text(Step s) {
        return s.say() + (s.watch().isEmpty() ? "" : " Look for: " + s.watch() + ".");
    }

    private String done(Step s) {
        return knowledge.steps().get(s.id()).done();
    }

    /** Seconds since mixing began; a clock that was set back does not turn the log round. */
    private double nowS() {
        double now =
                Duration.between(log.began().orElseThrow(), clock.instant()).toMillis() / 1000.0;
        double last =
                log.entries().stream().mapToDouble(FollowLog.Entry::atS).max().orElse(0);
        return Math.max(now, last);
    }

    private String ask() {
        return door.ask(PROMPT, WORDS).strip();
    }

    private static String word(String line) {
        String word = line.toLowerCase(Locale.ROOT);
        word = word.contains(" ") ? word.substring(0, word.indexOf(' ')) : word;
        return word.equals("exit") || word.equals("stop") ? "quit" : Words.meant(word, WORDS);
    }

    private void say(String text) {
        wrap(text, "");
    }

    private void wrap(String text, String first) {
        Wrap.text(text, door.width(), first, " ".repeat(door.plain() ? 0 : first.length()))
                .forEach(door::say);
    }

    /** What a log says, line by line, each step beside what was planned. */
    static List<String> lines(Consultation c, Knowledge knowledge, int width) {
        Optional<FollowLog> log = FollowLog.parse(c.answers().text("bench-log"));
        if (log.isEmpty() || log.get().entries().isEmpty()) {
            return Wrap.text(
                    "Nothing is logged for this plan. \"follow\" goes through it at the bench.", width, "", "");
        }
        Follow plan = new Follow(c, knowledge);
        List<String> out = new ArrayList<>();
        for (FollowLog.Entry e : log.get().entries()) {
            Optional<Step> step =
                    plan.steps().stream().filter(s -> s.id().equals(e.what())).findFirst();
            String what = step.isPresent()
                    ? knowledge.steps().get(e.what()).done() + " (by the plan at " + Show.time(plan.doneAtS(step.get()))
                            + ")"
                    : e.what() + (e.value().isEmpty() ? "" : " " + e.value());
            out.addAll(Wrap.text(what, width, Show.time(e.atS()) + "  ", CLOCK));
        }
        return out;
    }

    /** Which figures the workshop's own runs corrected, in one sentence; empty when none. */
    static Optional<String> corrected(Consultation c) {
        List<String> parts = c.figures().values().stream()
                .filter(v -> v.ownRuns() > 0)
                .map(v -> v.id().replace('-', ' ') + " × " + Wording.one(v.ownFactor(), Dimension.NUMBER) + " ("
                        + v.ownRuns() + (v.ownRuns() == 1 ? " run)" : " runs)"))
                .toList();
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of("Corrected by your own runs: " + String.join(", ", parts) + ".");
    }
}
