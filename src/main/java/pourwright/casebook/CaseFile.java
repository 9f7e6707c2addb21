package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.facts.Answers;
import pourwright.knowledge.Json;

/**
 * A saved case.
 *
 * @param answers the answers, as given
 * @param verdict the verdict expected of them
 * @param findings ids of the findings expected, strongest first
 * @param outcome how it came out in the workshop, or empty
 * @param provenance where the case comes from
 * @param note anything to know about it
 */
public record CaseFile(
        Answers answers, String verdict, List<String> findings, String outcome, String provenance, String note) {
    private static final int FORMAT = 1;
    private static final List<String> PARTS =
            List.of("format", "word", "answers", "expect", "outcome", "provenance", "note");

    /** The case that a consultation makes. */
    public static CaseFile of(Consultation c, String provenance, String note) {
        return new CaseFile(c.answers(), c.verdict().word(), expected(c), "", provenance, note);
    }

    /** What a case pins: every finding but plain notes, and the verdict. */
    public static List<String> expected(Consultation c) {
        return c.findings().stream()
                .filter(f -> f.strength() != Strength.NOTE || f.isCaution())
                .map(Finding::id)
                .toList();
    }

    /** This case with what a consultation found put in as expected. */
    public CaseFile expecting(Consultation c) {
        return new CaseFile(answers, c.verdict().word(), expected(c), outcome, provenance, note);
    }

    /**
     * Reads a case file.
     *
     * @throws BadAnswer when it cannot be used, naming the file
     */
    public static CaseFile read(Path file, AnswersJson reader) {
        JsonNode tree;
        try {
            tree = Json.read(Files.readString(file, StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new BadAnswer("case", file + ", line " + Json.line(e) + ": this is not valid JSON.");
        } catch (IOException e) {
            throw new BadAnswer("case", "The case file " + file + " cannot be read.");
        }
        if (!tree.path("format").isInt()
                || tree.path("format").intValue() != FORMAT
                || !tree.path("word").asText().equals("plan")) {
            throw new BadAnswer(
                    "case",
                    file + " is not a planning case of format " + FORMAT
                            + ": it needs \"format\": 1 and \"word\": \"plan\".");
        }
        tree.fieldNames().forEachRemaining(n -> {
            if (!PARTS.contains(n)) {
                throw new BadAnswer("case", file + ": a case has no part \"" + n + "\". Its parts are " + PARTS + ".");
            }
        });
        List<String> findings = new ArrayList<>();
        tree.path("expect").path("findings").forEach(f -> findings.add(f.asText()));
        return new CaseFile(
                reader.read(tree.get("answers")),
                tree.path("expect").path("verdict").asText(),
                List.copyOf(findings),
                tree.path("outcome").asText(),
                tree.path("provenance").asText(),
                tree.path("note").asText());
    }

    /** The case as the text of its file. */
    public String text() {
        ObjectNode out = Json.object();
        out.put("format", FORMAT);
        out.put("word", "plan");
        out.set("answers", AnswersJson.write(answers));
        ObjectNode expect = out.putObject("expect");
        expect.put("verdict", verdict);
        ArrayNode ids = expect.putArray("findings");
        findings.forEach(ids::add);
        if (!outcome.isEmpty()) {
            out.put("outcome", outcome);
        }
        out.put("provenance", provenance);
        out.put("note", note);
        return Json.pretty(out) + "\n";
    }
}
