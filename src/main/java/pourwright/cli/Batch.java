package pourwright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pourwright.advice.BadAnswer;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.ResultJson;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;

/** Many jobs from one file: one JSON value, or one a line. A bad line is answered with its error and the rest go on. */
final class Batch {
    private static final int MOST_BYTES = 64_000_000;

    private final Program program;
    private final AnswersJson reader;
    private final boolean asJson;
    private final Function<Answers, ExitCode> advise;

    /**
     * @param knowledge what the answers are read by
     * @param advise answers one job and prints it
     */
    Batch(Program program, Knowledge knowledge, boolean asJson, Function<Answers, ExitCode> advise) {
        this.program = program;
        this.reader = new AnswersJson(knowledge);
        this.asJson = asJson;
        this.advise = advise;
    }

    ExitCode run(Path file, Answers given) {
        String text = text(file);
        if (text.isBlank()) {
            throw new BadAnswer(
                    "answers",
                    "The file of answers is empty. It holds one JSON object, or one a line, for example"
                            + " {\"material\": \"tin-silicone\"}.");
        }
        if (whole(text)) {
            return one(text, "", given);
        }
        ExitCode worst = ExitCode.ADVICE;
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                worst = worst.worse(one(lines.get(i), "line " + (i + 1) + ": ", given));
            }
        }
        return worst;
    }

    private ExitCode one(String job, String where, Answers given) {
        try {
            Answers answers = reader.read(parse(job));
            for (Map.Entry<String, Answers.Given> e : given.all().entrySet()) {
                answers = answers.with(
                        e.getKey(), e.getValue().answer(), e.getValue().raw());
            }
            return advise.apply(answers);
        } catch (BadAnswer e) {
            return bad(new BadAnswer(e.field(), where + e.getMessage()));
        } catch (RuntimeException e) {
            if (asJson) {
                program.out().println(Json.write(ResultJson.error("", where + "Pourwright met a fault of its own.")));
            }
            return program.failed(e);
        }
    }

    private ExitCode bad(BadAnswer e) {
        if (asJson) {
            program.out().println(Json.write(ResultJson.error(e)));
        }
        return program.failed(e);
    }

    private static boolean whole(String text) {
        if (text.length() > Json.MAX_CHARS) {
            return false;
        }
        try {
            JsonNode tree = Json.read(text);
            return tree != null && !tree.isMissingNode();
        } catch (JsonProcessingException e) {
            return text.lines().filter(l -> !l.isBlank()).count() < 2;
        }
    }

    private static JsonNode parse(String job) {
        if (job.length() > Json.MAX_CHARS) {
            throw new BadAnswer(
                    "answers",
                    "One job's answers are longer than " + Json.MAX_CHARS / 1_000_000
                            + " million characters; that is no job.");
        }
        try {
            return Json.read(job);
        } catch (JsonProcessingException e) {
            throw new BadAnswer(
                    "answers",
                    "The answers are not valid JSON (line " + Json.line(e)
                            + "). Expected one object, for example {\"material\": \"tin-silicone\"}.");
        }
    }

    private String text(Path file) {
        boolean standard = file.toString().equals("-");
        try (InputStream in = standard ? program.in() : Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new BadAnswer(
                        "answers",
                        "The file of answers is larger than " + MOST_BYTES / 1_000_000 + " MB. Split it into several.");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadAnswer("answers", "The file of answers is not UTF-8 text.");
        } catch (IOException e) {
            throw new BadAnswer(
                    "answers",
                    "The file of answers " + file
                            + " cannot be read. Give the name of a JSON file, for example job.json, or - for standard input.");
        }
    }
}
