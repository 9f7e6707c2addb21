package pourwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import pourwright.advice.Advisor;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.console.DiagnoseJob;
import pourwright.console.KitJob;
import pourwright.console.KitLog;
import pourwright.console.PlanJob;
import pourwright.console.Recorded;
import pourwright.console.VentsJob;
import pourwright.diagnosis.Diagnoser;
import pourwright.diagnosis.Diagnosis;
import pourwright.kit.KitAdvisor;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** Runs a saved case again, whatever its word. What a diagnosis knows is read only when a case needs it. */
final class Replayer {
    private final Program program;
    private final SharedOptions shared;
    private final Knowledge knowledge;
    private Diagnoser diagnoser;

    Replayer(Program program, SharedOptions shared) {
        this(program, shared, program.knowledge(shared));
    }

    /** @param knowledge what to judge by */
    Replayer(Program program, SharedOptions shared, Knowledge knowledge) {
        this.program = program;
        this.shared = shared;
        this.knowledge = knowledge;
    }

    /**
     * A case and what it gives now.
     *
     * @param expected as recorded
     * @param now as found
     * @param transcript the conversation as it would be now; told only when it is asked for
     * @param speaks for each cause of a diagnosis the rules that speak about it now
     */
    record Replayed(CaseFile expected, CaseFile now, Supplier<String> transcript, Map<String, List<String>> speaks) {
        Replayed(CaseFile expected, CaseFile now, Supplier<String> transcript) {
            this(expected, now, transcript, Map.of());
        }
    }

    /**
     * Reads a case as {@link #replay} would, and judges nothing.
     *
     * @throws pourwright.advice.BadAnswer when it cannot be read
     */
    void read(Path file) {
        String word = CaseFile.wordOf(file);
        Knowledge by = switch (word) {
            case "diagnose" -> diagnoser().knowledge().base();
            case "kit" -> KnowledgeReader.withObservations(program.knowledgeFolder(shared), knowledge);
            default -> knowledge;
        };
        CaseFile.read(file, word, new AnswersJson(by));
    }

    /** @throws pourwright.advice.BadAnswer when the case cannot be read */
    Replayed replay(Path file) {
        String word = CaseFile.wordOf(file);
        if (word.equals("diagnose")) {
            Diagnoser d = diagnoser();
            CaseFile expected =
                    CaseFile.read(file, word, new AnswersJson(d.knowledge().base()));
            Diagnosis found = d.diagnose(expected.answers());
            Map<String, List<String>> speaks = new TreeMap<>();
            found.ranked()
                    .forEach(r -> speaks.put(
                            r.cause().id(),
                            r.evidence().stream()
                                    .map(e -> e.conclusion().rule().id())
                                    .distinct()
                                    .toList()));
            return new Replayed(
                    expected,
                    expected.expecting(found),
                    () -> Recorded.transcript(expected.answers(), new DiagnoseJob(d)),
                    speaks);
        }
        if (word.equals("kit")) {
            Knowledge seen = KnowledgeReader.withObservations(program.knowledgeFolder(shared), knowledge);
            CaseFile expected = CaseFile.read(file, word, new AnswersJson(seen));
            return new Replayed(
                    expected,
                    expected.expecting(KitAdvisor.advise(expected.answers(), seen)),
                    () -> Recorded.transcript(expected.answers(), new KitJob(seen, KitLog.NONE)));
        }
        CaseFile expected = CaseFile.read(file, word, new AnswersJson(knowledge));
        if (word.equals("vents")) {
            VentsJob job = new VentsJob(knowledge, MeshFiles.besideCase(file), advice -> {});
            return new Replayed(
                    expected,
                    expected.expecting(job.advise(expected.answers())),
                    () -> Recorded.transcript(expected.answers(), job));
        }
        return new Replayed(
                expected,
                expected.expecting(Advisor.consult(expected.answers(), knowledge)),
                () -> Recorded.transcript(expected.answers(), new PlanJob(knowledge)));
    }

    /** @throws pourwright.advice.BadAnswer when the case cannot be read */
    CaseFile diagnosisCase(Path file) {
        return CaseFile.read(
                file, "diagnose", new AnswersJson(diagnoser().knowledge().base()));
    }

    Diagnoser diagnoser() {
        if (diagnoser == null) {
            diagnoser = new Diagnoser(KnowledgeReader.forDiagnosis(program.knowledgeFolder(shared), knowledge));
        }
        return diagnoser;
    }
}
