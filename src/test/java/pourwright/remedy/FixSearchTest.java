package pourwright.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.advice.Strength;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Remedy;

class FixSearchTest {
    static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    private static final AnswersJson READER = new AnswersJson(KNOWLEDGE);

    /** The froth outgrows the cup, and nothing else is amiss. */
    static final Map<String, String> SMALL_CUP = Map.ofEntries(
            Map.entry("material", "tin-silicone"),
            Map.entry("job", "rubber-around-master"),
            Map.entry("batch-mass", "1.2 kg"),
            Map.entry("kit", "vacuum"),
            Map.entry("cup-volume", "2 L"),
            Map.entry("bump-cycles", "yes"),
            Map.entry("chamber-volume", "20 L"),
            Map.entry("pump-speed", "3 cfm"),
            Map.entry("pot-life", "60 min"));

    static Consultation plan(Map<String, String> job) {
        Answers answers = Answers.NONE;
        for (Map.Entry<String, String> e : job.entrySet()) {
            answers = READER.with(answers, e.getKey(), e.getValue());
        }
        return Advisor.consult(answers, KNOWLEDGE);
    }

    private static Map<String, String> with(Map<String, String> job, String id, String answer) {
        Map<String, String> next = new LinkedHashMap<>(job);
        next.put(id, answer);
        return next;
    }

    private static Fixes search(Consultation c) {
        return FixSearch.of(c, Set.of(), KNOWLEDGE);
    }

    /** The plan with a fix made the way a person would make it: by typing the answers it names. */
    private static Consultation typed(Consultation before, Fix fix) {
        Answers answers = before.answers();
        for (Map.Entry<String, String> e : fix.answers().entrySet()) {
            answers = READER.with(answers, e.getKey(), e.getValue());
        }
        return Advisor.consult(answers, KNOWLEDGE);
    }

    static Stream<Path> plans() throws java.io.IOException {
        try (Stream<Path> files = Files.list(Path.of("transcripts-of-cases"))) {
            return files
                    .filter(f -> f.toString().endsWith(".case.json"))
                    .filter(f -> CaseFile.wordOf(f).equals("plan"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void whatIsOfferedForARecordedCaseHoldsWhenItIsTyped(Path file) {
        Consultation before =
                Advisor.consult(CaseFile.read(file, "plan", READER).answers(), KNOWLEDGE);
        Fixes fixes = search(before);
        assertThat(fixes.tried()).isLessThanOrEqualTo(FixSearch.MOST_TRIED);
        assertThat(fixes.fixes()).hasSizeLessThanOrEqualTo(3);
        if (before.verdict() != Verdict.GO) {
            assertThat(fixes.goal()).isEqualTo(Goal.WORKS);
        }
        for (Fix fix : fixes.fixes()) {
            Consultation after = typed(before, fix);
            assertThat(after.verdict()).isEqualTo(fix.after().verdict());
            assertThat(after.findings().stream().map(f -> f.say()))
                    .isEqualTo(fix.after().findings().stream().map(f -> f.say()).toList());
            if (fix.works()) {
                assertThat(after.verdict()).isEqualTo(Verdict.GO);
            } else {
                assertThat(fixes.goal().distance(after)).isLessThan(fixes.goal().distance(before));
            }
        }
    }

    @Test
    void aCupTooSmallIsMendedByWhatCostsLeastFirst() {
        Consultation before = plan(SMALL_CUP);
        assertThat(before.finding("cup-too-small-even-worked-at-the-valve")).isPresent();
        Fixes fixes = search(before);
        assertThat(fixes.works()).isTrue();
        assertThat(fixes.fixes()).isSortedAccordingTo((a, b) -> Integer.compare(a.cost(), b.cost()));
        assertThat(fixes.fixes().get(0).changes().get(0).remedy().id()).isEqualTo("split-the-batch");
        assertThat(fixes.fixes().stream()
                        .flatMap(f -> f.changes().stream())
                        .map(c -> c.remedy().id()))
                .contains("bigger-cup");
        assertThat(fixes.fixes()).allMatch(f -> !f.figures().isEmpty());
    }

    /** No smaller cup on the ladder would do, and no fewer batches. */
    @Test
    void theStepIsTheSmallestThatWorks() {
        Consultation before = plan(SMALL_CUP);
        Fix cup = search(before).fixes().stream()
                .filter(f -> f.changes().get(0).remedy().id().equals("bigger-cup"))
                .findFirst()
                .orElseThrow();
        double litres = Double.parseDouble(cup.changes().get(0).typed().split(" ")[0]);
        List<Double> rungs = Ladder.byRatio(2, 16);
        int rung = rungs.indexOf(litres);
        assertThat(rung).isNotNegative();
        for (int i = 0; i < rung; i++) {
            assertThat(plan(with(SMALL_CUP, "cup-volume", rungs.get(i) + " L")).verdict())
                    .as("%s L", rungs.get(i))
                    .isNotEqualTo(Verdict.GO);
        }
        assertThat(plan(with(SMALL_CUP, "cup-volume", litres + " L")).verdict()).isEqualTo(Verdict.GO);
    }

    @Test
    void whatIsKeptStays() {
        Consultation before = plan(SMALL_CUP);
        Fixes all = search(before);
        Set<String> keep = Set.of("batch-mass", "cup-volume");
        Fixes fixes = FixSearch.of(before, keep, KNOWLEDGE);
        assertThat(fixes.remedies()).isLessThan(all.remedies());
        assertThat(fixes.fixes()).allMatch(f -> f.answers().keySet().stream().noneMatch(keep::contains));
        assertThat(fixes.fixes())
                .allMatch(f -> f.after()
                        .answers()
                        .all()
                        .get("cup-volume")
                        .equals(before.answers().all().get("cup-volume")));
    }

    @Test
    void twoFaultsWantTwoChanges() {
        Map<String, String> job = with(with(SMALL_CUP, "master-material", "wood"), "master-sealed", "no");
        Consultation before = plan(job);
        assertThat(before.findings().stream().filter(f -> f.strength() == Strength.CHANGE))
                .hasSizeGreaterThanOrEqualTo(2);
        Fixes fixes = search(before);
        assertThat(fixes.works()).isTrue();
        assertThat(fixes.fixes()).allMatch(f -> f.changes().size() >= 2);
        // None of its changes is enough alone, and none is there for nothing.
        for (Fix fix : fixes.fixes()) {
            for (Change change : fix.changes()) {
                assertThat(plan(with(job, change.answer(), change.typed())).verdict())
                        .isNotEqualTo(Verdict.GO);
            }
        }
    }

    @Test
    void fourFaultsAreMendedTogether() {
        Map<String, String> job = with(with(SMALL_CUP, "master-material", "wood"), "master-sealed", "no");
        job = with(with(job, "cans-stirred", "no"), "lid-state", "marked");
        Fixes fixes = search(plan(job));
        assertThat(fixes.works()).isTrue();
        assertThat(fixes.fixes().get(0).changes().stream().map(c -> c.remedy().id()))
                .contains("seal-the-master", "stir-the-cans", "new-lid");
    }

    /** Platinum silicone on sulphur clay is poisoned whatever else is done. */
    @Test
    void whereNothingHelpsItSaysSoAndByHowMany() {
        Consultation before = plan(Map.of(
                "material",
                "platinum-silicone",
                "job",
                "rubber-around-master",
                "master-material",
                "sulphur-clay",
                "kit",
                "neither",
                "batch-mass",
                "500 g"));
        Fixes fixes = search(before);
        assertThat(fixes.works()).isFalse();
        assertThat(fixes.stuck().stream().map(f -> f.id())).contains("platinum-on-sulphur-clay");
        assertThat(fixes.tried()).isGreaterThanOrEqualTo(fixes.remedies());
        // Proven by count: with every pair tried, there are at least as many plans as pairs of changes that can be made
        // together.
        if (fixes.whole()) {
            List<Move> moves = KNOWLEDGE.remedies().stream()
                    .flatMap(r -> Move.of(r, before, KNOWLEDGE).stream())
                    .toList();
            assertThat(moves).hasSize(fixes.remedies());
            long pairs = 0;
            for (int i = 0; i < moves.size(); i++) {
                for (int j = i + 1; j < moves.size(); j++) {
                    Set<String> touched = moves.get(j).touches();
                    pairs += moves.get(i).touches().stream().noneMatch(touched::contains) ? 1 : 0;
                }
            }
            assertThat((long) fixes.tried()).isGreaterThanOrEqualTo(moves.size() + pairs);
        }
    }

    @Test
    void whatWorksIsLeftAlone() {
        Consultation before = plan(with(with(SMALL_CUP, "cup-volume", "10 L"), "chamber-volume", "30 L"));
        assertThat(before.verdict()).isEqualTo(Verdict.GO);
        Fixes fixes = search(before);
        assertThat(fixes.goal()).isEqualTo(Goal.NOTHING);
        assertThat(fixes.fixes()).isEmpty();
        assertThat(fixes.tried()).isZero();
    }

    @Test
    void theSameJobGivesTheSameAnswer() {
        Consultation before = plan(with(SMALL_CUP, "pot-life", "10 min"));
        Fixes first = search(before);
        Fixes second = search(before);
        assertThat(second.tried()).isEqualTo(first.tried());
        assertThat(second.fixes().stream().map(Fix::changes))
                .isEqualTo(first.fixes().stream().map(Fix::changes).toList());
    }

    /** Blocks do not stop a leak: where the leak is known from a rise in the whole chamber, they are not offered. */
    @Test
    void displacersMakeNoLeakSmaller() {
        Map<String, String> job = with(with(SMALL_CUP, "pressure-rise", "300 mbar"), "rise-time", "60 s");
        Remedy blocks = KNOWLEDGE.remedies().stream()
                .filter(r -> r.id().equals("displacers"))
                .findFirst()
                .orElseThrow();
        assertThat(Move.of(blocks, plan(SMALL_CUP), KNOWLEDGE)).isPresent();
        assertThat(Move.of(blocks, plan(job), KNOWLEDGE)).isEmpty();
    }

    @Test
    void everyBatchTogetherIsTheWholeMix() {
        Consultation before = plan(with(SMALL_CUP, "batch-mass", "1,001 g"));
        Move split = KNOWLEDGE.remedies().stream()
                .filter(r -> r.id().equals("split-the-batch"))
                .flatMap(r -> Move.of(r, before, KNOWLEDGE).stream())
                .findFirst()
                .orElseThrow();
        for (int rung = 0; rung < split.rungs(); rung++) {
            double grams = Double.parseDouble(split.change(rung).typed().split(" ")[0]);
            assertThat(grams * (rung + 2)).isBetween(1001.0, 1001.0 + rung + 2);
        }
    }

    @Test
    void everyRemedyCanBeReached() {
        // A remedy whose conditions no job can meet would stand in the file for nothing: each must suit at least one
        // class.
        for (Remedy r : KNOWLEDGE.remedies()) {
            assertThat(KNOWLEDGE.materials().values().stream().anyMatch(r::suits))
                    .as(r.id())
                    .isTrue();
        }
    }
}
