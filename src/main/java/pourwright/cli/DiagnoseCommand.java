package pourwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.casebook.DiagnosisJson;
import pourwright.casebook.ResultJson;
import pourwright.console.DiagnosisPage;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.Diagnosis;
import pourwright.diagnosis.WordPicker;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Json;

/** Finds what went wrong with a part, or with many from a file. */
@Command(
        name = "diagnose",
        header = {
            "  pourwright diagnose                           # talk it through",
            "  pourwright diagnose --say \"tiny bubbles under the horns, degassed in the cup\"",
            "  pourwright diagnose material=clear-polyurethane symptom=bubbles level=rose",
            "  pourwright diagnose --answers part.json --json",
            "  pourwright diagnose --case foam.case.json     # a saved case"
        },
        description = "Find what went wrong with a part: causes, odds, the test, the repair, the change.",
        footer = "\"pourwright questions\" lists every id, for the part and for the job as done.")
final class DiagnoseCommand implements Callable<Integer> {
    private static final int MOST_TEXT = 2000;

    private final Program program;

    @Option(
            names = "--answers",
            paramLabel = "FILE",
            description = "Read JSON: one object, or one a line; - is standard input.")
    private Path answersFile;

    @Option(names = "--case", paramLabel = "FILE", description = "Read the answers of a saved case.")
    private Path caseFile;

    @Option(names = "--say", paramLabel = "TEXT", description = "What is seen, in your own words.")
    private String text;

    @Option(names = "--json", description = "Print one JSON object per part.")
    private boolean asJson;

    @Parameters(paramLabel = "id=value", description = "Answers already known.")
    private List<String> words = new ArrayList<>();

    @Mixin
    private SharedOptions shared = new SharedOptions();

    DiagnoseCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        boolean talks = answersFile == null && caseFile == null && !asJson && !shared.noInput;
        DiagnosticKnowledge knowledge = program.knowledgeForDiagnosis(shared, talks);
        Diagnoser diagnoser = new Diagnoser(knowledge);
        AnswersJson reader = new AnswersJson(knowledge.base());
        try {
            Answers given = Given.read(words, reader);
            Map<String, String> heard = Map.of();
            if (text != null) {
                WordPicker.Picked picked = picked(knowledge);
                heard = picked.words();
                given = Given.over(given, picked.answers());
            }
            if (answersFile != null && caseFile != null) {
                throw new BadAnswer("answers", "Give either --answers or --case, not both.");
            }
            Map<String, String> read = heard;
            if (answersFile != null) {
                return new Batch(program, knowledge.base(), asJson, part -> show(diagnoser, part, read))
                        .run(answersFile, given)
                        .code();
            }
            if (caseFile != null) {
                String word = CaseFile.wordOf(caseFile);
                Answers all =
                        Given.over(given, CaseFile.read(caseFile, word, reader).answers());
                return show(diagnoser, all, read).code();
            }
            if (!talks) {
                return show(diagnoser, given, read).code();
            }
            return Talk.diagnose(program, shared, () -> knowledge, given).code();
        } catch (BadAnswer e) {
            if (asJson) {
                program.out().println(Json.write(ResultJson.error(e)));
            }
            return program.failed(e).code();
        }
    }

    private WordPicker.Picked picked(DiagnosticKnowledge knowledge) {
        if (text.length() > MOST_TEXT) {
            throw new BadAnswer("say", "Say it in fewer than " + MOST_TEXT + " characters.");
        }
        WordPicker.Picked picked = new WordPicker(knowledge).pick(text);
        if (picked.answers().all().isEmpty()) {
            throw new BadAnswer(
                    "say",
                    "None of the words in --say is one I know. Say what is seen and where, for example \"tiny bubbles under"
                            + " the horns\".");
        }
        return picked;
    }

    private ExitCode show(Diagnoser diagnoser, Answers answers, Map<String, String> heard) {
        if (answers.all().keySet().stream().noneMatch(id -> answers.get(id).isPresent())) {
            throw new BadAnswer(
                    "symptom",
                    "Nothing can be ranked without an answer. Say at least what is wrong, for example symptom=bubbles.");
        }
        Diagnosis d = diagnoser.diagnose(answers);
        if (asJson) {
            program.out().println(Json.write(new DiagnosisJson(diagnoser).of(d, heard)));
        } else {
            DiagnosisPage page = new DiagnosisPage(d, diagnoser, Talk.width(program), shared.plain);
            heard.forEach((id, said) -> program.err()
                    .println(
                            "Read " + id + " = " + String.join(", ", answers.choices(id)) + " from \"" + said + "\"."));
            List<String> lines = new ArrayList<>(page.first());
            lines.add("");
            lines.addAll(page.cautions());
            lines.forEach(program.out()::println);
        }
        return ExitCode.ADVICE;
    }
}
