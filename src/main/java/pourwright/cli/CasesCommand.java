package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pourwright.advice.BadAnswer;
import pourwright.alike.Picture;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.casebook.SavedCases;
import pourwright.console.AlikePage;
import pourwright.console.Clean;
import pourwright.console.Job;
import pourwright.console.Wrap;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;

/** The saved cases, and those that come nearest to one. */
@Command(
        name = "cases",
        header = {
            "  pourwright cases                              # what you have saved, and how it came out",
            "  pourwright cases --like horse-ear             # the cases nearest to one of yours",
            "  pourwright cases --like job.case.json --json"
        },
        description = "List saved cases: by name, or those nearest to one by what decided about it.",
        footer = "In a conversation: cases. \"pourwright outcome NAME good\" tells how one came out.")
final class CasesCommand implements Callable<Integer> {
    private final Program program;

    @Option(names = "--like", paramLabel = "CASE", description = "A case of yours, or a case file.")
    private String like;

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean asJson;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    CasesCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() {
        Path shop = program.shop(shared.shop);
        SavedCases cases = new SavedCases(shop, program.casesFolder());
        Knowledge knowledge = program.knowledgeForDiagnosis(shared, true).base();
        if (like == null) {
            list(cases.own(knowledge));
        } else {
            near(cases);
        }
        return ExitCode.ADVICE.code();
    }

    private void list(List<SavedCases.Saved> all) {
        if (asJson) {
            ObjectNode out = Json.object();
            ArrayNode array = out.putArray("cases");
            all.forEach(s -> {
                ObjectNode one = array.addObject();
                one.put("name", s.name());
                one.put("word", s.word());
                s.read().ifPresent(c -> {
                    one.put("verdict", c.verdict());
                    c.causes().stream().findFirst().ifPresent(x -> one.put("cause", x));
                    one.put("outcome", c.outcome());
                });
                if (s.read().isEmpty()) {
                    one.put("error", s.trouble());
                }
            });
            program.out().println(Json.write(out));
            return;
        }
        if (all.isEmpty()) {
            say("No case is saved yet. In a conversation, \"save NAME\" keeps one once its result is shown.");
        }
        for (SavedCases.Saved s : all) {
            say(s.read()
                    .map(c -> s.name() + ": " + s.word() + ", "
                            + (c.verdict().isEmpty()
                                    ? c.causes().stream()
                                            .findFirst()
                                            .orElse("no cause")
                                            .replace('-', ' ')
                                    : c.verdict())
                            + "; " + (c.outcome().isEmpty() ? "outcome not said" : Clean.text(c.outcome())) + ".")
                    .orElse(s.name() + " cannot be read. " + Clean.text(s.trouble())));
        }
    }

    private void near(SavedCases cases) {
        Path file = Files.isRegularFile(Path.of(like)) ? Path.of(like) : cases.named(like);
        String word = CaseFile.wordOf(file);
        Job job = Talk.jobOf(word, program, shared);
        CaseFile wanted = CaseFile.read(file, word, new AnswersJson(job.knowledge()));
        Picture here = job.picture(wanted.answers())
                .orElseThrow(() -> new BadAnswer("like", file + " cannot be compared with others."));
        List<SavedCases.Saved> others = cases.of(word, job.knowledge()).stream()
                .filter(s -> !s.file().getFileName().equals(file.getFileName()))
                .toList();
        AlikePage page = new AlikePage(job.knowledge(), Talk.width(program));
        if (!asJson) {
            page.lines(here, others, job::picture).forEach(program.out()::println);
            return;
        }
        ObjectNode out = Json.object();
        ArrayNode array = out.putArray("cases");
        for (AlikePage.Near n : page.nearest(here, others, job::picture)) {
            ObjectNode one = array.addObject();
            one.put("name", n.saved().name());
            one.put("own", n.saved().own());
            one.put("distance", n.likeness().distance());
            n.likeness().same().forEach(one.withArray("same")::add);
            n.likeness().differs().forEach(one.withArray("differs")::add);
            one.put("advice", n.picture().gist());
            one.put("outcome", n.saved().read().map(CaseFile::outcome).orElse(""));
        }
        program.out().println(Json.write(out));
    }

    private void say(String text) {
        Wrap.text(text, Talk.width(program), "", "  ").forEach(program.out()::println);
    }
}
