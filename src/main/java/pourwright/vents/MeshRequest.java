package pourwright.vents;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.advice.BadAnswer;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.geometry.Domain;
import pourwright.geometry.MeshFault;
import pourwright.geometry.Setup;
import pourwright.geometry.Vec3;

/**
 * What was said about a mesh.
 *
 * @param file          name of the file
 * @param metresPerUnit length of one unit of the file, m
 * @param setup         how it stands and where it is open, in metres
 * @param upGiven       whether somebody said which way is up
 * @param notUp         sides that must not face up
 * @param attitudes     directions to try, or -1 when nobody said
 */
public record MeshRequest(
        String file, double metresPerUnit, Setup setup, boolean upGiven, List<Vec3> notUp, int attitudes) {
    private static final Map<String, Double> METRES = Map.of("mm", 1e-3, "cm", 1e-2, "m", 1.0, "inch", 0.0254);
    private static final int MOST_PLACES = 200;

    /**
     * Reads it from the answers; nothing when no mesh was named.
     *
     * @throws BadAnswer naming the answer that is missing or cannot be read
     */
    public static Optional<MeshRequest> of(Answers answers) {
        String file = answers.text("mesh-file");
        if (file.isEmpty()) {
            return Optional.empty();
        }
        String unit = answers.choice("mesh-unit");
        if (unit.isEmpty()) {
            throw new BadAnswer(
                    "mesh-unit",
                    "A mesh file holds bare numbers: say what one unit is, with --unit mm, cm, m or inch.");
        }
        double metres = METRES.get(unit);
        List<Vec3> up = places(answers, "mesh-up", 1);
        if (up.size() > 1) {
            throw new BadAnswer("mesh-up", "Only one direction can be up. For example 0,0,1.");
        }
        try {
            Setup setup = new Setup(
                    domain(answers),
                    up.isEmpty() ? Vec3.UP : up.get(0),
                    places(answers, "mesh-gate", metres),
                    places(answers, "mesh-vents", metres),
                    number(answers, "mesh-resolution", 0),
                    Double.NaN,
                    0);
            return Optional.of(new MeshRequest(
                    file,
                    metres,
                    setup,
                    !up.isEmpty(),
                    places(answers, "mesh-not-up", 1).stream().map(Vec3::unit).toList(),
                    (int) number(answers, "mesh-attitudes", -1)));
        } catch (MeshFault e) {
            throw new BadAnswer("mesh-up", e.getMessage());
        }
    }

    private static Domain domain(Answers answers) {
        return switch (answers.choice("mesh-is")) {
            case "cavity" -> Domain.CAVITY;
            case "around" -> Domain.AROUND;
            case "around-on-floor" -> Domain.AROUND_ON_FLOOR;
            default ->
                List.of("rubber-around-master", "brush-on-mould").contains(answers.choice("job"))
                        ? Domain.AROUND
                        : Domain.CAVITY;
        };
    }

    private static double number(Answers answers, String question, double otherwise) {
        return answers.get(question).orElse(null) instanceof Answer.Quantity q ? q.si().typical() : otherwise;
    }

    /** Points or directions such as {@code 1,2,3; 4,5,6}, multiplied by a factor; their form was checked when they were read. */
    private static List<Vec3> places(Answers answers, String question, double factor) {
        String text = answers.text(question);
        List<Vec3> places = new ArrayList<>();
        if (text.isBlank()) {
            return places;
        }
        for (String place : text.split(";", -1)) {
            String[] numbers = place.strip().split("\\s*,\\s*|\\s+", -1);
            if (places.size() >= MOST_PLACES) {
                throw new BadAnswer(
                        question, "At most " + MOST_PLACES + " places are read, such as 0,0,12.5; 3,0,12.5.");
            }
            places.add(new Vec3(
                            Double.parseDouble(numbers[0]),
                            Double.parseDouble(numbers[1]),
                            Double.parseDouble(numbers[2]))
                    .times(factor));
        }
        return places;
    }
}
