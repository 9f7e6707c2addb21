package pourwright.teach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pourwright.teach.Course.DIAGNOSER;
import static pourwright.teach.Course.LESSONS;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pourwright.advice.OneFigure;
import pourwright.knowledge.Lesson;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;

/** The lessons hold what they promise, and what their experiments compute is what handbooks say. */
class LessonsTest {
    private static final double WATER_BOILS_AT_30_C_PA = 4247;

    static Stream<Lesson> lessons() {
        return LESSONS.lessons().stream();
    }

    private static double first(String lesson, int experiment, String typed) {
        Tried t = new Tried(LESSONS.find(lesson).orElseThrow().experiments().get(experiment), DIAGNOSER);
        return t.of(t.answers(typed)).figures().get(0).value().si().typical();
    }

    @Test
    void theCourseGoesFromBubblesToSafety() {
        assertThat(LESSONS.lessons())
                .extracting(Lesson::id)
                .containsExactly(
                        "why-bubbles",
                        "what-vacuum-does",
                        "reading-a-gauge",
                        "pot-life",
                        "cup-and-froth",
                        "pour",
                        "moulds-and-vents",
                        "second-degas",
                        "pressure",
                        "defects",
                        "safety");
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void everyExperimentIsComputedAndShowsADifference(Lesson l) {
        for (Lesson.Experiment e : l.experiments()) {
            Tried t = new Tried(e, DIAGNOSER);
            Tried.Outcome a = t.of(t.answers(e.first()));
            Tried.Outcome b = t.of(t.answers(e.then()));
            if (e.ofCauses()) {
                assertThat(a.causes().get(0).cause().id())
                        .isNotEqualTo(b.causes().get(0).cause().id());
                assertThat(t.way()).isEmpty();
            } else {
                assertThat(t.way()).as(e.says()).isPresent().get().isNotEqualTo(Tried.Way.SAME);
                assertThat(e.foretell()).endsWith("?").contains("more, less, or the same");
                for (OneFigure.Result r : b.figures()) {
                    assertThat(r.value().si().typical()).isFinite().isPositive();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void everyNameInALessonIsAName(Lesson l) {
        Set<RuleCard> cards = Stream.of(RuleBook.method(), RuleBook.judge(), RuleBook.diagnosis())
                .flatMap(b -> b.cards().stream())
                .collect(Collectors.toSet());
        Set<String> topics = cards.stream().map(RuleCard::topic).collect(Collectors.toSet());
        assertThat(l.rules()).isNotEmpty().allMatch(r -> cards.stream().anyMatch(c -> c.id().equals(r)));
        for (Lesson.Drill d : l.exercises()) {
            assertThat(topics).containsAll(d.topics());
            if (d.kind() == Lesson.Drill.Kind.NUMBER) {
                assertThat(OneFigure.named(d.figure(), DIAGNOSER.knowledge().base()))
                        .isNotNull();
            }
        }
    }

    @Test
    void everyMisconceptionIsTaughtAndItsFigureComputed() {
        Set<String> taught = new HashSet<>();
        LESSONS.lessons().forEach(l -> taught.addAll(l.misconceptions()));
        assertThat(taught).isEqualTo(LESSONS.misconceptions().keySet());
        List<String> rules = Stream.of(RuleBook.method(), RuleBook.judge())
                .flatMap(b -> b.cards().stream())
                .map(RuleCard::id)
                .toList();
        LESSONS.misconceptions().forEach((id, m) -> {
            assertThat(rules).as(id).containsAll(m.rules());
            assertThat(m.rules().isEmpty() && m.chosen().isEmpty() && taught.isEmpty())
                    .isFalse();
        });
    }

    /** Boyle's law, p V = p V: at 50 mbar a bubble takes 1,013.25 / 50 of its room, and the cube root of that in width. */
    @Test
    void theBubbleGrowsByBoylesLaw() {
        assertThat(first("what-vacuum-does", 0, "50 mbar")).isCloseTo(1013.25 / 50, within(0.01));
        Tried t = new Tried(
                LESSONS.find("what-vacuum-does").orElseThrow().experiments().get(0), DIAGNOSER);
        assertThat(t.of(t.answers("50 mbar")).figures().get(1).value().si().typical())
                .isCloseTo(Math.cbrt(1013.25 / 50), within(0.01));
    }

    /** Water boils at 42.47 mbar at 30 degrees (steam tables, IAPWS-IF97). */
    @Test
    void waterBoilsWhereTheSteamTablesSay() {
        assertThat(first("what-vacuum-does", 1, "30 °C")).isCloseTo(WATER_BOILS_AT_30_C_PA, within(10.0));
    }

    /** ISO 2533 gives 845.6 hPa at 1,500 m; less 24 inHg of 33.864 mbar each, 32.9 mbar are left. */
    @Test
    void theDialInTheHillsAgreesWithTheStandardAtmosphere() {
        assertThat(first("reading-a-gauge", 0, "1500 m")).isCloseTo((845.6 - 24 * 33.8639) * 100, within(30.0));
    }

    /** Pressure times area: 983 mbar on a disc of 250 mm. */
    @Test
    void theLidCarriesPressureTimesArea() {
        assertThat(first("safety", 0, "250 mm")).isCloseTo(98325 * Math.PI / 4 * 0.25 * 0.25, within(5.0));
    }

    /** Stokes, d squared g (rho - air) / 18 mu: half the width, a quarter of the speed; a tenth of the thickness, ten times. */
    @Test
    void theBubbleClimbsByStokes() {
        assertThat(first("why-bubbles", 0, "0.5 mm") / first("why-bubbles", 0, "1 mm"))
                .isCloseTo(0.25, within(1e-6));
        assertThat(first("why-bubbles", 1, "2 Pa·s") / first("why-bubbles", 1, "20 Pa·s"))
                .isCloseTo(10, within(1e-6));
    }
}
