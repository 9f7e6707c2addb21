package pourwright.vents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Verdict;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.geometry.Attitude;
import pourwright.geometry.Attitudes;
import pourwright.geometry.Directions;
import pourwright.geometry.Domain;
import pourwright.geometry.Mesh;
import pourwright.geometry.Pocket;
import pourwright.geometry.Pockets;
import pourwright.geometry.Setup;
import pourwright.geometry.Tilting;
import pourwright.geometry.Trapped;
import pourwright.geometry.Vec3;
import pourwright.geometry.VentPlacer;
import pourwright.geometry.VentPlan;
import pourwright.knowledge.Knowledge;
import pourwright.units.Dimension;

/** Decides whether a mould needs vents: a pure function of answers, knowledge and the mesh. */
public final class VentAdvisor {
    /** More vents than anybody would make; reaching it is said. */
    private static final int MOST_VENTS = 60;
    /** Attitudes that are measured again with every rule, after a search by volume alone. */
    private static final int MEASURED = 9;

    private static final double APART_DEGREES = 15;
    private static final int SHOWN_ATTITUDES = 3;
    private static final int USUAL_ATTITUDES = 200;
    /** Advice about other things than the mould belongs to a plan. */
    private static final Set<String> TOPICS = Set.of("mould", "pour", "master", "safety");

    private static final Set<String> OF_ONE_POCKET = Set.of(
            "undercuts",
            "undercut-width",
            "undercut-depth",
            "undercut-blind",
            "undercut-reach",
            "pocket-volume",
            "pocket-freed-by-tilt");

    private final Knowledge knowledge;
    private final Answers said;
    private final Set<String> assumed = new TreeSet<>();
    private Answers job;

    private VentAdvisor(Answers said, Knowledge knowledge) {
        this.said = said;
        this.knowledge = knowledge;
        this.job = said;
    }

    /**
     * From answers alone: the place as it was described.
     *
     * @throws BadAnswer when no place was described, or an answer cannot be true
     */
    public static VentAdvice described(Answers answers, Knowledge knowledge) {
        return new VentAdvisor(answers, knowledge).fromWords();
    }

    /**
     * From a mesh.
     *
     * @param request what was said about the mesh
     * @param mesh the mesh, read by the caller
     * @throws BadAnswer when an answer cannot be true
     * @throws pourwright.geometry.MeshFault when a gate or vent lies off the surface
     */
    public static VentAdvice fromMesh(Answers answers, Knowledge knowledge, MeshRequest request, Mesh mesh) {
        return new VentAdvisor(answers, knowledge).fromMesh(request, mesh);
    }

    private VentAdvice fromWords() {
        String named = said.choice("undercuts");
        boolean sized = said.get("undercut-width").isPresent()
                || said.get("pocket-volume").isPresent();
        if (named.isEmpty() && !sized) {
            throw new BadAnswer(
                    "undercuts",
                    "Nothing can be decided without a shape. Give a mesh with --mesh, or describe the hardest place, for"
                            + " example undercut-width=8mm undercut-depth=20mm undercut-blind=yes.");
        }
        settleJob(said.choice("job").isEmpty() ? "closed-mould" : said.choice("job"));
        if (named.equals("none") && !sized) {
            return advice(Advisor.consult(job, knowledge), Optional.empty(), List.of(), 0, Verdict.GO);
        }
        describe(named);
        Treatment treatment = new PocketAdvisor(job, knowledge).described(job);
        int count = said.get("undercut-count").isPresent() ? count(treatment) : 1;
        return advice(
                treatment.job(),
                Optional.empty(),
                List.of(treatment),
                count,
                treatment.vented() ? Verdict.CHANGE : Verdict.GO);
    }

    private static int count(Treatment t) {
        return (int)
                Math.round(t.figure("undercut-count").map(v -> v.si().typical()).orElse(1.0));
    }

    /** What was left out about the place is taken from what is usual for its class. */
    private void describe(String named) {
        if (said.get("undercut-width").isEmpty()) {
            Optional<Estimate> usual = UndercutClass.widthM(named, knowledge);
            if (usual.isPresent()) {
                assume("undercut-width", usual.get());
            } else if (said.get("undercut-depth").isEmpty()) {
                // Only a volume is known: a hole as deep as wide.
                double volume = quantity("pocket-volume").typical();
                assume("undercut-width", Estimate.exactly(Math.cbrt(4 * volume / Math.PI)));
            }
        }
        Estimate width = quantity("undercut-width");
        if (job.get("undercut-depth").isEmpty()) {
            assume("undercut-depth", width);
        }
        if (named.isEmpty() || named.equals("none")) {
            job = Typed.choice(job, "undercuts", UndercutClass.of(width.typical(), knowledge));
            assumed.add("undercuts");
        }
    }

    private Estimate quantity(String question) {
        return job.get(question).orElse(null) instanceof Answer.Quantity q
                ? q.si()
                : Estimate.exactly(knowledge.guidelineSi("undercut-medium-below"));
    }

    private void assume(String question, Estimate lengthM) {
        job = Typed.range(job, question, lengthM, "mm", Dimension.LENGTH);
        assumed.add(question);
    }

    /** Nothing is consulted without a liquid and a job; what stands in is said. */
    private void settleJob(String usual) {
        if (job.choice("job").isEmpty()) {
            job = Typed.choice(job, "job", usual);
            assumed.add("job");
        }
        if (job.choice("material").isEmpty()) {
            boolean rubber = List.of("rubber-around-master", "brush-on-mould").contains(job.choice("job"));
            job = Typed.choice(job, "material", rubber ? "tin-silicone" : "fast-polyurethane");
            assumed.add("material");
        }
    }

    private VentAdvice fromMesh(MeshRequest request, Mesh mesh) {
        boolean cavity = request.setup().domain() == Domain.CAVITY;
        settleJob(cavity ? "closed-mould" : "rubber-around-master");
        job = MeshAnswers.amount(job, mesh, cavity);
        Setup setup = standing(request, mesh);
        Trapped trapped = Pockets.find(mesh, setup);
        Map<Integer, Optional<Vec3>> leans = leans(mesh, setup, trapped);
        PocketAdvisor pockets = new PocketAdvisor(job, knowledge);
        Map<Vec3, Boolean> freedAt = new HashMap<>();
        trapped.pockets()
                .forEach(p -> freed(leans, p).ifPresent(yes -> freedAt.merge(p.peak(), yes, Boolean::logicalOr)));
        Predicate<Pocket> takesVent = p -> pockets.takesVent(p, Optional.ofNullable(freedAt.get(p.peak())));
        VentPlan plan = VentPlacer.place(mesh, setup, takesVent, MOST_VENTS);
        int vents = plan.vents().size();
        List<Treatment> treatments = trapped.pockets().stream()
                .map(p -> pockets.of(p, freed(leans, p), leans.getOrDefault(p.id(), Optional.empty()), vents))
                .toList();
        int asked = request.attitudes() >= 0 ? request.attitudes() : turns(request) ? USUAL_ATTITUDES : 0;
        List<Attitude> attitudes = asked == 0 ? List.of() : attitudes(request, mesh, setup, pockets, asked);
        Answers whole = vents > 0 ? Typed.quantity(job, "undercut-count", vents, "1", Dimension.NUMBER) : job;
        Consultation c = Advisor.consult(whole, knowledge);
        MeshFindings found = new MeshFindings(mesh, setup, trapped, plan, attitudes, asked);
        boolean sound = vents == 0 && plan.enough() && !trapped.noOutlet();
        return advice(c, Optional.of(found), treatments, 1, sound ? Verdict.GO : Verdict.CHANGE);
    }

    /** Other ways up are looked for unless the one that was given must be kept. */
    private boolean turns(MeshRequest request) {
        String may = job.choice("show-face-up");
        return may.equals("yes") || may.isEmpty() && !request.upGiven();
    }

    private static Optional<Boolean> freed(Map<Integer, Optional<Vec3>> leans, Pocket pocket) {
        return Optional.ofNullable(leans.get(pocket.id())).map(Optional::isPresent);
    }

    /** The stand with the level that the liquid ends at, and with what is too small to tell left to a sum. */
    private Setup standing(MeshRequest request, Mesh mesh) {
        double ball = knowledge.guidelineSi("pocket-counted-bubble");
        Setup setup = request.setup().withIgnored(Math.PI / 6 * ball * ball * ball);
        if (job.get("head-height").isPresent()) {
            double head = quantity("head-height").typical();
            setup = setup.withPourLevel(mesh.highestM(setup.up()) + head);
        }
        return setup;
    }

    /** Only where the mould may be leaned is it worth knowing what a tilt frees. */
    private Map<Integer, Optional<Vec3>> leans(Mesh mesh, Setup setup, Trapped trapped) {
        if (!job.choice("show-face-up").equals("yes") || trapped.pockets().isEmpty()) {
            return Map.of();
        }
        double ball = Advisor.consult(job, knowledge)
                .figure("seen-bubble")
                .orElseThrow()
                .si()
                .typical();
        double seenM3 = Math.PI / 6 * ball * ball * ball;
        return Tilting.frees(mesh, setup, trapped, knowledge.guidelineSi("tilt-angle"), p -> p.volumeM3() > seenM3);
    }

    private List<Attitude> attitudes(MeshRequest request, Mesh mesh, Setup setup, PocketAdvisor pockets, int count) {
        double cone = knowledge.guidelineSi("show-side-angle");
        Predicate<Vec3> allowed = up -> request.notUp().stream()
                .noneMatch(side -> Directions.within(side, cone).test(up));
        double limitM3 = VentLimit.volumeM3(pockets);
        List<Attitude> found = Attitudes.search(mesh, setup, count, allowed, pocket -> pocket.volumeM3() >= limitM3);
        List<Attitude> measured = new ArrayList<>();
        for (Attitude a : found) {
            // A stand a few degrees beside one that is on the list already tells nobody anything.
            boolean other = measured.stream()
                    .noneMatch(m -> Directions.within(m.up(), APART_DEGREES).test(a.up()));
            if (other && measured.size() < MEASURED) {
                measured.add(Attitudes.measure(
                        mesh, setup.withUp(a.up()), pocket -> pockets.takesVent(pocket, Optional.empty())));
            }
        }
        measured.sort(Comparator.comparingInt(Attitude::vents)
                .thenComparingDouble(a -> (float) a.trappedM3())
                .thenComparingDouble(a -> (float) a.fillHeightM()));
        return measured.subList(0, Math.min(SHOWN_ATTITUDES, measured.size()));
    }

    private VentAdvice advice(
            Consultation c, Optional<MeshFindings> mesh, List<Treatment> treatments, int count, Verdict verdict) {
        Map<String, Finding> findings = new LinkedHashMap<>();
        c.findings().forEach(f -> keep(findings, f, mesh.isPresent()));
        treatments.forEach(t -> t.job().findings().forEach(f -> keep(findings, f, true)));
        List<Finding> sorted = findings.values().stream()
                .sorted(Comparator.comparing(Finding::strength))
                .toList();
        return new VentAdvice(said, c, mesh, treatments, count, sorted, List.copyOf(assumed), verdict);
    }

    /** What rests on the answers about one pocket is said in its decision; what holds for all is said once. */
    private static void keep(Map<String, Finding> findings, Finding f, boolean many) {
        boolean ofOne = f.answers().stream().anyMatch(OF_ONE_POCKET::contains)
                || f.figures().stream().anyMatch(id -> id.startsWith("pocket-") || id.startsWith("undercut-ratio"));
        if (TOPICS.contains(f.topic()) && !(many && ofOne)) {
            findings.putIfAbsent(f.id(), f);
        }
    }
}
