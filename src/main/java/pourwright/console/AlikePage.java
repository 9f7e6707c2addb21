package pourwright.console;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.advice.BadAnswer;
import pourwright.alike.Likeness;
import pourwright.alike.Picture;
import pourwright.casebook.SavedCases;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;

/** The saved cases that come nearest to a job, by what decides about it: what was done there, and how it came out. */
public final class AlikePage {
    private static final int MOST = 3;
    private static final int NAMED = 4;
    /** Words for a number that stands beside them; they decide nothing. */
    private static final double SAME = 0.02;

    private static final double VERY_NEAR = 0.2;
    private static final double NEAR = 0.4;

    private final Knowledge knowledge;
    private final int width;

    public AlikePage(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    /**
     * A case that is near.
     *
     * @param saved the case
     * @param likeness how near
     * @param picture what was concluded about it by the rules of now
     */
    public record Near(SavedCases.Saved saved, Likeness likeness, Picture picture) {}

    /** Works out what matters about some answers; empty where the case cannot be judged any more. */
    @FunctionalInterface
    public interface Judge {
        /**
         * What matters about these answers.
         *
         * @throws BadAnswer when they cannot be
         */
        Optional<Picture> of(Answers answers);
    }

    /** The nearest cases, the nearest first; own ones before examples that are as near. */
    public List<Near> nearest(Picture here, List<SavedCases.Saved> cases, Judge judge) {
        double most = knowledge.guidelineSi("case-alike");
        List<Near> all = new ArrayList<>();
        for (SavedCases.Saved s : cases) {
            s.read().flatMap(c -> judged(judge, c.answers())).ifPresent(p -> {
                Likeness l = Likeness.of(here, p);
                if (l.distance() <= most) {
                    all.add(new Near(s, l, p));
                }
            });
        }
        all.sort(Comparator.comparingDouble((Near n) -> n.likeness().distance())
                .thenComparing(n -> !n.saved().own())
                .thenComparing(n -> n.saved().name()));
        return all.stream().limit(MOST).toList();
    }

    private static Optional<Picture> judged(Judge judge, Answers answers) {
        try {
            return judge.of(answers);
        } catch (BadAnswer e) {
            return Optional.empty();
        }
    }

    /** The nearest cases as lines. */
    public List<String> lines(Picture here, List<SavedCases.Saved> cases, Judge judge) {
        List<Near> near = nearest(here, cases, judge);
        List<String> out = new ArrayList<>();
        long unread = cases.stream().filter(s -> s.read().isEmpty()).count();
        if (near.isEmpty()) {
            out.addAll(wrap(
                    cases.isEmpty()
                            ? "No case is saved yet. \"save NAME\" keeps this one, and \"outcome NAME good\" tells later how it came out."
                            : "No saved case is near enough to say anything about this one; " + cases.size()
                                    + " were compared.",
                    ""));
        }
        int n = 0;
        for (Near c : near) {
            out.addAll(wrap(
                    ++n + ". " + c.saved().name()
                            + (c.saved().own() ? "" : " (an example that came with the program)") + ": "
                            + word(c.likeness().distance()) + " (distance "
                            + Math.round(c.likeness().distance() * 100) + " of 100).",
                    ""));
            if (!c.likeness().same().isEmpty()) {
                out.addAll(wrap(
                        "the same: "
                                + c.likeness().same().stream()
                                        .limit(NAMED)
                                        .map(id -> id.replace('-', ' ') + " " + said(id, here.answers()))
                                        .collect(Collectors.joining("; "))
                                + ".",
                        "   "));
            }
            if (!c.likeness().differs().isEmpty()) {
                out.addAll(wrap(
                        "there: "
                                + c.likeness().differs().stream()
                                        .limit(NAMED)
                                        .map(id -> id.replace('-', ' ') + " "
                                                + said(id, c.picture().answers()) + " (here "
                                                + said(id, here.answers()) + ")")
                                        .collect(Collectors.joining("; "))
                                + ".",
                        "   "));
            }
            out.addAll(wrap("advice there: " + c.picture().gist(), "   "));
            String outcome = c.saved().read().orElseThrow().outcome();
            out.addAll(wrap(
                    "how it came out: "
                            + (outcome.isEmpty()
                                    ? c.saved().own()
                                            ? "not said. \"outcome " + c.saved().name()
                                                    + " good\" or \"bad ...\" tells it."
                                            : "not said, it is an example."
                                    : Clean.text(outcome) + "."),
                    "   "));
        }
        if (unread > 0) {
            out.addAll(wrap(
                    unread + (unread == 1 ? " case" : " cases")
                            + " could not be read: \"pourwright cases\" says which.",
                    ""));
        }
        return out;
    }

    /** How near, in words; the number stands beside it. */
    public static String word(double distance) {
        if (distance < SAME) {
            return "the same job";
        }
        return distance < VERY_NEAR ? "very near" : distance < NEAR ? "near" : "somewhat alike";
    }

    private String said(String id, Answers answers) {
        return answers.get(id).map(a -> Page.said(id, a, knowledge)).orElse("not known");
    }

    private List<String> wrap(String text, String first) {
        return Wrap.text(text, width, first, first + "   ");
    }
}
