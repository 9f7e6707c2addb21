package pourwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.casebook.ResultJson;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;

/** A word that can be talked through, or given its answers on the command line, in a file or as a saved case. */
abstract class JobCommand implements Callable<Integer> {
    final Program program;

    @Option(
            names = "--answers",
            paramLabel = "FILE",
            description = "JSON: one object, or one a line; - for standard input.")
    private Path answersFile;

    @Option(names = "--case", paramLabel = "FILE", description = "Read the answers of a saved case.")
    Path caseFile;

    @Option(names = "--json", description = "Print one JSON object per job.")
    boolean asJson;

    @Parameters(paramLabel = "id=value", description = "Answers already known.")
    private List<String> words = new ArrayList<>();

    @Mixin
    SharedOptions shared = new SharedOptions();

    JobCommand(Program program) {
        this.program = program;
    }

    @Override
    public final Integer call() {
        boolean talks = answersFile == null && caseFile == null && !asJson && !shared.noInput;
        Knowledge knowledge = knowledge(talks);
        AnswersJson reader = new AnswersJson(knowledge);
        try {
            Answers given = withOptions(Given.read(words, reader), reader);
            if (answersFile != null && caseFile != null) {
                throw new BadAnswer("answers", "Give either --answers or --case, not both.");
            }
            if (answersFile != null) {
                return new Batch(program, knowledge, asJson, this::show)
                        .run(answersFile, given)
                        .code();
            }
            if (caseFile != null) {
                CaseFile saved = CaseFile.read(caseFile, wordOfCase(caseFile), reader);
                return show(Given.over(given, saved.answers())).code();
            }
            return (talks ? talk(given) : show(given)).code();
        } catch (BadAnswer e) {
            if (asJson) {
                program.out().println(Json.write(ResultJson.error(e)));
            }
            return program.failed(e).code();
        }
    }

    /** Reads what the word knows; with the workshop's own where it talks. */
    abstract Knowledge knowledge(boolean talks);

    /** The answers, with those that options of this word stand for. */
    Answers withOptions(Answers given, AnswersJson reader) {
        return given;
    }

    /** The word a case must be of. */
    abstract String wordOfCase(Path file);

    /** Prints the result for one job. */
    abstract ExitCode show(Answers answers);

    /** Talks, with answers already given. */
    abstract ExitCode talk(Answers given);

    /** Prints lines to standard output. */
    final void print(List<String> lines) {
        lines.forEach(program.out()::println);
    }
}
