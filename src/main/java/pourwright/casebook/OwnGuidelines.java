package pourwright.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.advice.BadAnswer;
import pourwright.advice.Nearest;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.units.Ask;
import pourwright.units.Bad;
import pourwright.units.Dimension;
import pourwright.units.Expect;
import pourwright.units.QuantityReader;
import pourwright.units.Read;
import pourwright.units.Reading;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/** A workshop's own guidelines, set and dropped one by one. */
public final class OwnGuidelines {
    private static final String FILE = "guidelines.json";
    private static final String ALL = "guidelines";
    private static final int MOST_BYTES = 1_000_000;
    private static final int LONGEST_WHY = 300;
    /** Nobody means a threshold a hundred thousand times the usual one. */
    private static final double FAR = 1e5;

    private final Path file;
    private final Knowledge shipped;

    /** @param shipped the knowledge without any workshop's */
    public OwnGuidelines(Path shop, Knowledge shipped) {
        this.file = shop.resolve(FILE);
        this.shipped = shipped;
    }

    /**
     * The shipped guideline of that name.
     *
     * @throws BadAnswer when there is none, with the names that come near
     */
    public Guideline shipped(String id) {
        Guideline g = shipped.guidelines().get(id);
        if (g == null) {
            Map<String, String> notes = new LinkedHashMap<>();
            shipped.guidelines().forEach((n, x) -> notes.put(n, x.note()));
            List<String> near = Nearest.of(id, notes);
            throw new BadAnswer(
                    "guideline",
                    "There is no guideline \"" + id + "\"."
                            + (near.isEmpty() ? "" : " Near it: " + String.join(", ", near) + ".")
                            + " \"pourwright shop guideline\" lists them.");
        }
        return g;
    }

    /**
     * Sets one; the file is written whole.
     *
     * @return what it is now, in words
     * @throws BadAnswer when the value cannot be read, or loosens what guards safety
     */
    public String set(String id, String typed, String why) {
        Guideline old = shipped(id);
        Dimension d = Knowledge.dimensionOf(old.unit());
        if (why.length() > LONGEST_WHY) {
            throw new BadAnswer("why", "Say why in at most " + LONGEST_WHY + " letters.");
        }
        if (FileNumber.controls(why)) {
            throw new BadAnswer("why", "Say why in one line, without control characters.");
        }
        double span = Math.max(Math.abs(old.value()), 1) * FAR;
        String example = FileNumber.typed(old.value(), old.unit());
        Reading r = QuantityReader.read(
                typed, new Expect(d, old.unit(), old.value() < 0 ? -span : 0, span, example, true, false));
        if (!(r instanceof Read q)) {
            throw new BadAnswer(
                    id,
                    r instanceof Bad bad
                            ? bad.sentence()
                            : r instanceof Ask ask ? ask.sentence() : "Say a value, for example " + example + ".");
        }
        double si = q.typicalSi();
        if (old.safety() && (old.tighter().equals("lower") ? si > old.si() : si < old.si())) {
            throw new BadAnswer(
                    id,
                    "'" + id + "' guards safety. It may be made " + old.tighter() + " than " + example
                            + ", not looser.");
        }
        ObjectNode tree = tree();
        ObjectNode own = tree.withObject("/" + ALL).putObject(id);
        own.put("value", FileNumber.of(UnitBook.fromSi(si, old.unit(), d)));
        own.put("unit", old.unit());
        own.put("source", "common-practice");
        own.put("note", why.isBlank() ? old.note() : why.strip());
        own.put("safety", old.safety());
        if (old.safety()) {
            own.put("tighter", old.tighter());
        }
        write(tree);
        return "'" + id + "' is " + Show.quantity(si, old.unit(), d) + " now; shipped it is "
                + Show.quantity(old.si(), old.unit(), d) + ".";
    }

    /**
     * Puts the shipped value back.
     *
     * @throws BadAnswer when it was not set
     */
    public void drop(String id) {
        ObjectNode tree = tree();
        if (!tree.path(ALL).has(id)) {
            throw new BadAnswer("guideline", "'" + id + "' is not set in " + file + ".");
        }
        tree.withObject("/" + ALL).remove(id);
        if (tree.path(ALL).isEmpty()) {
            // A file of no guideline would not be read.
            remove();
            return;
        }
        write(tree);
    }

    private ObjectNode tree() {
        try {
            JsonNode tree = Files.isRegularFile(file) ? Json.read(WholeFile.text(file, MOST_BYTES)) : Json.object();
            if (tree instanceof ObjectNode o && (!o.has(ALL) || o.get(ALL).isObject())) {
                return o;
            }
            throw new BadAnswer("guideline", file + " does not hold guidelines. Nothing was changed.");
        } catch (JsonProcessingException e) {
            throw new BadAnswer(
                    "guideline", file + ", line " + Json.line(e) + ": this is not valid JSON. Nothing was changed.");
        } catch (IOException e) {
            throw new BadAnswer("guideline", file + " cannot be read: " + Trouble.why(file.getParent(), e) + ".");
        }
    }

    private void remove() {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new BadAnswer("guideline", file + " cannot be written: " + Trouble.why(file.getParent(), e) + ".");
        }
    }

    private void write(ObjectNode tree) {
        try {
            WholeFile.write(file, Json.pretty(tree) + "\n");
        } catch (IOException e) {
            throw new BadAnswer("guideline", file + " cannot be written: " + Trouble.why(file.getParent(), e) + ".");
        }
    }
}
