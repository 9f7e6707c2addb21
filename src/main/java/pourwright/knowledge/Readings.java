package pourwright.knowledge;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** How each record of the knowledge is read from its object. */
final class Readings {
    private Readings() {}

    static Value value(Tree t) {
        return new Value(
                t.number("low"),
                t.number("typical"),
                t.number("high"),
                t.text("unit"),
                t.text("source"),
                t.textOr("note", null),
                null);
    }

    static Guideline guideline(Tree t) {
        return new Guideline(
                t.number("value"),
                t.text("unit"),
                t.text("source"),
                t.text("note"),
                t.flag("safety", false),
                t.textOr("tighter", null),
                null);
    }

    static MaterialClass material(Tree t) {
        return new MaterialClass(
                t.text("id"),
                t.text("name"),
                t.texts("says"),
                t.text("family"),
                t.text("vacuum"),
                Set.copyOf(t.texts("traits")),
                Tree.whole(t.object("mix"), Readings::mix),
                t.map("values", Readings::value),
                Tree.whole(
                        t.object("permission"),
                        p -> new MaterialClass.Permission(p.text("why"), p.text("instead"), p.text("source"))),
                t.textOr("note", null));
    }

    private static MaterialClass.Mix mix(Tree t) {
        return new MaterialClass.Mix(
                t.text("by"),
                t.texts("names"),
                t.numberOrNull("first"),
                t.has("second")
                        ? Tree.whole(
                                t.object("second"),
                                s -> new MaterialClass.Span(s.number("low"), s.number("typical"), s.number("high")))
                        : null,
                t.text("source"),
                t.textOr("note", null));
    }

    static Question question(Tree t) {
        return new Question(
                t.text("id"),
                t.text("section"),
                t.text("ask"),
                t.text("kind"),
                t.text("help"),
                t.textOr("quantity", null),
                t.textOr("unit", null),
                t.numberOrNull("min"),
                t.numberOrNull("max"),
                t.textOr("example", null),
                t.textOr("bare", null),
                t.list("choices", c -> new Question.Choice(c.text("id"), c.text("text"), c.texts("says"))),
                t.has("unknown") ? Tree.whole(t.object("unknown"), Readings::fallback) : null,
                t.flag("asked", true),
                t.flag("several", false),
                t.textOr("fact", null),
                t.textOr("effort", "look"),
                t.texts("picture"),
                t.texts("families"),
                t.texts("tries"),
                t.texts("together"));
    }

    private static Question.Fallback fallback(Tree t) {
        return new Question.Fallback(
                t.number("low"), t.number("typical"), t.number("high"), t.text("source"), t.textOr("note", null));
    }

    static Source source(Tree t) {
        return new Source(
                t.text("title"),
                t.textOr("author", null),
                t.textOr("year", null),
                t.textOr("where", null),
                t.flag("read", true),
                t.textOr("note", null));
    }

    static Caution caution(Tree t) {
        return new Caution(
                t.text("hazard"),
                t.text("say"),
                t.text("topic"),
                t.text("source"),
                t.flag("safety", true),
                t.textOr("trait", null));
    }

    static Term term(Tree t) {
        return new Term(t.text("means"), t.texts("also"), t.text("source"));
    }

    static PumpKind pump(Tree t) {
        return new PumpKind(
                t.text("name"),
                Tree.whole(t.object("speed"), Readings::value),
                Tree.whole(t.object("ultimate"), Readings::value),
                t.text("vapour"),
                t.textOr("note", null),
                t.text("source"));
    }

    static WayOfWorking process(Tree t) {
        return new WayOfWorking(
                t.text("name"), t.text("does"), t.text("right-when"), t.text("wrong-when"), t.text("source"));
    }

    static Agent agent(Tree t) {
        return new Agent(
                t.text("id"),
                t.text("text"),
                t.map("effects", e -> new Agent.Effect(e.text("effect"), e.textOr("note", null))),
                t.text("source"));
    }

    static Cause cause(Tree t) {
        return new Cause(
                t.text("id"),
                t.text("name"),
                Set.copyOf(t.texts("families")),
                Set.copyOf(t.texts("not-classes")),
                t.strings("arises"),
                t.text("is"),
                t.text("physics"),
                t.text("test"),
                t.text("repair"),
                t.list("prevent", Readings::prevention),
                t.texts("cautions"),
                t.text("source"));
    }

    private static Cause.Prevention prevention(Tree t) {
        return new Cause.Prevention(
                t.text("say"),
                t.has("set") ? t.strings("set") : Map.of(),
                t.has("times") ? t.numbers("times") : Map.of());
    }

    static BaseRates baseRates(Tree t) {
        Map<String, Map<String, Map<String, Double>>> symptoms = new LinkedHashMap<>();
        Tree all = t.object("symptoms");
        all.names().forEach(symptom -> {
            Tree classes = all.object(symptom);
            Map<String, Map<String, Double>> shares = new LinkedHashMap<>();
            classes.names().forEach(c -> shares.put(c, classes.numbers(c)));
            symptoms.put(symptom, Collections.unmodifiableMap(shares));
        });
        return new BaseRates(t.text("source"), t.textOr("note", null), Collections.unmodifiableMap(symptoms));
    }

    static PocketDecision decision(Tree t) {
        return new PocketDecision(t.text("name"), t.text("does"), t.text("source"));
    }

    static Remedy remedy(Tree t) {
        Map<String, List<String>> when = new LinkedHashMap<>();
        if (t.has("when")) {
            Tree all = t.object("when");
            all.names().forEach(question -> when.put(question, all.texts(question)));
        }
        return new Remedy(
                t.text("id"),
                t.text("say"),
                t.text("answer"),
                Remedy.How.valueOf(t.text("how").toUpperCase(Locale.ROOT)),
                t.textOr("to", null),
                t.texts("from"),
                t.numberOrNull("least"),
                t.numberOrNull("most"),
                t.numberOrNull("factor"),
                when,
                t.has("also") ? t.strings("also") : Map.of(),
                t.texts("forgets"),
                Set.copyOf(t.texts("families")),
                Set.copyOf(t.texts("not-families")),
                Set.copyOf(t.texts("vacuum")),
                (int) t.number("cost"),
                t.text("why-cost"),
                t.text("source"));
    }

    /** @param line the emergency line, the same for all */
    static Emergency emergency(Tree t, String line) {
        return new Emergency(
                t.text("id"),
                t.text("title"),
                t.text("short"),
                Emergency.Danger.valueOf(t.text("danger").toUpperCase(Locale.ROOT)),
                t.texts("says"),
                t.texts("steps"),
                line,
                t.text("defers"),
                t.text("source"));
    }

    static StepWords step(Tree t) {
        return new StepWords(
                t.text("say"),
                t.textOr("watch", null),
                t.text("source"),
                t.textOr("done", "done"),
                t.flag("done-at-start", false));
    }

    static Lesson lesson(Tree t) {
        return new Lesson(
                t.text("id"),
                (int) t.number("order"),
                t.text("title"),
                t.texts("says"),
                t.texts("terms"),
                t.list("experiments", Readings::experiment),
                t.texts("misconceptions"),
                t.list("exercises", Readings::drill),
                t.texts("rules"),
                t.texts("sources"));
    }

    private static Lesson.Experiment experiment(Tree t) {
        return new Lesson.Experiment(
                t.text("says"),
                t.strings("answers"),
                t.text("vary"),
                t.text("first"),
                t.text("then"),
                t.texts("figures"),
                t.text("foretell"),
                t.text("notice"));
    }

    private static Lesson.Drill drill(Tree t) {
        return new Lesson.Drill(
                Lesson.Drill.Kind.valueOf(t.text("kind").toUpperCase(Locale.ROOT)),
                t.texts("topics"),
                t.texts("causes"),
                t.textOr("figure", ""),
                t.has("answers") ? t.strings("answers") : Map.of(),
                t.list("slips", s -> new Lesson.Slip(s.text("without"), s.textOr("as", ""), s.text("misconception"))));
    }

    static Lesson.Misconception misconception(String id, Tree t) {
        return new Lesson.Misconception(
                id,
                t.text("belief"),
                t.text("truth"),
                t.has("shown")
                        ? Tree.whole(t.object("shown"), s -> new Lesson.Shown(s.text("figure"), s.strings("answers")))
                        : null,
                t.texts("rules"),
                t.texts("chosen"),
                t.texts("instead"),
                t.text("source"));
    }
}
