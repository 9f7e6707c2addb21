package pourwright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.facts.Answers;

/** What a test of a kit asks, in the order a person finds natural, and which of it bears on this kit. */
public final class KitQuestions {
    /** Everything it may ask, in order. */
    public static final List<String> ALL = List.of(
            "chamber-volume",
            "gauge-kind",
            "barometer",
            "altitude",
            "gauge-step",
            "pump-down-readings",
            "rise-readings",
            "pump-warm",
            "pump-kind",
            "pump-speed",
            "pump-ultimate",
            "hose-bore",
            "hose-length",
            "hose-kind",
            "chamber-body",
            "lid-state",
            "dust-cap",
            "pump-runs",
            "pump-oil",
            "oil-level",
            "gas-ballast",
            "chamber-seal",
            "chamber-damp",
            "chamber-wall",
            "gauge-at-air",
            "second-gauge",
            "dial-against-barometer",
            "blank-off",
            "hose-blank-off",
            "lid-pressed",
            "rise-again",
            "after-oil-change",
            "material",
            "target-pressure",
            "uses");

    /** What a kit is, which by itself shows nothing wrong. */
    private static final Set<String> PLAIN = Set.of(
            "chamber-volume",
            "gauge-kind",
            "barometer",
            "altitude",
            "gauge-step",
            "pump-warm",
            "pump-kind",
            "pump-speed",
            "pump-ultimate",
            "hose-bore",
            "hose-length",
            "material",
            "target-pressure",
            "uses");

    private static final Set<String> IF_SUSPECT = Set.of(
            "chamber-seal",
            "chamber-damp",
            "chamber-wall",
            "gauge-at-air",
            "second-gauge",
            "dial-against-barometer",
            "blank-off",
            "hose-blank-off",
            "lid-pressed",
            "rise-again",
            "after-oil-change");

    private static final Set<String> OF_OIL = Set.of("pump-oil", "oil-level", "gas-ballast", "after-oil-change");
    private static final Set<String> OIL_LESS =
            Set.of("dry-scroll", "diaphragm", "piston", "ejector", "water-ring", "hand");
    private static final Set<String> OF_READINGS =
            Set.of("pump-down-readings", "rise-readings", "gauge-step", "pump-warm", "gauge-at-air", "second-gauge");
    private static final Set<String> OF_DIAL = Set.of("barometer", "altitude", "dial-against-barometer");

    private static final Map<String, String> REASONS = Map.ofEntries(
            Map.entry("chamber-volume", "Speed and leak are both so many litres a second: they hang on the volume."),
            Map.entry("gauge-kind", "The same number means another pressure on a dial and on an absolute gauge."),
            Map.entry("barometer", "A dial counts from the air around it, which weather and height change."),
            Map.entry("altitude", "Without a barometer the height above the sea tells the local air."),
            Map.entry("gauge-step", "No reading is finer than a step. It says how far the result can be trusted."),
            Map.entry("pump-down-readings", "How fast it falls tells the speed; where it ends tells the depth."),
            Map.entry("rise-readings", "Only the shape of a rise tells a leak from damp and from a weak pump."),
            Map.entry("pump-warm", "A cold oil pump looks weak, and is sound ten minutes later."),
            Map.entry("pump-kind", "Each kind has its own depth; what is poor for one is good for another."),
            Map.entry("pump-speed", "What was measured is held against what the plate says."),
            Map.entry("pump-ultimate", "What was measured is held against what the pump should reach."),
            Map.entry("hose-bore", "A narrow hose looks like a weak pump."),
            Map.entry("hose-length", "A long hose looks like a weak pump."),
            Map.entry("hose-kind", "A hose that goes flat shuts off the pump just when it matters."),
            Map.entry("chamber-body", "The air presses a kilogram on each square centimetre. Some vessels cave in."),
            Map.entry("lid-state", "A marked lid can break without warning."),
            Map.entry("dust-cap", "A forgotten cap makes a sound pump look dead, and can hurt it."),
            Map.entry("pump-runs", "Heat and knocking are faults that no reading shows."),
            Map.entry("pump-oil", "The oil tells more about a pump than any gauge."),
            Map.entry("oil-level", "Without enough oil the vanes do not seal."),
            Map.entry("gas-ballast", "An open ballast costs depth, and nothing else is wrong."),
            Map.entry("chamber-seal", "Most leaks sit at the seal, and are found by eye."),
            Map.entry("chamber-damp", "Water boils off for hours and looks like a leak."),
            Map.entry("chamber-wall", "Old resin gives off vapour, and splashes block the hose."),
            Map.entry("gauge-at-air", "A gauge that is off at air is off everywhere."),
            Map.entry("second-gauge", "Before a pump is taken apart the gauge should be believed."),
            Map.entry("dial-against-barometer", "At its best a dial shows nearly all of the local air, never more."),
            Map.entry("blank-off", "The pump alone: it splits the kit into pump and all the rest."),
            Map.entry("hose-blank-off", "Pump and hose without the chamber: it splits the rest once more."),
            Map.entry("lid-pressed", "A seal that only sits badly answers to a hand at once."),
            Map.entry("rise-again", "A leak stays as it is; gas from inside gets less."),
            Map.entry("after-oil-change", "Fresh warm oil tells spent oil from worn vanes."),
            Map.entry("material", "How deep is deep enough depends on what is to be degassed."),
            Map.entry("target-pressure", "How deep is deep enough depends on the work."),
            Map.entry("uses", "With the materials known, the smallest pump that serves them all can be found."));

    private KitQuestions() {}

    /** Whether an answer to it says something about the kit's health. */
    private static boolean tells(String id) {
        return !PLAIN.contains(id);
    }

    /** Whether anything was said that a test can begin with. */
    public static boolean tellSomething(Answers answers) {
        return answers.get("uses").isPresent()
                || ALL.stream().anyMatch(id -> tells(id) && answers.get(id).isPresent());
    }

    /** Why it is asked. */
    public static String reason(String id) {
        return REASONS.getOrDefault(id, "It says more about the kit.");
    }

    /** What is open and bears on this kit, in order. */
    static List<String> open(Answers answers, boolean suspect) {
        List<String> open = new ArrayList<>();
        for (String id : ALL) {
            if (!answers.has(id) && matters(id, answers, suspect)) {
                open.add(id);
            }
        }
        return open;
    }

    private static boolean matters(String id, Answers answers, boolean suspect) {
        String gauge = answers.choice("gauge-kind");
        boolean dial = Set.of("below-local-air", "above-local-air").contains(gauge);
        if (OF_OIL.contains(id) && OIL_LESS.contains(answers.choice("pump-kind"))) {
            return false;
        }
        if (OF_READINGS.contains(id) && gauge.equals("none")) {
            return false;
        }
        if (OF_DIAL.contains(id) && !dial
                || id.equals("altitude") && answers.get("barometer").isPresent()) {
            return false;
        }
        if (id.equals("target-pressure") && answers.get("material").isPresent()) {
            return false;
        }
        return suspect || !IF_SUSPECT.contains(id);
    }

    /**
     * The next question, or none. Before the readings are known everything may matter.
     *
     * @throws pourwright.advice.BadAnswer when an answer cannot be used
     */
    public static java.util.Optional<String> next(Answers answers, pourwright.knowledge.Knowledge knowledge) {
        return open(answers, KitTest.of(answers, knowledge).suspect(knowledge)).stream()
                .findFirst();
    }
}
