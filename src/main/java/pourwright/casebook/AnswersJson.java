package pourwright.casebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pourwright.advice.BadAnswer;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.interview.AnswerReader;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/** Answers as a flat JSON object, and as {@code id=value} words. */
public final class AnswersJson {
    private static final int MOST_CHOICES = 20;

    private final Knowledge knowledge;
    private final AnswerReader reader;

    public AnswersJson(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.reader = new AnswerReader(knowledge);
    }

    /**
     * Reads one object of answers.
     *
     * @throws BadAnswer naming the first answer that cannot be read
     */
    public Answers read(JsonNode object) {
        if (object == null || !object.isObject()) {
            throw new BadAnswer(
                    "answers", "Answers are one JSON object, for example {\"material\": \"tin-silicone\"}.");
        }
        Answers answers = Answers.NONE;
        for (Map.Entry<String, JsonNode> e : object.properties()) {
            answers = with(answers, e.getKey(), value(e.getKey(), e.getValue()));
        }
        return answers;
    }

    /**
     * Adds one answer given as a program gives it.
     *
     * @throws BadAnswer when there is no such question or the answer cannot be read
     */
    public Answers with(Answers answers, String id, Object raw) {
        Question q = knowledge
                .question(id)
                .orElseThrow(() -> new BadAnswer(
                        clean(id), "There is no question '" + clean(id) + "'. 'pourwright questions' lists them all."));
        AnswerReader.Outcome outcome = reader.fromProgram(q, raw);
        if (outcome instanceof AnswerReader.Understood u) {
            return answers.with(id, u.answer(), u.answer() instanceof Answer.Several s ? joined(s) : raw);
        }
        throw new BadAnswer(id, id + ": " + ((AnswerReader.Again) outcome).sentence());
    }

    private static String joined(Answer.Several several) {
        return String.join(", ", several.ids());
    }

    /** The answers as they were given, in the order they were given. */
    public static ObjectNode write(Answers answers) {
        ObjectNode out = Json.object();
        answers.all().forEach((id, g) -> {
            if (g.answer() instanceof Answer.DontKnow || g.raw() == null) {
                out.putNull(id);
            } else if (g.answer() instanceof Answer.Several several) {
                ArrayNode ids = out.putArray(id);
                several.ids().forEach(ids::add);
            } else if (g.raw() instanceof BigDecimal d) {
                out.put(id, d);
            } else if (g.raw() instanceof Boolean b) {
                out.put(id, b);
            } else {
                out.put(id, g.raw().toString());
            }
        });
        return out;
    }

    private static Object value(String id, JsonNode v) {
        if (v.isNull()) {
            return null;
        }
        if (v.isTextual()) {
            return v.textValue();
        }
        if (v.isNumber()) {
            return v.decimalValue();
        }
        if (v.isBoolean()) {
            return v.booleanValue();
        }
        if (v.isArray() && v.size() > 0 && v.size() <= MOST_CHOICES) {
            List<String> texts = new ArrayList<>();
            v.forEach(c -> texts.add(c.isTextual() ? c.textValue() : ""));
            if (texts.stream().noneMatch(String::isBlank)) {
                return List.copyOf(texts);
            }
        }
        throw new BadAnswer(
                clean(id),
                "'" + clean(id)
                        + "' takes a text, a number, or null for don't know, not a list or an object. For example"
                        + " {\"material\": \"tin-silicone\"}.");
    }

    private static String clean(String id) {
        String plain = id.replaceAll("\\p{Cntrl}", " ").strip();
        return plain.length() <= 40 ? plain : plain.substring(0, 40) + "…";
    }
}
