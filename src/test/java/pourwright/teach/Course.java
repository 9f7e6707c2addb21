package pourwright.teach;

import java.nio.file.Path;
import java.util.List;
import pourwright.casebook.CaseLibrary;
import pourwright.diagnosis.Diagnoser;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Lessons;

/** The course that is shipped, with the cases that are. */
final class Course {
    static final DiagnosticKnowledge SEEN =
            KnowledgeReader.forDiagnosis(Path.of("knowledge"), KnowledgeReader.read(Path.of("knowledge")));
    static final Lessons LESSONS = KnowledgeReader.lessons(Path.of("knowledge"));
    static final Diagnoser DIAGNOSER = new Diagnoser(SEEN);
    static final List<Told> CASES = CaseLibrary.read(Path.of("transcripts-of-cases"), SEEN.base(), false);
    static final Exercises EXERCISES = new Exercises(LESSONS, CASES, DIAGNOSER);

    private Course() {}
}
