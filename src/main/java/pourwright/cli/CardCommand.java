package pourwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.console.LessonPage;
import pourwright.console.Wrap;
import pourwright.diagnosis.Diagnoser;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Lessons;
import pourwright.sheet.Card;
import pourwright.sheet.RuleFamily;

/** Writes a card for the wall. */
@Command(
        name = "card",
        header = {
            "  pourwright card --rules degas degas.html      # the rules about degassing, to print",
            "  pourwright card --rules @cup cup.txt          # a topic of the rules",
            "  pourwright card --lesson pot-life pot.html    # a lesson of the course",
            "  pourwright card                               # which families of rules there are",
            "  pourwright plan --case ear.case.json --card ear.html  # the card of a job"
        },
        description = "Write a card for the wall. Large type, one page where it fits.",
        footer = "In a conversation, after a plan: card FILE TITLE.")
final class CardCommand implements Callable<Integer> {
    private static final int WIDTH = 80;

    private final Program program;

    @Option(names = "--rules", paramLabel = "FAMILY", description = "A folder of rules, or a topic as @cup.")
    private String family;

    @Option(names = "--lesson", paramLabel = "ID", description = "A lesson of the course, by id or number.")
    private String lesson;

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "Ends in .html or .txt.")
    private String file;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    CardCommand(Program program) {
        this.program = program;
    }

    private Card ofLesson(String version) {
        Lessons course = KnowledgeReader.lessons(program.knowledgeFolder(shared));
        Diagnoser diagnoser = new Diagnoser(program.knowledgeForDiagnosis(shared, false));
        return new LessonPage(course, diagnoser, WIDTH).card(LearnCommand.find(course, lesson), version);
    }

    @Override
    public Integer call() {
        if (family == null && lesson == null && file == null) {
            RuleFamily.names().forEach((name, holds) -> program.out().println(name + ": " + holds));
            return ExitCode.ADVICE.code();
        }
        if (family == null == (lesson == null) || file == null) {
            throw new BadAnswer(
                    "card",
                    "A card wants a family of rules or a lesson, and a file: \"pourwright card --rules degas degas.html\". That of a"
                            + " job comes from \"pourwright plan --card FILE\".");
        }
        Path to = CardFile.file(file);
        Knowledge knowledge =
                KnowledgeReader.withObservations(program.knowledgeFolder(shared), program.knowledge(shared));
        String version = Versions.line(knowledge, program.knowledgeFolder(shared));
        Card card = lesson == null ? RuleFamily.of(family, knowledge, version) : ofLesson(version);
        List<String> said = Wrap.text(CardFile.write(card, to), Talk.width(program), "", "  ");
        said.forEach(program.out()::println);
        return ExitCode.ADVICE.code();
    }
}
