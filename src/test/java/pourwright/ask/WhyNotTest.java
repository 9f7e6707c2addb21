package pourwright.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Facts;
import pourwright.facts.Answers;
import pourwright.knowledge.Question;
import pourwright.testing.Generated;

class WhyNotTest {
    private static final long SEED = 20261126;

    /** Answers to verify; {@code -Dpourwright.whynots=300} verifies more. */
    private static final int CHECKED = Integer.getInteger("pourwright.whynots", 30);

    /** A search over figures tries hundreds of plans: the usual build makes only some of them. */
    private static final int OVER_FIGURES = Math.max(4, CHECKED / 8);

    private static final String[] SMALL_CUP = {
        "material=tin-silicone",
        "job=rubber-around-master",
        "batch-mass=1.2 kg",
        "kit=vacuum",
        "cup-volume=2 L",
        "bump-cycles=yes",
        "chamber-volume=20 L",
        "pump-speed=3 cfm",
        "pot-life=60 min"
    };

    private static WhyNotAnswer ask(Consultation c, String what) {
        return WhyNot.of(
                c, WantedWords.find(what, Asked.KNOWLEDGE).orElseThrow().wanted(), Asked.KNOWLEDGE);
    }

    private static boolean holds(Wanted wanted, Answers answers) {
        try {
            return wanted.holds(Advisor.consult(answers, Asked.KNOWLEDGE));
        } catch (BadAnswer e) {
            return false;
        }
    }

    private static Answers in(List<Setting> set, Answers answers) {
        Answers with = answers;
        for (Setting s : set) {
            with = s.in(with);
        }
        return with;
    }

    /** Typed again it holds, no part of it does, and no nearer value does. */
    private static void verify(WhyNotAnswer a) {
        for (Way way : a.ways().subList(0, Math.min(3, a.ways().size()))) {
            Map<String, String> typed = new HashMap<>();
            way.changes().forEach(s -> typed.put(s.question(), s.typed()));
            Consultation again = Asked.with(a.before(), typed);
            assertThat(a.wanted().holds(again))
                    .as("%s with %s", a.wanted(), typed)
                    .isTrue();
            assertThat(again.verdict()).isEqualTo(way.after().verdict());
            int n = way.changes().size();
            for (int bits = 0; bits < (1 << n) - 1; bits++) {
                List<Setting> part = new ArrayList<>();
                for (int i = 0; i < n; i++) {
                    if ((bits & 1 << i) != 0) {
                        part.add(way.changes().get(i));
                    }
                }
                assertThat(holds(a.wanted(), in(part, a.before().answers())))
                        .as("%s with only %s", a.wanted(), part)
                        .isFalse();
            }
            way.changes().forEach(s -> nearerDoNot(a, way, s));
        }
    }

    private static void nearerDoNot(WhyNotAnswer a, Way way, Setting s) {
        Question q = Asked.KNOWLEDGE.question(s.question()).orElseThrow();
        for (List<Setting> steps : Settings.of(q, a.before(), Asked.KNOWLEDGE).directions()) {
            if (!steps.contains(s)) {
                continue;
            }
            for (Setting near : steps.subList(0, steps.indexOf(s))) {
                List<Setting> set = new ArrayList<>(way.changes());
                set.set(set.indexOf(s), near);
                assertThat(holds(a.wanted(), in(set, a.before().answers())))
                        .as("%s with %s", a.wanted(), near)
                        .isFalse();
            }
        }
    }

    /** No counter-example: answers to "why not" over random plans of the library and random things to want. */
    @Test
    void whatIsOfferedHoldsAndIsTheLeast() {
        List<Consultation> plans = Asked.recorded();
        Wanted[] all = WantedWords.all(Asked.KNOWLEDGE).toArray(Wanted[]::new);
        Map<String, Integer> checked = new HashMap<>();
        int open = 0;
        for (Generated any : Generated.tries(SEED, 40 * CHECKED).toList()) {
            Wanted wanted = any.pick(all);
            Consultation plan = any.pick(plans.toArray(Consultation[]::new));
            boolean closed = Reach.of(wanted).closed();
            if (checked.size() >= CHECKED) {
                break;
            }
            if (wanted.holds(plan) || checked.containsKey(wanted.id()) || !closed && open >= OVER_FIGURES) {
                continue;
            }
            open += closed ? 0 : 1;
            WhyNotAnswer a = WhyNot.of(plan, wanted, Asked.KNOWLEDGE);
            assertThat(a.tried()).isLessThanOrEqualTo(WhyNot.MOST_TRIED);
            verify(a);
            if (!a.ways().isEmpty()) {
                checked.put(wanted.id(), a.ways().size());
            }
        }
        assertThat(checked).as("things with an answer").hasSizeGreaterThanOrEqualTo(CHECKED);
    }

    @Test
    void aValueIsTheNearestThatDoes() {
        WhyNotAnswer a = ask(Asked.plan(SMALL_CUP), "go");
        verify(a);
        assertThat(a.ways().get(0).changes()).hasSize(1);
        assertThat(a.ways().stream().map(w -> w.changes().get(0).question())).contains("cup-volume", "batch-mass");
        assertThat(a.ways().stream().map(Way::grade)).isSorted();
    }

    /** A way of working that wants four things at once: none of them is left out, and none is too many. */
    @Test
    void moreThanTwoAnswersAreFoundWhereTheyAreNeeded() {
        WhyNotAnswer a = ask(Asked.plan(SMALL_CUP), "pressure cure");
        assertThat(a.ways()).isNotEmpty();
        assertThat(a.ways().get(0).changes().stream().map(Setting::question))
                .contains("material", "kit", "pot-safe", "pressure-rating");
        verify(a);
    }

    @Test
    void whatWasFoundForAPairOfMaterialAndMasterIsAPair() {
        WhyNotAnswer a = ask(Asked.plan(SMALL_CUP), "platinum-on-sulphur-clay");
        assertThat(a.ways()).isNotEmpty();
        assertThat(a.ways()).allMatch(w -> w.changes().size() == 2 && w.grade() == Setting.Grade.NATURE);
        assertThat(a.lacking()).isNotEmpty();
    }

    /** Where a rule looks at choices alone and three are offered, no two do: every pair is tried here once more. */
    @Test
    void noPairDoesWhereMoreThanTwoAnswersAreOffered() {
        Consultation c = Asked.plan("material=tin-silicone");
        List<Object> facts = Facts.of(c, Asked.KNOWLEDGE);
        Wanted wanted = WantedWords.all(Asked.KNOWLEDGE).stream()
                .filter(w -> w.kind() == Wanted.Kind.FINDING)
                .filter(w -> {
                    Reach r = Reach.of(w);
                    return r.closed()
                            && r.questions().size() <= 4
                            && r.alternatives().get(0).missing(facts).size() >= 3;
                })
                .findFirst()
                .orElseThrow();
        WhyNotAnswer a = WhyNot.of(c, wanted, Asked.KNOWLEDGE);
        assertThat(a.ways()).allMatch(w -> w.changes().size() > 2);
        List<Setting> settings = Reach.of(wanted).questions().stream()
                .flatMap(id ->
                        Settings.of(Asked.KNOWLEDGE.question(id).orElseThrow(), c, Asked.KNOWLEDGE).choices().stream())
                .toList();
        for (Setting x : settings) {
            for (Setting y : settings) {
                assertThat(holds(wanted, in(List.of(x, y), c.answers())))
                        .as("%s with %s and %s", wanted, x, y)
                        .isFalse();
            }
        }
    }

    @Test
    void whatIsAdvisedAlreadyIsSaidSo() {
        Consultation c = Asked.plan(SMALL_CUP);
        WhyNotAnswer a = ask(c, c.findings().get(0).id());
        assertThat(a.already()).isTrue();
        assertThat(a.tried()).isZero();
    }

    @Test
    void theWordsOfTheTradeAreUnderstood() {
        Map<String, String> meant = Map.of(
                "degas the mix", "degas-mix",
                "degas in the mould", "degas-in-mould",
                "pressure cure", "pressure-cure",
                "curing under pressure", "pressure-cure",
                "vents", "vents",
                "venting", "vents",
                "tilting the mold", "tilt",
                "GO", "go");
        meant.forEach((typed, id) -> assertThat(WantedWords.find(typed, Asked.KNOWLEDGE)
                        .orElseThrow()
                        .wanted()
                        .id())
                .as(typed)
                .isEqualTo(id));
        assertThat(WantedWords.find("qwertz uiop", Asked.KNOWLEDGE)).isEmpty();
        assertThat(WantedWords.find("leak", Asked.KNOWLEDGE).orElseThrow().others())
                .isNotEmpty();
    }

    @Test
    void theSameQuestionGetsTheSameAnswer() {
        Consultation c = Asked.plan("material=wax", "kit=neither");
        assertThat(ask(c, "hazard-isocyanate").ways().stream().map(Way::changes))
                .isEqualTo(ask(c, "hazard-isocyanate").ways().stream()
                        .map(Way::changes)
                        .toList());
    }
}
