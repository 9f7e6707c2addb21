package pourwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pourwright.advice.BadAnswer;
import pourwright.casebook.Accuracy;
import pourwright.casebook.CaseChange;
import pourwright.casebook.CaseFile;
import pourwright.casebook.WholeFile;
import pourwright.console.RulePage;
import pourwright.rulebook.RuleBook;

/** Runs saved cases again and says what changed. */
@Command(
        name = "replay",
        header = {
            "  pourwright replay ear.case.json horse.case.json",
            "  pourwright replay --score parts/*.case.json   # how often causes are found",
            "  pourwright replay --record ear.case.json      # write the new record"
        },
        description = "Run saved cases again: verdict, findings and transcript must be as recorded.")
final class ReplayCommand implements Callable<Integer> {
    private final Program program;

    @Option(names = "--record", description = "Print the differences and write the new record.")
    private boolean record;

    @Option(names = "--score", description = "Say how often causes are found, by folder.")
    private boolean score;

    @Option(names = "--without", paramLabel = "RULE", description = "Leave a rule out, to see what rests on it.")
    private List<String> without = new ArrayList<>();

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Case files.")
    private List<Path> files = new ArrayList<>();

    @Mixin
    private SharedOptions shared = new SharedOptions();

    ReplayCommand(Program program) {
        this.program = program;
    }

    @Override
    public Integer call() throws IOException {
        without.stream().filter(id -> RuleBook.card(id).isEmpty()).findFirst().ifPresent(id -> {
            throw new BadAnswer("without", RulePage.unknown(id));
        });
        if (!without.isEmpty() && record) {
            throw new BadAnswer(
                    "without", "What is found without a rule is not recorded: leave out --record or --without.");
        }
        Replayer replayer =
                new Replayer(program, shared, program.knowledge(shared).without(Set.copyOf(without)));
        if (score) {
            return scored(replayer).code();
        }
        ExitCode worst = ExitCode.ADVICE;
        int same = 0;
        for (Path file : files) {
            try {
                List<String> differences = one(file, replayer);
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

    /** Each folder is a set of its own: what the rules were written from must not lend its score to the rest. */
    private ExitCode scored(Replayer replayer) throws IOException {
        Map<Path, Accuracy> sets = new LinkedHashMap<>();
        for (Path file : files) {
            if (CaseFile.wordOf(file).equals("diagnose")) {
                Path folder = file.toAbsolutePath().getParent();
                sets.computeIfAbsent(folder, f -> new Accuracy(replayer.diagnoser()))
                        .add(file.getFileName().toString().replace(".case.json", ""), replayer.diagnosisCase(file));
            }
        }
        for (Map.Entry<Path, Accuracy> set : sets.entrySet()) {
            set.getValue().report(set.getKey().getFileName().toString()).forEach(program.out()::println);
            Path first = set.getKey().resolve("first-score.txt");
            if (Files.isRegularFile(first)) {
                program.out()
                        .println("  first score ever obtained: "
                                + Files.readString(first, StandardCharsets.UTF_8)
                                        .strip());
            }
        }
        if (sets.isEmpty()) {
            program.out().println("None of these files is a case of a diagnosis.");
        }
        return ExitCode.ADVICE;
    }

    private List<String> one(Path file, Replayer replayer) throws IOException {
        Replayer.Replayed r = replayer.replay(file);
        Path told = file.resolveSibling(file.getFileName().toString().replace(".case.json", ".txt"));
        List<String> differences =
                new ArrayList<>(CaseChange.between(r.expected(), r.now(), r.speaks(), Set.copyOf(without))
                        .lines());
        if (!without.isEmpty()) {
            return differences;
        }
        if (Files.isRegularFile(told) || record) {
            String before = Files.isRegularFile(told) ? Files.readString(told, StandardCharsets.UTF_8) : "";
            differences.addAll(lineDifferences(before, r.transcript().get()));
        }
        if (record) {
            WholeFile.write(file, r.now().text());
            WholeFile.write(told, r.transcript().get());
        }
        return differences;
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
