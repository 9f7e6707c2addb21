package pourwright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** What the benchmarks advise on: every shipped case, so that no single lucky job decides the number. */
record Jobs(Knowledge knowledge, List<Answers> answers) {
    private static final Path KNOWLEDGE = Path.of("knowledge");
    private static final Path CASES = Path.of("transcripts-of-cases");

    /** Reads the knowledge and all shipped cases; run from the top of the project. */
    static Jobs shipped() {
        Knowledge knowledge = KnowledgeReader.read(KNOWLEDGE);
        AnswersJson reader = new AnswersJson(knowledge);
        try (Stream<Path> files = Files.list(CASES)) {
            List<Answers> all = files.filter(f -> f.toString().endsWith(".case.json"))
                    .filter(f -> CaseFile.wordOf(f).equals("plan"))
                    .sorted()
                    .map(f -> CaseFile.read(f, "plan", reader).answers())
                    .toList();
            if (all.isEmpty()) {
                throw new IllegalStateException("there are no cases in " + CASES.toAbsolutePath());
            }
            return new Jobs(knowledge, all);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The n-th job, round and round. */
    Answers job(int n) {
        return answers.get(Math.floorMod(n, answers.size()));
    }
}
