package pourwright.casebook;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.Diagnosis;
import pourwright.diagnosis.NextObservation;
import pourwright.diagnosis.RankedCause;
import pourwright.facts.Answer;
import pourwright.facts.Answers;

/**
 * How well the diagnosis does on a set of cases whose causes are known. Of causes a source does not rank, any counts
 * among the first three and none is asked to come first.
 */
public final class Accuracy {
    private static final int FIRST_FEW = 3;
    private static final int MOST_ASKED = 60;
    private static final int HASH_SHOWN = 12;
    private static final double LOG2 = Math.log(2);

    private final Diagnoser diagnoser;
    private final List<One> all = new ArrayList<>();
    private final StringBuilder texts = new StringBuilder();

    public Accuracy(Diagnoser diagnoser) {
        this.diagnoser = diagnoser;
    }

    /** One case judged. */
    private record One(
            String name, CaseFile file, List<RankedCause> ranked, double logLoss, int asked, List<String> afterAsking) {
        boolean first() {
            return !ranked.isEmpty()
                    && ranked.get(0).cause().id().equals(file.causes().get(0));
        }

        boolean amongFirst() {
            return ranked.stream()
                    .limit(FIRST_FEW)
                    .anyMatch(c -> file.causes().contains(c.cause().id()));
        }

        boolean amongFirstAfterAsking() {
            return afterAsking.stream().limit(FIRST_FEW).anyMatch(file.causes()::contains);
        }
    }

    /** Judges one case. */
    public void add(String name, CaseFile file) {
        Diagnosis d = diagnoser.diagnose(file.answers());
        double loss = 0;
        for (RankedCause c : d.ranked()) {
            boolean is = file.causes().contains(c.cause().id());
            loss -= Math.log(is ? c.probability() : 1 - c.probability()) / LOG2;
        }
        Answers told = Answers.NONE;
        for (String id : List.of("material", "symptom")) {
            Answers.Given g = file.answers().all().get(id);
            told = g == null ? told.with(id, new Answer.DontKnow(), null) : told.with(id, g.answer(), g.raw());
        }
        int asked = 0;
        Optional<NextObservation> next = diagnoser.next(told);
        while (next.isPresent() && asked < MOST_ASKED) {
            asked++;
            String id = next.get().question().id();
            Answers.Given g = file.answers().all().get(id);
            told = g == null ? told.with(id, new Answer.DontKnow(), null) : told.with(id, g.answer(), g.raw());
            next = diagnoser.next(told);
        }
        List<String> after = diagnoser.diagnose(told).ranked().stream()
                .limit(FIRST_FEW)
                .map(c -> c.cause().id())
                .toList();
        all.add(new One(name, file, d.ranked(), loss, asked, after));
        texts.append(name).append('\n').append(file.text());
    }

    /** Cases whose source ranks or proves a first cause. */
    private long rankedCases() {
        return all.stream().filter(o -> o.file().ranked()).count();
    }

    /** Share of the ranked cases whose first cause comes first. */
    public double first() {
        return all.stream().filter(o -> o.file().ranked() && o.first()).count() / (double) Math.max(1, rankedCases());
    }

    /** Share of all cases with an accepted cause among the first three. */
    public double amongFirst() {
        return all.stream().filter(One::amongFirst).count() / (double) Math.max(1, all.size());
    }

    /** The median number of questions until the asking stops, with only the case's own answers known. */
    public int medianAsked() {
        int[] counts = all.stream().mapToInt(One::asked).sorted().toArray();
        return counts.length == 0 ? 0 : counts[counts.length / 2];
    }

    /** Mean log-loss of a case in bits, summed over its causes. */
    public double logLoss() {
        return all.stream().mapToDouble(One::logLoss).average().orElse(0);
    }

    /** A hash of the set, so that a changed set is seen. */
    public String hash() {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(texts.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, HASH_SHOWN);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The report: the score in one line, then every case it gets wrong and why. */
    public List<String> report(String set) {
        List<String> out = new ArrayList<>();
        out.add(set + ": " + score());
        for (One o : all) {
            if (!o.amongFirst() || o.file().ranked() && !o.first()) {
                out.add("  " + (o.amongFirst() ? "not first: " : "missed: ") + o.name() + ": expected "
                        + String.join(", ", o.file().causes()) + "; found " + found(o));
            }
        }
        return out;
    }

    /** The score in one line. */
    public String score() {
        long asked = all.stream().filter(One::amongFirstAfterAsking).count();
        return String.format(
                Locale.ROOT,
                "%d cases (set %s), first right %.0f %% of the %d ranked, among the first three %.0f %% (%.0f %% by asking"
                        + " alone), log-loss %.2f bits, questions %d at the median",
                all.size(),
                hash(),
                100 * first(),
                rankedCases(),
                100 * amongFirst(),
                100.0 * asked / Math.max(1, all.size()),
                logLoss(),
                medianAsked());
    }

    private static String found(One o) {
        List<String> some = new ArrayList<>();
        for (RankedCause c : o.ranked().stream().limit(FIRST_FEW).toList()) {
            some.add(c.cause().id() + " " + Math.round(100 * c.probability()) + " % ("
                    + String.join(
                            " ",
                            c.evidence().stream()
                                    .map(e -> (e.decibans() > 0 ? "+" : "") + e.decibans() + " " + e.question()
                                            + (e.choice().isEmpty() ? "" : "=" + e.choice()))
                                    .toList())
                    + ")");
        }
        String expected = o.file().causes().get(0);
        for (int i = 0; i < o.ranked().size(); i++) {
            RankedCause c = o.ranked().get(i);
            if (c.cause().id().equals(expected)) {
                some.add("expected stands " + (i + 1) + " with " + Math.round(100 * c.probability()) + " % ("
                        + String.join(
                                " ",
                                c.evidence().stream()
                                        .map(e -> (e.decibans() > 0 ? "+" : "") + e.decibans() + " " + e.question())
                                        .toList())
                        + ")");
            }
        }
        return String.join("; ", some);
    }
}
