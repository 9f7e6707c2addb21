package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.advice.Finding;
import pourwright.advice.Strength;
import pourwright.diagnosis.Diagnosis;
import pourwright.facts.Answers;
import pourwright.kit.KitAdvice;
import pourwright.knowledge.Json;
import pourwright.vents.VentAdvice;

/**
 * A saved case.
 *
 * @param word what it is a case of: {@code plan}, {@code diagnose}, {@code vents} or {@code kit}
 * @param answers the answers, as given
 * @param verdict the verdict expected of them; empty for a diagnosis
 * @param findings ids of the findings expected, strongest first
 * @param causes ids of the causes expected, likeliest first; empty for a plan
 * @param ranked false when the source of a diagnosis names causes without saying which is likeliest
 * @param outcome how it came out in the workshop, or empty
 * @param provenance where the case comes from
 * @param note anything to know about it
 */
public record CaseFile(
        String word,
        Answers answers,
        String verdict,
        List<String> findings,
        List<String> causes,
        boolean ranked,
        String outcome,
        String provenance,
        String note) {
    private static final int FORMAT = 1;
    private static final int MOST_BYTES = 1_000_000;
    private static final int CAUSES = 3;
    private static final List<String> WORDS = List.of("plan", "diagnose", "vents", "kit");
    private static final List<String> PARTS =
            List.of("format", "word", "answers", "expect", "outcome", "provenance", "note");

    /** The case that a consultation makes. */
    public static CaseFile of(Consultation c, String provenance, String note) {
        return new CaseFile(
                "plan", c.answers(), c.verdict().word(), expected(c), List.of(), true, "", provenance, note);
    }

    /** The case that a diagnosis makes. */
    public static CaseFile of(Diagnosis d, String provenance, String note) {
        return new CaseFile("diagnose", d.answers(), "", List.of(), expected(d), true, "", provenance, note);
    }

    /** The case that an advice on trapped air makes. */
    public static CaseFile of(VentAdvice a, String provenance, String note) {
        return new CaseFile(
                "vents", a.answers(), a.verdict().word(), expected(a), List.of(), true, "", provenance, note);
    }

    /** The case that the test of a kit makes. */
    public static CaseFile of(KitAdvice a, String provenance, String note) {
        return new CaseFile("kit", a.answers(), a.verdict().word(), expected(a), List.of(), true, "", provenance, note);
    }

    /** What the case of a kit pins: every finding but plain notes. */
    public static List<String> expected(KitAdvice a) {
        return a.findings().stream()
                .filter(f -> f.strength() != Strength.NOTE)
                .map(Finding::id)
                .toList();
    }

    /** What a case about trapped air pins: the rule that decided about each pocket, largest first. */
    public static List<String> expected(VentAdvice a) {
        return a.treatments().stream().map(t -> t.rule().id()).toList();
    }

    /** What a case of a diagnosis pins: the first three causes in their order. */
    public static List<String> expected(Diagnosis d) {
        return d.ranked().stream().limit(CAUSES).map(c -> c.cause().id()).toList();
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
        return new CaseFile(word, answers, c.verdict().word(), expected(c), causes, ranked, outcome, provenance, note);
    }

    /** This case with what was found about trapped air put in as expected. */
    public CaseFile expecting(VentAdvice a) {
        return new CaseFile(word, answers, a.verdict().word(), expected(a), causes, ranked, outcome, provenance, note);
    }

    /** This case with what was found about a kit put in as expected. */
    public CaseFile expecting(KitAdvice a) {
        return new CaseFile(word, answers, a.verdict().word(), expected(a), causes, ranked, outcome, provenance, note);
    }

    /** This case with what a diagnosis found put in as expected. */
    public CaseFile expecting(Diagnosis d) {
        return new CaseFile(word, answers, verdict, findings, expected(d), ranked, outcome, provenance, note);
    }

    /** The word of a case file, {@code plan} when it names none that is known. */
    public static String wordOf(Path file) {
        try {
            String word =
                    Json.read(WholeFile.text(file, MOST_BYTES)).path("word").asText();
            return WORDS.contains(word) ? word : "plan";
        } catch (IOException e) {
            // Whoever reads it for good says what is wrong with it.
            return "plan";
        }
    }

    /**
     * Reads a case file.
     *
     * @param word what it must be a case of
     * @throws BadAnswer when it cannot be used, naming the file
     */
    public static CaseFile read(Path file, String word, AnswersJson reader) {
        JsonNode tree;
        try {
            tree = Json.read(WholeFile.text(file, MOST_BYTES));
        } catch (JsonProcessingException e) {
            throw new BadAnswer("case", file + ", line " + Json.line(e) + ": this is not valid JSON.");
        } catch (IOException e) {
            throw new BadAnswer("case", "The case file " + file + " cannot be read.");
        }
        if (!tree.path("format").isInt()
                || tree.path("format").intValue() != FORMAT
                || !tree.path("word").asText().equals(word)) {
            throw new BadAnswer(
                    "case",
                    file + " is not a case of \"" + word + "\" in format " + FORMAT
                            + ": it needs \"format\": 1 and \"word\": \"" + word + "\".");
        }
        tree.fieldNames().forEachRemaining(n -> {
            if (!PARTS.contains(n)) {
                throw new BadAnswer("case", file + ": a case has no part \"" + n + "\". Its parts are " + PARTS + ".");
            }
        });
        List<String> findings = new ArrayList<>();
        tree.path("expect").path("findings").forEach(f -> findings.add(f.asText()));
        List<String> causes = new ArrayList<>();
        tree.path("expect").path("causes").forEach(c -> causes.add(c.asText()));
        return new CaseFile(
                word,
                reader.read(tree.get("answers")),
                tree.path("expect").path("verdict").asText(),
                List.copyOf(findings),
                List.copyOf(causes),
                tree.path("expect").path("ranked").asBoolean(true),
                tree.path("outcome").asText(),
                tree.path("provenance").asText(),
                tree.path("note").asText());
    }

    /** The case as the text of its file. */
    public String text() {
        ObjectNode out = Json.object();
        out.put("format", FORMAT);
        out.put("word", word);
        out.set("answers", AnswersJson.write(answers));
        ObjectNode expect = out.putObject("expect");
        if (!word.equals("diagnose")) {
            expect.put("verdict", verdict);
            ArrayNode ids = expect.putArray("findings");
            findings.forEach(ids::add);
        } else {
            ArrayNode ids = expect.putArray("causes");
            causes.forEach(ids::add);
            if (!ranked) {
                expect.put("ranked", false);
            }
        }
        if (!outcome.isEmpty()) {
            out.put("outcome", outcome);
        }
        out.put("provenance", provenance);
        out.put("note", note);
        return Json.pretty(out) + "\n";
    }
}
