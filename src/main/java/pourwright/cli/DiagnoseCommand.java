package pourwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.casebook.DiagnosisJson;
import pourwright.console.Clean;
import pourwright.console.Conversation;
import pourwright.console.DiagnosisPage;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.Diagnosis;
import pourwright.diagnosis.WordPicker;
import pourwright.facts.Answers;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;

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
final class DiagnoseCommand extends JobCommand {
    private static final int MOST_TEXT = 2000;

    @Option(names = "--say", paramLabel = "TEXT", description = "What is seen, in your own words.")
    private String text;

    @Option(names = "--why-not", paramLabel = "CAUSE", description = "What would put this cause first.")
    private List<String> whyNot = new ArrayList<>();

    private DiagnosticKnowledge knowledge;
    private Diagnoser diagnoser;
    private WordPicker.Picked heard = WordPicker.Picked.NOTHING;

    DiagnoseCommand(Program program) {
        super(program);
    }

    @Override
    Knowledge knowledge(boolean talks) {
        knowledge = program.knowledgeForDiagnosis(shared, talks);
        diagnoser = new Diagnoser(knowledge);
        return knowledge.base();
    }

    @Override
    Answers withOptions(Answers given, AnswersJson reader) {
        if (text == null) {
            return given;
        }
        heard = picked();
        return Given.over(given, heard.answers());
    }

    private WordPicker.Picked picked() {
        if (text.length() > MOST_TEXT) {
            throw new BadAnswer("say", "Say it in fewer than " + MOST_TEXT + " characters.");
        }
        WordPicker.Picked picked = new WordPicker(knowledge).pick(text);
        if (picked.isEmpty()) {
            throw new BadAnswer(
                    "say",
                    "None of the words in --say is one I know. Say what is seen and where, for example \"tiny bubbles under"
                            + " the horns\".");
        }
        return picked;
    }

    /** A case of a plan can be diagnosed too: its answers are the job as it was done. */
    @Override
    String wordOfCase(Path file) {
        return CaseFile.wordOf(file);
    }

    @Override
    ExitCode show(Answers answers) {
        if (answers.all().keySet().stream().noneMatch(id -> answers.get(id).isPresent())) {
            throw new BadAnswer(
                    "symptom",
                    "Nothing can be ranked without an answer. Say at least what is wrong, for example symptom=bubbles.");
        }
        Diagnosis d = diagnoser.diagnose(answers);
        if (asJson) {
            ObjectNode out = new DiagnosisJson(diagnoser).of(d, heard.words(), heard.leftOut());
            for (String typed : whyNot) {
                String cause = DiagnosisPage.causeCalled(typed, knowledge)
                        .orElseThrow(() -> new BadAnswer(
                                "why-not",
                                "No cause is called \"" + Clean.quoted(typed) + "\". For example --why-not warp."));
                DiagnosisJson.whyNot(out, diagnoser.whyNot(answers, cause));
            }
            program.out().println(Json.write(out));
        } else {
            DiagnosisPage page = new DiagnosisPage(d, diagnoser, Talk.width(program), shared.plain);
            readBack(answers, program.err());
            List<String> lines = new ArrayList<>(page.first());
            lines.add("");
            lines.addAll(page.cautions());
            whyNot.forEach(typed -> {
                lines.add("");
                lines.addAll(page.whyNot(typed));
            });
            print(lines);
        }
        return ExitCode.ADVICE;
    }

    @Override
    ExitCode talk(Answers given) {
        if (!whyNot.isEmpty()) {
            // Whoever asks for this wants it at once, and no conversation.
            return show(given);
        }
        // In a conversation everything that is said stands in one place.
        readBack(given, program.out());
        return Talk.diagnose(program, shared, () -> knowledge, given, heard.family());
    }

    /** What the line of text was read as, and what of it was not understood. */
    private void readBack(Answers answers, PrintStream to) {
        heard.words()
                .forEach((id, said) -> to.println(
                        "Read " + id + " = " + String.join(", ", answers.choices(id)) + " from \"" + said + "\"."));
        if (!heard.family().isEmpty()) {
            to.println(
                    "Read \"" + heard.familyWord() + "\" as a family of liquids. material=ID says which one of them.");
        }
        if (!heard.leftOut().isEmpty()) {
            to.println(Conversation.notUnderstood(heard.leftOut()));
        }
    }
}
