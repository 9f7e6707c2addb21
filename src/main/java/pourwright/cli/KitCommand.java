package pourwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pourwright.advice.BadAnswer;
import pourwright.advice.Verdict;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.KitJson;
import pourwright.console.KitJob;
import pourwright.console.KitLog;
import pourwright.console.KitPage;
import pourwright.facts.Answers;
import pourwright.kit.KitAdvice;
import pourwright.kit.KitAdvisor;
import pourwright.kit.TestDate;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** Tests a vacuum kit from readings of its gauge, and finds the smallest pump for the materials of a workshop. */
@Command(
        name = "kit",
        header = {
            "  pourwright kit                                # talk it through",
            "  pourwright kit --csv monday.csv chamber-volume=\"20 L\" pump-speed=\"3 cfm\"",
            "  pourwright kit pump-oil=milky gauge-kind=absolute --json",
            "  pourwright kit --for tin-silicone,clear-polyurethane chamber-volume=\"20 L\""
        },
        description = "Test a vacuum kit: find what is wrong with it, and size a pump.",
        footer = "\"pourwright questions\" lists every id, such as pump-down-readings.")
final class KitCommand extends JobCommand {
    private Knowledge knowledge;
    private boolean talking;

    @Option(names = "--csv", paramLabel = "FILE", description = "Readings: time, pressure, and fall or rise.")
    private Path csv;

    @Option(names = "--for", paramLabel = "MATERIAL,...", description = "Find the smallest pump for these.")
    private String uses;

    @Option(names = "--keep", description = "Keep the result in the workshop's folder.")
    private boolean keep;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Day of the test (today unless said).")
    private String date;

    KitCommand(Program program) {
        super(program);
    }

    @Override
    Knowledge knowledge(boolean talks) {
        talking = talks;
        Knowledge base = talks ? program.knowledgeOfWorkshop(shared) : program.knowledge(shared);
        knowledge = KnowledgeReader.withObservations(program.knowledgeFolder(shared), base);
        return knowledge;
    }

    @Override
    Answers withOptions(Answers given, AnswersJson reader) {
        if (date != null && TestDate.day(date).isEmpty()) {
            throw new BadAnswer("date", "The date is written as year, month and day, such as 2026-03-01.");
        }
        Answers all = uses == null ? given : reader.with(given, "uses", uses);
        if (csv != null) {
            for (Map.Entry<String, String> e : ReadingsCsv.read(csv).entrySet()) {
                all = reader.with(all, e.getKey(), e.getValue());
            }
        }
        return all;
    }

    @Override
    String wordOfCase(Path file) {
        return "kit";
    }

    /** A history is read only where the folder was named, or something is to be kept there. */
    private KitLog log() {
        boolean named = shared.shop != null;
        return named || keep || talking
                ? new KitKeeping(
                        program.shop(shared.shop), date == null ? program.today() : date, keep || talking, talking)
                : KitLog.NONE;
    }

    @Override
    ExitCode show(Answers answers) {
        KitAdvice advice = KitAdvisor.advise(answers, knowledge);
        KitLog.Past past = log().keep(advice);
        if (asJson) {
            program.out().println(Json.write(new KitJson(knowledge).of(advice, past.drift())));
        } else {
            KitPage page = new KitPage(advice, past, knowledge, Talk.width(program), shared.plain);
            List<String> lines = new ArrayList<>(page.first());
            if (!advice.fallReadings().isEmpty() || !advice.riseReadings().isEmpty()) {
                lines.add("");
                lines.addAll(page.readings());
            }
            print(lines);
        }
        return advice.verdict() == Verdict.STOP ? ExitCode.STOP : ExitCode.ADVICE;
    }

    @Override
    ExitCode talk(Answers given) {
        return Talk.job(program, shared, new KitJob(knowledge, log()), given);
    }
}
