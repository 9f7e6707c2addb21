package pourwright.casebook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pourwright.advice.BadAnswer;
import pourwright.facts.Basis;
import pourwright.knowledge.ClassValues;
import pourwright.knowledge.Json;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.OverlayReport;
import pourwright.knowledge.Value;
import pourwright.units.Bad;
import pourwright.units.Dimension;
import pourwright.units.DontKnow;
import pourwright.units.Expect;
import pourwright.units.QuantityReader;
import pourwright.units.Read;
import pourwright.units.Reading;
import pourwright.units.Show;
import pourwright.units.UnitBook;

/** What a person types of a material of their own, value by value from its data sheet. */
public final class OwnMaterial {
    /** The values that data sheets print, in the order in which they are asked. */
    private static final List<String> ASKED = List.of(
            "pot-life",
            "pot-life-mass",
            "pot-life-temperature",
            "demould-time",
            "full-cure-time",
            "viscosity",
            "liquid-density",
            "density-a",
            "density-b",
            "linear-shrinkage",
            "vacuum-pressure",
            "vacuum-hold",
            "mixing-time",
            "depth-limit");

    private static final double FAR = 1000;
    private static final double COLDEST_C = -60;
    private static final double HOTTEST_C = 300;
    private static final int LONGEST = 80;
    private static final int MOST_WORDS = 20;

    private final Knowledge knowledge;
    private final Set<String> classes;
    private String name = "";
    private List<String> says = List.of();
    private MaterialClass base;
    private final Map<String, Value> values = new LinkedHashMap<>();

    /**
     * @param knowledge with the workshop's own laid over it
     * @param classes ids of the classes that came with the program
     */
    public OwnMaterial(Knowledge knowledge, Set<String> classes) {
        this.knowledge = knowledge;
        this.classes = Set.copyOf(classes);
    }

    /**
     * What it is called.
     *
     * @throws BadAnswer when nothing of it can be an id
     */
    public void name(String typed) {
        if (FileNumber.controls(typed)) {
            throw new BadAnswer("name", "A name holds no control characters. For example yard blue.");
        }
        if (Forgetting.plain(typed).isEmpty() || typed.length() > LONGEST) {
            throw new BadAnswer(
                    "name", "A name has 1 to " + LONGEST + " characters, with a letter in it. For example yard blue.");
        }
        if (classes.contains(Forgetting.plain(typed))) {
            throw new BadAnswer(
                    "name",
                    "\"" + Forgetting.plain(typed) + "\" is a class that came with the program. Take another name.");
        }
        name = typed.strip();
    }

    /** Its id: the name as a file has it. */
    public String id() {
        return Forgetting.plain(name);
    }

    /**
     * Words people type for it, commas between them.
     *
     * @throws BadAnswer when one of them means another material already
     */
    public void says(String typed) {
        List<String> words = new ArrayList<>();
        for (String w : typed.split(",")) {
            String word = w.strip().toLowerCase(java.util.Locale.ROOT);
            if (word.isEmpty()) {
                continue;
            }
            if (word.length() > LONGEST || words.size() >= MOST_WORDS || FileNumber.controls(word)) {
                throw new BadAnswer(
                        "says",
                        "At most " + MOST_WORDS + " words of " + LONGEST
                                + " characters each, and no control characters. For example blue, the blue.");
            }
            knowledge.materials().values().stream()
                    .filter(m -> !m.id().equals(id())
                            && (m.id().equals(word)
                                    || m.name().equalsIgnoreCase(word)
                                    || m.says().stream().anyMatch(s -> s.equalsIgnoreCase(word))))
                    .findFirst()
                    .ifPresent(m -> {
                        throw new BadAnswer(
                                "says", "\"" + word + "\" means " + m.name() + " already. Take another word.");
                    });
            words.add(word);
        }
        says = List.copyOf(words);
    }

    /**
     * The class it belongs to.
     *
     * @throws BadAnswer when there is no such class
     */
    public void base(String id) {
        MaterialClass m = classes.contains(id) ? knowledge.materials().get(id) : null;
        if (m == null) {
            throw new BadAnswer(
                    "class",
                    "There is no class \"" + (id.length() > LONGEST ? id.substring(0, LONGEST) : id) + "\". Accepted: "
                            + String.join(", ", new TreeSet<>(classes)) + ".");
        }
        base = m;
    }

    /** The values to ask for: those its class has, of what data sheets print. */
    public List<String> fields() {
        return ASKED.stream().filter(base.values()::containsKey).toList();
    }

    /** The range of the class, in words. */
    public String usual(String field) {
        Value v = base.values().get(field);
        Dimension d = ClassValues.dimension(field);
        return v.low() == v.high()
                ? Show.quantity(v.si(d).typical(), v.unit(), d)
                : Show.range(v.si(d).low(), v.si(d).typical(), v.si(d).high(), v.unit(), d);
    }

    /**
     * Reads a value.
     *
     * @return nothing for "don't know"
     * @throws BadAnswer when it cannot be read, with what is accepted
     */
    public Optional<Value> read(String field, String typed) {
        Value usual = base.values().get(field);
        if (usual == null) {
            throw new BadAnswer(
                    field, "'" + field + "' is no value of this class. Accepted: " + String.join(", ", fields()) + ".");
        }
        Dimension d = ClassValues.dimension(field);
        boolean mayBeNegative = d == Dimension.TEMPERATURE || usual.low() <= 0 || usual.high() <= 0;
        double most = Math.max(Math.abs(usual.low()), Math.abs(usual.high())) * FAR;
        double min = d == Dimension.TEMPERATURE ? COLDEST_C : mayBeNegative ? -most : usual.low() / FAR;
        double max = d == Dimension.TEMPERATURE ? HOTTEST_C : most;
        String example = FileNumber.typed(usual.typical(), usual.unit());
        Reading r = QuantityReader.read(typed, new Expect(d, usual.unit(), min, max, example, false, false));
        if (r instanceof DontKnow) {
            return Optional.empty();
        }
        if (!(r instanceof Read q)) {
            throw new BadAnswer(
                    field, r instanceof Bad bad ? bad.sentence() : "Say the unit too, for example " + example + ".");
        }
        return Optional.of(new Value(
                UnitBook.fromSi(q.lowSi(), usual.unit(), d),
                UnitBook.fromSi(q.typicalSi(), usual.unit(), d),
                UnitBook.fromSi(q.highSi(), usual.unit(), d),
                usual.unit(),
                "typical-data-sheet",
                null,
                Basis.DATA_SHEET));
    }

    /** True when a value lies far outside its class: a slip of the pen, or another class. */
    public boolean isFar(String field, Value v) {
        return OverlayReport.isFar(v, base.values().get(field), ClassValues.dimension(field), knowledge);
    }

    /** Keeps a value. */
    public void set(String field, Value v) {
        values.put(field, v);
    }

    /** True when no value was given. */
    public boolean empty() {
        return values.isEmpty();
    }

    /** The text of its file. */
    public String text() {
        ObjectNode out = Json.object();
        out.put("id", id());
        out.put("name", name);
        says.forEach(out.putArray("says")::add);
        out.put("class", base.id());
        ObjectNode all = out.putObject("values");
        values.forEach((field, v) -> {
            ObjectNode one = all.putObject(field);
            one.put("low", FileNumber.of(v.low()));
            one.put("typical", FileNumber.of(v.typical()));
            one.put("high", FileNumber.of(v.high()));
            one.put("unit", v.unit());
            one.put("source", v.source());
        });
        return Json.pretty(out) + "\n";
    }
}
