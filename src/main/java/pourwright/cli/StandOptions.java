package pourwright.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answers;

/** Options about how a mould stands and where it is open. */
final class StandOptions extends MeshOptions {
    @Option(names = "--up", paramLabel = "X,Y,Z", description = "Which way is up (0,0,1 unless said).")
    private String up;

    @Option(names = "--gate", paramLabel = "X,Y,Z", description = "Where liquid comes in (else the lowest point).")
    private List<String> gates = new ArrayList<>();

    @Option(names = "--vent", paramLabel = "X,Y,Z", description = "A vent that is there already; may be repeated.")
    private List<String> vents = new ArrayList<>();

    @Option(names = "--on-floor", description = "The same, and the master stands on the floor.")
    private boolean onFloor;

    @Option(names = "--resolution", paramLabel = "LENGTH", description = "Width of a column where parts overlap.")
    private String resolution;

    @Option(names = "--not-up", paramLabel = "X,Y,Z", description = "A side that must not face up; may be repeated.")
    private List<String> notUp = new ArrayList<>();

    @Option(names = "--attitudes", paramLabel = "N", description = "Ways to stand it to try (200, or 0 with --up).")
    private String attitudes;

    @Override
    Answers over(Answers answers, AnswersJson reader) {
        Answers all = super.over(answers, reader);
        if (onFloor) {
            all = reader.with(all, "mesh-is", "around-on-floor");
        }
        if (up != null) {
            all = reader.with(all, "mesh-up", up);
        }
        if (!gates.isEmpty()) {
            all = reader.with(all, "mesh-gate", String.join("; ", gates));
        }
        if (!vents.isEmpty()) {
            all = reader.with(all, "mesh-vents", String.join("; ", vents));
        }
        if (!notUp.isEmpty()) {
            all = reader.with(all, "mesh-not-up", String.join("; ", notUp));
        }
        if (attitudes != null) {
            all = reader.with(all, "mesh-attitudes", attitudes);
        }
        return resolution == null ? all : reader.with(all, "mesh-resolution", inMeshUnit(all));
    }

    /** A bare resolution is in the mesh's unit. */
    private String inMeshUnit(Answers answers) {
        String meshUnit = answers.choice("mesh-unit");
        return resolution.strip().matches("[\\d.,eE+-]+") && !meshUnit.isEmpty()
                ? resolution.strip() + " " + meshUnit
                : resolution;
    }
}
