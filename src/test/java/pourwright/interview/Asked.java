package pourwright.interview;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import pourwright.facts.Answer;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.knowledge.Question;

/** The shipped questions, asked at a prompt, for the tests of this package. */
final class Asked {
    static final DiagnosticKnowledge K =
            KnowledgeReader.forDiagnosis(Path.of("knowledge"), KnowledgeReader.read(Path.of("knowledge")));
    static final AnswerReader READER = new AnswerReader(K.base());

    private Asked() {}

    static Question question(String id) {
        return K.base().question(id).or(() -> K.observation(id)).orElseThrow();
    }

    static AnswerReader.Outcome at(String question, String typed) {
        return READER.atPrompt(question(question), typed);
    }

    static Answer answer(String question, String typed) {
        AnswerReader.Outcome o = at(question, typed);
        assertThat(o).as(question + " > " + typed + " -> " + o).isInstanceOf(AnswerReader.Understood.class);
        return ((AnswerReader.Understood) o).answer();
    }

    static AnswerReader.Again again(String question, String typed) {
        AnswerReader.Outcome o = at(question, typed);
        assertThat(o).as(question + " > " + typed + " -> " + o).isInstanceOf(AnswerReader.Again.class);
        return (AnswerReader.Again) o;
    }

    /** Echo with plain spaces. */
    static String echo(Answer a) {
        if (a instanceof Answer.Quantity q) {
            return plain(q.echo());
        }
        if (a instanceof Answer.Ratio r) {
            return plain(r.echo());
        }
        if (a instanceof Answer.Choice c) {
            return c.id();
        }
        return a instanceof Answer.Several s ? String.join(", ", s.ids()) : "don't know";
    }

    static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
