package pourwright.casebook;

import java.io.IOException;
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
    private static final int MOST_BYTES = 1_000_000;

    private final Path file;
    private final Knowledge knowledge;

    /** @param shop the workshop's folder */
    public Kit(Path shop, Knowledge knowledge) {
        this.file = shop.resolve("kit.json");
        this.knowledge = knowledge;
    }

    /**
     * What was remembered; nothing when there is no file.
     *
     * @throws IOException when the file is there and cannot be used
     */
    public Answers remembered() throws IOException {
        if (!Files.exists(file)) {
            return Answers.NONE;
        }
        try {
            return new AnswersJson(knowledge).read(Json.read(WholeFile.text(file, MOST_BYTES)));
        } catch (BadAnswer e) {
            throw new IOException(e);
        }
    }

    /** Moves a file that cannot be used out of the way of the next one. */
    public Path setAside() throws IOException {
        return WholeFile.setAside(file);
    }

    /** The file itself. */
    public Path file() {
        return file;
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
