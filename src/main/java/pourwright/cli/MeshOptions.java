package pourwright.cli;

import picocli.CommandLine.Option;
import pourwright.casebook.AnswersJson;
import pourwright.facts.Answers;

/** Options about a mesh. Each stands for an answer, so that a case or a file of answers can hold the same. */
class MeshOptions {
    @Option(names = "--mesh", paramLabel = "FILE", description = "The shape: an STL, OBJ or PLY file.")
    private String file;

    @Option(names = "--unit", paramLabel = "UNIT", description = "One unit of that file: mm, cm, m or inch.")
    private String unit;

    @Option(names = "--around", description = "The mesh is a master; rubber is poured around it.")
    private boolean around;

    /** The answers, with what the options say laid over them. */
    Answers over(Answers answers, AnswersJson reader) {
        Answers all = answers;
        if (file != null) {
            all = reader.with(all, "mesh-file", file);
        }
        if (unit != null) {
            all = reader.with(all, "mesh-unit", unit);
        }
        if (around) {
            return reader.with(all, "mesh-is", "around");
        }
        boolean told = all.has("mesh-is") || all.has("job");
        return file == null || told ? all : reader.with(all, "mesh-is", "cavity");
    }
}
