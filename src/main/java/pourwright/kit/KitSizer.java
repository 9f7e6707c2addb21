package pourwright.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.advice.Wording;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.facts.Estimate;
import pourwright.figures.FigureValue;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.PumpKind;
import pourwright.knowledge.Question;
import pourwright.rulebook.Conclusion;
import pourwright.rulebook.Verb;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/**
 * Finds the smallest pump that serves all materials of a workshop, by planning one job for each pump and material. No
 * formula stands here: what a pump can do is what a plan with it says.
 */
final class KitSizer {
    private static final String STEP = "pump-step-";
    private static final int MOST_MATERIALS = 12;
    /** A pump of nearly a kind's smallest or largest speed is one of that kind. */
    private static final double NEARLY = 1.02;

    private static final Set<String> DEGAS =
            Set.of("degas-mix", "degas-component", "degas-before-thickening", "degas-in-mould");
    /** What a test told or a pump of its own would be in the way of. */
    private static final List<String> OF_THE_PUMP = List.of(
            "pump-kind",
            "pump-speed",
            "pump-ultimate",
            "gauge-reading",
            "gauge-kind",
            "pressure-rise",
            "rise-time",
            "target-pressure",
            "material",
            "pump-down-readings",
            "rise-readings",
            "uses");

    private final Answers base;
    private final Knowledge knowledge;
    private final Map<String, Consultation> planned = new HashMap<>();
    private final List<Double> stepsM3PerS;

    private KitSizer(Answers answers, Knowledge knowledge) {
        Answers rest = answers;
        for (String id : OF_THE_PUMP) {
            rest = rest.without(id);
        }
        this.base = rest.choice("kit").isEmpty() ? choice(rest, "kit", "vacuum") : rest;
        this.knowledge = knowledge;
        this.stepsM3PerS = knowledge.guidelines().keySet().stream()
                .filter(id -> id.startsWith(STEP))
                .map(knowledge::guidelineSi)
                .sorted()
                .toList();
    }

    /**
     * Sizes a pump.
     *
     * @param uses names of materials with commas between
     * @throws BadAnswer when a material is not known
     */
    static Sizing size(Answers answers, Knowledge knowledge, String uses) {
        return new KitSizer(answers, knowledge).sized(uses);
    }

    private static Answers choice(Answers answers, String question, String id) {
        return answers.with(question, new Answer.Choice(id), id);
    }

    private Sizing sized(String uses) {
        List<MaterialClass> all = materials(uses);
        List<Sizing.Want> wants = new ArrayList<>();
        List<MaterialClass> pumped = new ArrayList<>();
        for (MaterialClass m : all) {
            boolean vacuum = knowledge.pumps().keySet().stream()
                    .anyMatch(kind -> DEGAS.stream().anyMatch(largest(kind, m).methods()::contains));
            wants.add(new Sizing.Want(m.id(), m.name(), vacuum));
            if (vacuum) {
                pumped.add(m);
            }
        }
        List<Sizing.Kind> kinds = new ArrayList<>();
        knowledge.pumps().forEach((id, kind) -> kinds.add(kind(id, kind, pumped)));
        Optional<Sizing.Pick> pick = kinds.stream()
                .filter(k -> k.serves().isPresent())
                .map(k -> new Sizing.Pick(k.id(), k.name(), k.serves().orElseThrow()))
                .min(Comparator.comparingDouble(Sizing.Pick::speedM3PerS)
                        .thenComparing(Comparator.comparingDouble(this::depthPa).reversed())
                        .thenComparing(Sizing.Pick::kind));
        List<Sizing.Enough> enough = new ArrayList<>();
        // Where no pump serves, the deepest kind shows what is in the way.
        String kind = pick.map(Sizing.Pick::kind)
                .orElseGet(() -> knowledge.pumps().entrySet().stream()
                        .min(Comparator.comparingDouble(
                                e -> e.getValue().ultimate().typical()))
                        .orElseThrow()
                        .getKey());
        pumped.forEach(m -> enough(kind, m).ifPresent(enough::add));
        return new Sizing(List.copyOf(wants), pick, List.copyOf(kinds), List.copyOf(enough), planned.size());
    }

    private double depthPa(Sizing.Pick p) {
        var v = knowledge.pumps().get(p.kind()).ultimate();
        return UnitBook.toSi(v.typical(), v.unit(), pourwright.units.Dimension.PRESSURE);
    }

    private List<MaterialClass> materials(String uses) {
        Question question = knowledge.question("material").orElseThrow();
        AnswerReader reader = new AnswerReader(knowledge);
        List<MaterialClass> found = new ArrayList<>();
        for (String word : uses.split("[,;]")) {
            if (word.isBlank()) {
                continue;
            }
            if (reader.fromProgram(question, word.strip()) instanceof AnswerReader.Understood u
                    && u.answer() instanceof Answer.Choice c) {
                MaterialClass m = knowledge.materials().get(c.id());
                if (!found.contains(m)) {
                    found.add(m);
                }
            } else {
                throw new BadAnswer(
                        "uses",
                        "\""
                                + word.strip()
                                        .substring(0, Math.min(40, word.strip().length()))
                                + "\" is no material. Accepted: ids with commas between, such as tin-silicone,"
                                + " clear-polyurethane.");
            }
        }
        if (found.isEmpty() || found.size() > MOST_MATERIALS) {
            throw new BadAnswer(
                    "uses",
                    "Name between one and " + MOST_MATERIALS + " materials with commas between, such as tin-silicone,"
                            + " clear-polyurethane.");
        }
        return found;
    }

    private List<Double> speeds(PumpKind kind) {
        var v = kind.speed();
        double low = UnitBook.toSi(v.low(), v.unit(), pourwright.units.Dimension.FLOW);
        double high = UnitBook.toSi(v.high(), v.unit(), pourwright.units.Dimension.FLOW);
        return stepsM3PerS.stream()
                .filter(s -> s * NEARLY >= low && s <= high * NEARLY)
                .toList();
    }

    private Consultation largest(String kind, MaterialClass m) {
        List<Double> speeds = speeds(knowledge.pumps().get(kind));
        return consult(kind, speeds.get(speeds.size() - 1), m);
    }

    private Consultation consult(String kind, double speedM3PerS, MaterialClass m) {
        return planned.computeIfAbsent(kind + " " + speedM3PerS + " " + m.id(), key -> {
            String shown = Show.quantity(speedM3PerS, "L/s", pourwright.units.Dimension.FLOW)
                    .replace('\u00a0', ' ');
            Answers answers = choice(choice(base, "material", m.id()), "pump-kind", kind)
                    .with("pump-speed", new Answer.Quantity(Estimate.exactly(speedM3PerS), "L/s", shown), shown);
            return Advisor.consult(answers, knowledge);
        });
    }

    private Sizing.Kind kind(String id, PumpKind kind, List<MaterialClass> pumped) {
        String why = "";
        String material = "";
        for (double speed : speeds(kind)) {
            why = "";
            for (MaterialClass m : pumped) {
                why = against(consult(id, speed, m));
                material = m.id();
                if (!why.isEmpty()) {
                    break;
                }
            }
            if (why.isEmpty() && !pumped.isEmpty()) {
                return new Sizing.Kind(id, kind.name(), Optional.of(speed), "", "");
            }
        }
        return new Sizing.Kind(id, kind.name(), Optional.empty(), material, why);
    }

    /** Why a plan with this pump does not work, in the plan's own words; empty when it does. */
    private String against(Consultation c) {
        Wording wording = new Wording(knowledge, c.answers(), c.figures());
        Estimate reached = si(c, "reachable-pressure");
        Estimate wanted = si(c, "vacuum-pressure");
        if (reached != null && wanted != null && reached.typical() > wanted.high()) {
            return wording.fill("It reaches {reachable-pressure}, and the work wants {vacuum-pressure}.");
        }
        for (Finding f : c.findings()) {
            boolean ofPump = f.topic().equals("pump") || f.topic().equals("vacuum");
            if (ofPump && (f.strength() == Strength.STOP || f.strength() == Strength.CHANGE)) {
                return f.say();
            }
        }
        if (DEGAS.stream().noneMatch(c.methods()::contains)) {
            return c.conclusions().stream()
                    .filter(x -> x.verb() == Verb.REFUSE && DEGAS.contains(x.target()))
                    .map(Conclusion::say)
                    .findFirst()
                    .map(wording::fill)
                    .orElse("With this pump a plan does without vacuum.");
        }
        if (above(c, "pump-down-share", "pump-down-share-limit")) {
            return wording.fill("Emptying the chamber takes {pump-down-share} of the working time; the limit is"
                    + " {guideline:pump-down-share-limit}.");
        }
        return above(c, "degas-share", "degas-share-refuse")
                ? wording.fill("Mixing, pull and pour take {degas-share} of the working time.")
                : "";
    }

    private boolean above(Consultation c, String figure, String guideline) {
        Estimate e = si(c, figure);
        return e != null && e.typical() > knowledge.guidelineSi(guideline);
    }

    private static Estimate si(Consultation c, String figure) {
        return c.figure(figure).map(FigureValue::si).orElse(null);
    }

    /** The first speed from which the next larger one shortens the pull by little. */
    private Optional<Sizing.Enough> enough(String kind, MaterialClass m) {
        double gain = knowledge.guidelineSi("pump-size-gain");
        for (int i = 0; i < stepsM3PerS.size(); i++) {
            Consultation here = consult(kind, stepsM3PerS.get(i), m);
            boolean last = i == stepsM3PerS.size() - 1;
            Estimate now = si(here, "degas-time");
            Estimate next = last ? null : si(consult(kind, stepsM3PerS.get(i + 1), m), "degas-time");
            if (!last && (now == null || next == null || Double.isInfinite(now.typical()))) {
                continue;
            }
            if (last || next.typical() > now.typical() * (1 - gain)) {
                return Optional.of(new Sizing.Enough(
                        m.id(), m.name(), stepsM3PerS.get(i), last ? Sizing.Limit.NONE : limit(here)));
            }
        }
        return Optional.empty();
    }

    private Sizing.Limit limit(Consultation c) {
        Estimate share = si(c, "effective-share");
        if (share != null && share.typical() < knowledge.guidelineSi("pump-passes-share")) {
            // Near its own ultimate pressure a pump gives little whatever the hose is.
            Estimate hose = si(c, "line-conductance");
            Estimate pump = si(c, "pump-speed");
            Estimate end = si(c, "pump-ultimate");
            Estimate planned = si(c, "planned-pressure");
            if (hose == null || pump == null || end == null || planned == null) {
                return Sizing.Limit.HOSE;
            }
            double hoseLeaves = hose.typical() / (hose.typical() + pump.typical());
            double depthLeaves = 1 - end.typical() / planned.typical();
            return hoseLeaves < depthLeaves ? Sizing.Limit.HOSE : Sizing.Limit.PUMP_DEPTH;
        }
        Estimate boil = si(c, "boil-off-pressure");
        Estimate wanted = si(c, "vacuum-pressure");
        return boil != null && (wanted == null || boil.typical() >= wanted.low())
                ? Sizing.Limit.BOIL_OFF
                : Sizing.Limit.FROTH;
    }
}
