package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import pourwright.advice.BadAnswer;
import pourwright.facts.Answer;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;

/** The workshop's chamber, pump, hose, gauge and height: asked once, then only confirmed. */
public final class Kit {
    private static final String SECTION = "kit";

    private final Path file;
    private final Knowledge knowledge;

    /** @param shop the workshop's folder */
    public Kit(Path shop, Knowledge knowledge) {
        this.file = shop.resolve("kit.json");
        this.knowledge = knowledge;
    }

    /** What was remembered; nothing when there is no file or it cannot be used any more. */
    public Answers remembered() {
        if (!Files.isRegularFile(file)) {
            return Answers.NONE;
        }
        AnswersJson reader = new AnswersJson(knowledge);
        try {
            JsonNode tree = Json.read(Files.readString(file, StandardCharsets.UTF_8));
            return reader.read(tree);
        } catch (JsonProcessingException | BadAnswer e) {
            return Answers.NONE;
        } catch (IOException e) {
            return Answers.NONE;
        }
    }

    /** Remembers the kit answers of a plan; "don't know" is not worth remembering. */
    public void remember(Answers answers) throws IOException {
        Answers kit = Answers.NONE;
        for (Map.Entry<String, Answers.Given> e : answers.all().entrySet()) {
            boolean known = !(e.getValue().answer() instanceof Answer.DontKnow);
            if (known && belongs(e.getKey())) {
                kit = kit.with(e.getKey(), e.getValue().answer(), e.getValue().raw());
            }
        }
        if (!kit.all().isEmpty()) {
            WholeFile.write(file, Json.pretty(AnswersJson.write(kit)) + "\n");
        }
    }

    private boolean belongs(String id) {
        return knowledge.question(id).map(Question::section).orElse("").equals(SECTION)
                && !id.equals("target-pressure")
                && !id.equals("pressure-cure");
    }
}
