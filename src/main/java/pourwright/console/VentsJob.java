package pourwright.console;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import pourwright.advice.BadAnswer;
import pourwright.alike.Picture;
import pourwright.casebook.CaseFile;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.geometry.Mesh;
import pourwright.geometry.MeshFault;
import pourwright.interview.Interviewer;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.rulebook.RuleBook;
import pourwright.vents.MeshRequest;
import pourwright.vents.VentAdvice;
import pourwright.vents.VentAdvisor;

/** Whether a mould needs vents: from its mesh, or from the hardest place as a person describes it. */
public final class VentsJob implements Job {
    /** What is asked about a mesh, in this order; the shape comes before the liquid. */
    private static final List<String> ABOUT_MESH = List.of("mesh-unit", "mesh-size-right", "mesh-is");

    private static final List<String> HOW_IT_STANDS = List.of("show-face-up", "mesh-up", "mesh-gate", "mesh-not-up");
    /** Of a plan's questions only these bear on trapped air. */
    private static final Set<String> FROM_A_PLAN = Set.of("job", "kit", "mould-fits", "show-face-up", "undercut-reach");

    private static final Set<String> ABOUT_A_PLACE =
            Set.of("undercuts", "undercut-width", "undercut-depth", "undercut-blind");

    private final Knowledge knowledge;
    private final Interviewer interviewer;
    private final Shapes shapes;
    private final Consumer<VentAdvice> found;
    private String loadedName = "";
    private Mesh loaded;
    private boolean unitRefused;
    private Answers lastAnswers = Answers.NONE;
    private VentAdvice lastAdvice;

    /**
     * @param shapes reads mesh files
     * @param found is told of every result, before it is shown
     */
    public VentsJob(Knowledge knowledge, Shapes shapes, Consumer<VentAdvice> found) {
        this.knowledge = knowledge;
        this.interviewer = new Interviewer(knowledge);
        this.shapes = shapes;
        this.found = found;
    }

    @Override
    public String word() {
        return "vents";
    }

    @Override
    public Knowledge knowledge() {
        return knowledge;
    }

    @Override
    public boolean usesKit() {
        return true;
    }

    @Override
    public void prepare() {
        RuleBook.preparePlanSoon(knowledge::readAll);
    }

    @Override
    public Optional<Interviewer.Next> next(Answers answers) {
        if (!answers.has("mesh-file")) {
            return answers.has("undercuts") || answers.has("undercut-width")
                    ? described(answers)
                    : ask(
                            "mesh-file",
                            "A mesh shows every place where air stays, and how much. Words show only the one you know.");
        }
        return answers.text("mesh-file").isEmpty() ? described(answers) : meshed(answers);
    }

    private Optional<Interviewer.Next> meshed(Answers answers) {
        askAgainAfterAWrongSize(answers);
        for (String id : ABOUT_MESH) {
            if (answers.get(id).isEmpty()) {
                return id.equals("mesh-size-right") ? sizeShown(answers) : ask(id, reason(id));
            }
        }
        Optional<Interviewer.Next> about = fromPlan(answers, false);
        if (about.isPresent()) {
            return about;
        }
        for (String id : HOW_IT_STANDS) {
            boolean matters = switch (id) {
                case "mesh-gate" -> answers.choice("mesh-is").equals("cavity");
                case "mesh-not-up" -> answers.choice("show-face-up").equals("yes");
                default -> true;
            };
            if (matters && !answers.has(id)) {
                return ask(id, reason(id));
            }
            // A place that cannot be read is asked again at once, not at the end.
            MeshRequest.of(answers);
        }
        // What lies off the surface shows only now, and is asked again too.
        advise(answers);
        return Optional.empty();
    }

    /** A wrong size means a wrong unit: the unit is asked again, and then the size it makes. */
    private void askAgainAfterAWrongSize(Answers answers) {
        if (!answers.choice("mesh-size-right").equals("no")
                || answers.get("mesh-unit").isEmpty()) {
            return;
        }
        if (!unitRefused) {
            unitRefused = true;
            throw new BadAnswer("mesh-unit", "Then the unit is another one.");
        }
        unitRefused = false;
        throw new BadAnswer("mesh-size-right", "With the new unit the size is another.");
    }

    private Optional<Interviewer.Next> sizeShown(Answers answers) {
        MeshRequest request = MeshRequest.of(answers).orElseThrow();
        String size = VentsPage.size(mesh(request).report());
        Question q = question("mesh-size-right");
        return Optional.of(new Interviewer.Next(
                q.asking("The mesh is " + size + " " + q.ask()),
                List.of("The file does not say its unit. A wrong one makes every volume wrong, by the third power.")));
    }

    private Optional<Interviewer.Next> described(Answers answers) {
        Optional<Interviewer.Next> next = fromPlan(answers, true);
        if (next.isPresent()) {
            return next;
        }
        boolean place = !answers.choice("undercuts").equals("none") && !answers.has("undercut-count");
        return place
                ? ask("undercut-count", "Each such place takes a vent of its own, and they share the air.")
                : Optional.empty();
    }

    /** The first question of a plan that bears on trapped air and is open. */
    private Optional<Interviewer.Next> fromPlan(Answers answers, boolean place) {
        Answers seen = answers;
        while (true) {
            Optional<Interviewer.Next> next = interviewer.next(seen);
            if (next.isEmpty()) {
                return next;
            }
            String id = next.get().question().id();
            if (id.equals("material") || FROM_A_PLAN.contains(id) || place && ABOUT_A_PLACE.contains(id)) {
                return answers.has(id) ? Optional.empty() : next;
            }
            // Passed over as if nobody knew: the plan's other questions change nothing here.
            seen = seen.with(id, new Answer.DontKnow(), null);
        }
    }

    private Optional<Interviewer.Next> ask(String id, String reason) {
        return Optional.of(new Interviewer.Next(question(id), List.of(reason)));
    }

    private static String reason(String id) {
        return switch (id) {
            case "mesh-unit" -> "The file holds bare numbers. Volume, and so every bubble, hangs on the unit.";
            case "mesh-is" ->
                "Resin fills the inside of a shape, rubber the space around it. Air hides on opposite sides.";
            case "show-face-up" -> "What can be turned or leaned may need no vent at all.";
            case "mesh-up" -> "Air collects under whatever is highest. Turned over, it collects elsewhere.";
            case "mesh-gate" -> "The gate lets air out as well, as long as it stands above the liquid.";
            default -> "The side that is up gets the vents and their marks.";
        };
    }

    private Question question(String id) {
        return knowledge.question(id).orElseThrow();
    }

    @Override
    public Set<String> relevant(Answers answers) {
        return new LinkedHashSet<>(answers.all().keySet());
    }

    @Override
    public Optional<String> tooEarly(Answers answers) {
        boolean mesh = !answers.text("mesh-file").isEmpty();
        if (mesh) {
            return answers.choice("mesh-unit").isEmpty()
                    ? Optional.of("The unit of the mesh is needed first.")
                    : Optional.empty();
        }
        boolean place = answers.get("undercuts").isPresent()
                || answers.get("undercut-width").isPresent()
                || answers.get("pocket-volume").isPresent();
        return place
                ? Optional.empty()
                : Optional.of("A mesh or a described place is needed first: without a shape nothing can be said.");
    }

    @Override
    public Optional<Picture> picture(Answers answers) {
        return Optional.of(Picture.of(advise(answers), knowledge));
    }

    @Override
    public Result result(Answers answers, int width, boolean plain) {
        VentAdvice advice = advise(answers);
        found.accept(advice);
        return new Found(advice, page(advice, answers, width, plain));
    }

    /**
     * The advice for these answers.
     *
     * @throws BadAnswer when an answer cannot be used
     */
    public VentAdvice advise(Answers answers) {
        if (lastAdvice == null || !lastAnswers.equals(answers)) {
            lastAdvice = fresh(answers);
            lastAnswers = answers;
        }
        return lastAdvice;
    }

    private VentAdvice fresh(Answers answers) {
        Optional<MeshRequest> request = MeshRequest.of(answers);
        if (request.isEmpty()) {
            return VentAdvisor.described(answers, knowledge);
        }
        try {
            return VentAdvisor.fromMesh(answers, knowledge, request.get(), mesh(request.get()));
        } catch (MeshFault e) {
            String about = e.getMessage();
            throw new BadAnswer(
                    about.startsWith("The gate")
                            ? "mesh-gate"
                            : about.startsWith("The vent") ? "mesh-vents" : "mesh-file",
                    about);
        }
    }

    /** The page of an advice. */
    public VentsPage page(VentAdvice advice, Answers answers, int width, boolean plain) {
        Optional<MeshRequest> request = MeshRequest.of(answers);
        String unit = request.isPresent() ? answers.choice("mesh-unit") : "mm";
        return new VentsPage(
                advice,
                knowledge,
                width,
                plain,
                unit,
                request.map(MeshRequest::metresPerUnit).orElse(1.0));
    }

    /** The mesh, read once for each file and unit. */
    private Mesh mesh(MeshRequest request) {
        String name = request.file() + "|" + request.metresPerUnit();
        if (!name.equals(loadedName)) {
            loaded = shapes.mesh(request.file(), request.metresPerUnit());
            loadedName = name;
        }
        return loaded;
    }

    /** An advice with its page. */
    private record Found(VentAdvice advice, VentsPage page) implements Result {
        @Override
        public List<String> first() {
            return page.first();
        }

        @Override
        public String next() {
            return (advice.mesh().isPresent() ? "Next: \"picture\", \"pockets\", " : "Next: ")
                    + "\"how 1\", \"more\", \"cautions\", \"rules\", \"sources\", \"change 1\", \"save NAME\", \"quit\".";
        }

        @Override
        public List<String> words() {
            return List.of("picture", "pockets", "how NUMBER", "more", "cautions", "rules", "sources");
        }

        @Override
        public Optional<List<String>> say(String verb, String rest) {
            return switch (verb) {
                case "picture" -> Optional.of(page.picture());
                case "pockets" -> Optional.of(page.pockets(Integer.MAX_VALUE));
                case "how" -> Optional.of(page.how(rest));
                case "more" -> Optional.of(page.more());
                case "cautions" -> Optional.of(page.cautions());
                case "rules" -> Optional.of(page.rules());
                case "sources" -> Optional.of(page.sources());
                default -> Optional.empty();
            };
        }

        @Override
        public boolean stop() {
            return false;
        }

        @Override
        public String caseText(String name) {
            return CaseFile.of(advice, "workshop", name).text();
        }
    }
}
