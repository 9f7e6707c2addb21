package pourwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.Advisor;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.casebook.WholeFile;
import pourwright.console.Recorded;
import pourwright.knowledge.Knowledge;

/** Runs saved cases again and says what changed. */
@Command(
        name = "replay",
        description = "Run saved cases again: verdict, findings and transcript must be as recorded.",
        customSynopsis = {
            "pourwright replay ear.case.json ...",
            "       pourwright replay --record ear.case.json ...   prints the differences and writes them down"
        })
final class ReplayCommand implements Callable<Integer> {
    private final Program program;

    @Mixin
    private SharedOptions shared = new SharedOptions();

    @Option(
            names = "--record",
            description = "Write what is found now as the new record, after printing the differences.")
    private boolean record;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Case files.")
    private List<Path> files = new ArrayList<>();

    ReplayCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() throws IOException {
        Knowledge knowledge = program.knowledge(shared);
        AnswersJson reader = new AnswersJson(knowledge);
        ExitCode worst = ExitCode.ADVICE;
        int same = 0;
        for (Path file : files) {
            try {
                List<String> differences = one(file, knowledge, reader);
                if (differences.isEmpty()) {
                    same++;
                } else {
                    differences.forEach(d -> program.out().println(file + ": " + d));
                    worst = worst.worse(ExitCode.STOP);
                }
            } catch (BadAnswer e) {
                program.out().println(file + ": " + e.getMessage());
                worst = worst.worse(ExitCode.BAD_INPUT);
            }
        }
        program.out().println(same + " of " + files.size() + " cases as recorded.");
        return record && worst == ExitCode.STOP ? ExitCode.ADVICE.code() : worst.code();
    }

    private List<String> one(Path file, Knowledge knowledge, AnswersJson reader) throws IOException {
        CaseFile expected = CaseFile.read(file, reader);
        Consultation c = Advisor.consult(expected.answers(), knowledge);
        CaseFile now = expected.expecting(c);
        String transcript = Recorded.transcript(expected.answers(), knowledge);
        Path told = file.resolveSibling(file.getFileName().toString().replace(".case.json", ".txt"));
        List<String> differences = new ArrayList<>(differences(expected, now));
        if (Files.isRegularFile(told) || record) {
            String before = Files.isRegularFile(told) ? Files.readString(told, StandardCharsets.UTF_8) : "";
            differences.addAll(lineDifferences(before, transcript));
        }
        if (record) {
            WholeFile.write(file, now.text());
            WholeFile.write(told, transcript);
        }
        return differences;
    }

    private static List<String> differences(CaseFile expected, CaseFile now) {
        List<String> out = new ArrayList<>();
        if (!expected.verdict().equals(now.verdict())) {
            out.add("the verdict was " + expected.verdict() + " and is " + now.verdict());
        }
        now.findings().stream().filter(f -> !expected.findings().contains(f)).forEach(f -> out.add("new: " + f));
        expected.findings().stream().filter(f -> !now.findings().contains(f)).forEach(f -> out.add("gone: " + f));
        return out;
    }

    /** The first line that differs, and how many do. */
    private static List<String> lineDifferences(String before, String after) {
        if (before.equals(after)) {
            return List.of();
        }
        String[] a = before.split("\n", -1);
        String[] b = after.split("\n", -1);
        int i = 0;
        while (i < Math.min(a.length, b.length) && a[i].equals(b[i])) {
            i++;
        }
        return List.of("the transcript differs from line " + (i + 1) + " on: was \"" + (i < a.length ? a[i] : "")
                + "\", is \"" + (i < b.length ? b[i] : "") + "\"");
    }
}
