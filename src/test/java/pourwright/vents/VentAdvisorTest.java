package pourwright.vents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.advice.BadAnswer;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answers;
import pourwright.geometry.Castings;
import pourwright.geometry.Mesh;
import pourwright.geometry.MeshFault;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** One pocket, one decision: from meshes whose pockets are known by formula, and from described places. */
class VentAdvisorTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));

    private static Answers answers(String... words) {
        Answers all = Answers.NONE;
        for (String word : words) {
            int at = word.indexOf('=');
            all = new AnswersJson(KNOWLEDGE).with(all, word.substring(0, at), word.substring(at + 1));
        }
        return all;
    }

    private static VentAdvice of(Mesh mesh, String... words) {
        Answers all = answers(words);
        return VentAdvisor.fromMesh(all, KNOWLEDGE, MeshRequest.of(all).orElseThrow(), mesh);
    }

    private static VentAdvice described(String... words) {
        return VentAdvisor.described(answers(words), KNOWLEDGE);
    }

    @Test
    void eachPostOfASlabTakesAVentOfItsOwn() {
        VentAdvice a = of(
                Castings.posted(),
                "mesh-file=slab.stl",
                "mesh-unit=mm",
                "mesh-is=cavity",
                "mesh-gate=40,20,10",
                "mesh-up=0,0,1",
                "material=fast-polyurethane");
        assertThat(a.verdict()).isEqualTo(Verdict.CHANGE);
        assertThat(a.treatments()).extracting(Treatment::decision).containsExactly("vent", "vent");
        assertThat(a.treatments()
                        .get(0)
                        .figure("pocket-volume")
                        .orElseThrow()
                        .si()
                        .typical())
                .isCloseTo(2e-6, within(1e-11));
        assertThat(a.vents()).isEqualTo(2);
        MeshFindings m = a.mesh().orElseThrow();
        assertThat(m.vents().enough()).isTrue();
        assertThat(m.vents().left().whole()).isEmpty();
        assertThat(m.attitudes())
                .as("up was given, so no other way is looked for")
                .isEmpty();
        assertThat(a.assumed()).contains("job").doesNotContain("material");
    }

    @Test
    void theBestWayUpNeedsTheFewestVents() {
        VentAdvice a = of(
                Castings.posted(),
                "mesh-file=slab.stl",
                "mesh-unit=mm",
                "mesh-is=cavity",
                "mesh-gate=40,20,10",
                "mesh-attitudes=60");
        List<pourwright.geometry.Attitude> ways = a.mesh().orElseThrow().attitudes();
        assertThat(ways).hasSize(3);
        assertThat(ways.get(0).vents())
                .isLessThan(2)
                .isLessThanOrEqualTo(ways.get(2).vents());
        assertThat(ways).isSortedAccordingTo((x, y) -> Integer.compare(x.vents(), y.vents()));
    }

    @Test
    void aSideThatMustNotFaceUpDoesNot() {
        VentAdvice a = of(
                Castings.posted(),
                "mesh-file=slab.stl",
                "mesh-unit=mm",
                "mesh-is=cavity",
                "mesh-gate=40,20,10",
                "mesh-not-up=0,0,-1; 0,1,0; 0,-1,0",
                "mesh-attitudes=60");
        double least = Math.cos(Math.toRadians(45));
        a.mesh().orElseThrow().attitudes().forEach(w -> {
            assertThat(-w.up().z()).isLessThan(least);
            assertThat(Math.abs(w.up().y())).isLessThan(least);
        });
    }

    @ParameterizedTest
    @CsvSource({"20, yes, tilt", "20, no, vent", "45, yes, vent"})
    void aShallowDentUnderAMasterIsTiltedFree(double rim, String mayTurn, String decision) {
        VentAdvice a = of(
                Castings.dented(15, rim),
                "mesh-file=plate.stl",
                "mesh-unit=mm",
                "mesh-is=around",
                "mesh-up=0,0,1",
                "material=tin-silicone",
                "kit=neither",
                "undercut-reach=no",
                "show-face-up=" + mayTurn);
        assertThat(a.treatments()).extracting(Treatment::decision).containsExactly(decision);
        assertThat(a.treatments().get(0).lean().isPresent()).isEqualTo(decision.equals("tilt"));
        assertThat(a.verdict()).isEqualTo(decision.equals("vent") ? Verdict.CHANGE : Verdict.GO);
    }

    @Test
    void aSmallDentUnderRubberShrinksAwayInTheChamber() {
        VentAdvice a = of(
                Castings.dented(1.2, 60),
                "mesh-file=plate.stl",
                "mesh-unit=mm",
                "mesh-is=around",
                "mesh-up=0,0,1",
                "material=tin-silicone",
                "kit=vacuum",
                "mould-fits=yes",
                "master-material=metal",
                "undercut-reach=no");
        assertThat(a.treatments()).extracting(Treatment::decision).containsExactly("vacuum");
        double left = a.treatments()
                .get(0)
                .figure("residue-diameter")
                .orElseThrow()
                .si()
                .typical();
        assertThat(left).isLessThan(KNOWLEDGE.guidelineSi("visible-bubble"));
        assertThat(a.verdict()).isEqualTo(Verdict.GO);
    }

    @Test
    void aCavityWhoseOnlyOpeningIsAtTheBottomCannotFill() {
        VentAdvice a = of(Castings.cube(30), "mesh-file=cube.stl", "mesh-unit=mm", "mesh-is=cavity", "mesh-up=0,0,1");
        assertThat(a.treatments()).isEmpty();
        assertThat(a.mesh().orElseThrow().trapped().noOutlet()).isTrue();
        assertThat(a.verdict()).isEqualTo(Verdict.CHANGE);
        assertThat(a.vents()).isEqualTo(1);
    }

    @Test
    void anOpeningOffTheSurfaceIsRefusedInASentence() {
        assertThatThrownBy(() -> of(
                        Castings.cube(30),
                        "mesh-file=cube.stl",
                        "mesh-unit=mm",
                        "mesh-is=cavity",
                        "mesh-gate=15,15,90"))
                .isInstanceOf(MeshFault.class)
                .hasMessageContaining("gate")
                .hasMessageContaining("off the surface");
    }

    @Test
    void aDescribedPlaceIsTreatedAsTheSameOneInAMesh() {
        VentAdvice meshed = of(
                Castings.posted(),
                "mesh-file=slab.stl",
                "mesh-unit=mm",
                "mesh-is=cavity",
                "mesh-gate=40,20,10",
                "mesh-up=0,0,1",
                "material=fast-polyurethane",
                "job=closed-mould");
        VentAdvice said = described(
                "material=fast-polyurethane",
                "job=closed-mould",
                "undercut-width=10 mm",
                "undercut-depth=20 mm",
                "pocket-volume=2 mL",
                "undercut-blind=yes");
        assertThat(said.treatments().get(0).rule())
                .isEqualTo(meshed.treatments().get(0).rule());
    }

    @Test
    void severalPlacesTakeSeveralVentsAndShareTheAir() {
        VentAdvice one = described(
                "material=fast-polyurethane",
                "part-volume=40 L",
                "undercuts=large",
                "undercut-width=10 mm",
                "undercut-depth=20 mm",
                "undercut-blind=yes");
        VentAdvice ten = described(
                "material=fast-polyurethane",
                "part-volume=40 L",
                "undercuts=large",
                "undercut-width=10 mm",
                "undercut-depth=20 mm",
                "undercut-blind=yes",
                "undercut-count=10");
        assertThat(one.vents()).isEqualTo(1);
        assertThat(ten.vents()).isEqualTo(10);
        assertThat(width(ten)).isLessThan(width(one));
        assertThat(ten.findings()).extracting(f -> f.id()).contains("many-vents-or-turn-the-part");
        assertThat(one.findings()).extracting(f -> f.id()).doesNotContain("many-vents-or-turn-the-part");
    }

    private static double width(VentAdvice a) {
        return a.treatments().get(0).figure("vent-diameter").orElseThrow().si().typical();
    }

    @ParameterizedTest
    @CsvSource({"no, leave", "yes, vent"})
    void inAClearPartSmallerBubblesAreSeen(String clear, String decision) {
        VentAdvice a = described(
                "material=clear-polyurethane",
                "job=closed-mould",
                "undercut-width=0.3 mm",
                "undercut-depth=0.3 mm",
                "undercut-reach=no",
                "clear-part=" + clear);
        assertThat(a.treatments()).extracting(Treatment::decision).containsExactly(decision);
    }

    @Test
    void aSmoothShapeNeedsNoVent() {
        VentAdvice a = described("undercuts=none");
        assertThat(a.verdict()).isEqualTo(Verdict.GO);
        assertThat(a.treatments()).isEmpty();
    }

    @Test
    void aNamedClassStandsForItsUsualSizes() {
        VentAdvice a = described("material=fast-polyurethane", "undercuts=large", "undercut-blind=yes");
        assertThat(a.assumed()).contains("undercut-width", "undercut-depth", "job");
        assertThat(a.treatments()).hasSize(1);
        assertThat(a.treatments().get(0).vented()).isTrue();
    }

    @Test
    void withoutAShapeNothingIsDecided() {
        assertThatThrownBy(() -> described("material=tin-silicone"))
                .isInstanceOf(BadAnswer.class)
                .satisfies(e -> assertThat(((BadAnswer) e).field()).isEqualTo("undercuts"));
        assertThatThrownBy(() -> MeshRequest.of(answers("mesh-file=ear.stl")))
                .isInstanceOf(BadAnswer.class)
                .satisfies(e -> assertThat(((BadAnswer) e).field()).isEqualTo("mesh-unit"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mesh-up | 0,0",
                "mesh-up | 0,0,0",
                "mesh-gate | 1,2,x",
                "mesh-vents | 1,2,3; ",
                "mesh-up | 1,0,0; 0,1,0",
                "mesh-not-up | 1e999,0,0"
            })
    void aPlaceThatCannotBeReadIsNamed(String question, String text) {
        assertThatThrownBy(() -> MeshRequest.of(answers("mesh-file=ear.stl", "mesh-unit=mm", question + "=" + text)))
                .isInstanceOf(BadAnswer.class)
                .satisfies(e -> assertThat(((BadAnswer) e).field()).startsWith("mesh-"));
    }

    /** Whatever is said of a place, some rule decides about it, and the decision is one that is known. */
    @Test
    void everyPlaceGetsADecision() {
        Random chance = new Random(20261125);
        Map<String, List<String>> choices = Map.of(
                "material", List.copyOf(KNOWLEDGE.materials().keySet()),
                "job", List.of("rubber-around-master", "brush-on-mould", "open-mould", "closed-mould", "embed"),
                "undercuts", List.of("texture", "small", "medium", "large"),
                "undercut-blind", List.of("yes", "no"),
                "undercut-reach", List.of("yes", "no"),
                "show-face-up", List.of("yes", "no"),
                "kit", List.of("vacuum", "pressure", "both", "neither"),
                "mould-fits", List.of("yes", "no"),
                "pocket-freed-by-tilt", List.of("yes", "no"),
                "thixotrope", List.of("yes", "no"));
        Set<String> seen = new TreeSet<>();
        for (int i = 0; i < 1500; i++) {
            Answers all = Answers.NONE;
            for (String question : new TreeSet<>(choices.keySet())) {
                if (chance.nextInt(4) > 0) {
                    List<String> some = choices.get(question);
                    all = new AnswersJson(KNOWLEDGE).with(all, question, some.get(chance.nextInt(some.size())));
                }
            }
            for (String question : List.of("undercut-width", "undercut-depth")) {
                String mm = String.format(Locale.ROOT, "%.3g mm", 0.1 * Math.pow(10, 2.7 * chance.nextDouble()));
                all = new AnswersJson(KNOWLEDGE).with(all, question, mm);
            }
            seen.add(VentAdvisor.described(all, KNOWLEDGE).treatments().get(0).decision());
        }
        assertThat(seen).isEqualTo(new TreeSet<>(KNOWLEDGE.decisions().keySet()));
    }

    @Test
    void aMeshTellsAPlanItsAmountAndItsWalls() {
        Answers said =
                answers("material=fast-polyurethane", "mesh-file=slab.stl", "mesh-unit=mm", "mesh-gate=40,20,10");
        Answers all = MeshAnswers.ofPlan(said, KNOWLEDGE, MeshRequest.of(said).orElseThrow(), Castings.posted());
        assertThat(si(all, "part-volume")).isCloseTo(35e-6, within(1e-10));
        assertThat(si(all, "thinnest-wall")).isCloseTo(0.010, within(0.0002));
        assertThat(si(all, "part-depth")).isBetween(0.010, 0.0145);
        assertThat(si(all, "undercut-depth")).isCloseTo(0.020, within(1e-6));
        assertThat(si(all, "undercut-width")).isCloseTo(0.010, within(1e-6));
        assertThat(all.choice("undercuts")).isEqualTo("large");
        Answers typed = answers("part-volume=1 L", "mesh-file=slab.stl", "mesh-unit=mm", "mesh-gate=40,20,10");
        assertThat(si(
                        MeshAnswers.ofPlan(
                                typed, KNOWLEDGE, MeshRequest.of(typed).orElseThrow(), Castings.posted()),
                        "part-volume"))
                .as("what the person said stands")
                .isCloseTo(1e-3, within(1e-12));
    }

    private static double si(Answers answers, String question) {
        return ((pourwright.facts.Answer.Quantity) answers.get(question).orElseThrow())
                .si()
                .typical();
    }
}
