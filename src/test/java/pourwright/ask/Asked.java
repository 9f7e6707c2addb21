package pourwright.ask;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pourwright.advice.Advisor;
import pourwright.advice.Consultation;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.CaseFile;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;

/** Plans to ask about: the recorded ones, and one that is typed here. */
final class Asked {
    static final Knowledge KNOWLEDGE = KnowledgeReader.read(Path.of("knowledge"));
    static final AnswersJson READER = new AnswersJson(KNOWLEDGE);

    private Asked() {}

    static Consultation plan(String... pairs) {
        Answers answers = Answers.NONE;
        for (String pair : pairs) {
            String[] p = pair.split("=", 2);
            answers = READER.with(answers, p[0], p[1]);
        }
        return Advisor.consult(answers, KNOWLEDGE);
    }

    /** The plan with answers as a person types them; null stands for "don't know". */
    static Consultation with(Consultation before, Map<String, String> typed) {
        Answers answers = before.answers();
        for (Map.Entry<String, String> e : typed.entrySet()) {
            answers = READER.with(answers, e.getKey(), e.getValue());
        }
        return Advisor.consult(answers, KNOWLEDGE);
    }

    /** The plans among the recorded cases. */
    static List<Consultation> recorded() {
        try (Stream<Path> files = Files.list(Path.of("transcripts-of-cases"))) {
            return files.filter(f -> f.toString().endsWith(".case.json"))
                    .filter(f -> CaseFile.wordOf(f).equals("plan"))
                    .sorted()
                    .map(f -> Advisor.consult(CaseFile.read(f, "plan", READER).answers(), KNOWLEDGE))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
