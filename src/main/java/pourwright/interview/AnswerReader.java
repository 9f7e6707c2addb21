package pourwright.interview;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pourwright.facts.Answer;
import pourwright.facts.Estimate;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.MaterialClass;
import pourwright.knowledge.Question;
import pourwright.stock.Cans;
import pourwright.units.Ask;
import pourwright.units.Bad;
import pourwright.units.Dimension;
import pourwright.units.DontKnow;
import pourwright.units.Expect;
import pourwright.units.QuantityReader;
import pourwright.units.Ratio;
import pourwright.units.RatioReader;
import pourwright.units.RatioReading;
import pourwright.units.Read;
import pourwright.units.Reading;
import pourwright.units.TypedText;

/** Reads what a person or a program answered to one question. */
public final class AnswerReader {
    /** Longer than any list of choices; also the bound that keeps reading quick. */
    private static final int LONGEST = 1000;

    /** Longer than a day at the bench. */
    private static final int LONGEST_LOG = 8000;

    private static final int SHOWN_CHOICES = 6;
    private static final int MOST_DIGITS = 40;
    private static final int LEAST_WORD = 3;
    /** Words of two-part liquids that name none of them. */
    private static final Set<String> EVERYWHERE =
            Set.of("part", "parts", "two", "component", "mix", "mixed", "cast", "casting", "liquid");

    private static final Set<String> FILLERS = Set.of("the", "and", "with", "for", "that", "this", "into", "from");
    private static final Set<String> NEGATIONS = Set.of("no", "not", "never", "without", "none", "nor");
    private static final int MOST_NEAR = 9;
    private static final String NUMBER = "[+-]?(\\d{1,9}(\\.\\d{0,9})?|\\.\\d{1,9})([eE][+-]?\\d{1,2})?";
    private static final String PLACE = NUMBER + "(\\s*,\\s*|\\s+)" + NUMBER + "(\\s*,\\s*|\\s+)" + NUMBER;
    private static final Pattern PLACES = Pattern.compile(PLACE + "(\\s*;\\s*" + PLACE + ")*+");
    private static final Pattern LOGGED = Pattern.compile(
            "began \\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d{1,9})?Z|\\d{1,5}:[0-5]\\d [a-z][a-z-]{0,40}( .{1,120})?");
    /** Ways to say yes and no that every such question takes. */
    private static final Map<String, Set<String>> PLAIN = Map.of(
            "yes", Set.of("y", "yep", "yup", "yeah", "aye", "sure", "of course", "yes please"),
            "no", Set.of("n", "nope", "nah", "never", "no thanks"));

    private final Knowledge knowledge;

    public AnswerReader(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** What became of an answer. */
    public sealed interface Outcome {}

    /** It was read. */
    public record Understood(Answer answer) implements Outcome {}

    /** It must be given again: one sentence says why, and what could be meant can be typed as it stands. */
    public record Again(String sentence, List<String> meanings) implements Outcome {}

    /**
     * Reads an answer typed at a prompt: numbers of choices and unique beginnings are accepted, and a bare number is
     * asked about where it could mean two things.
     */
    public Outcome atPrompt(Question q, String typed) {
        return read(q, typed, true);
    }

    /** Reads an answer from a program: a number in the question's own unit, a string as typed, or null for "don't know". */
    public Outcome fromProgram(Question q, Object raw) {
        if (raw == null) {
            return new Understood(new Answer.DontKnow());
        }
        if (raw instanceof Boolean b) {
            return read(q, b ? "yes" : "no", false);
        }
        if (raw instanceof Number n) {
            return read(q, plain(n), false);
        }
        if (raw instanceof String s) {
            return read(q, s, false);
        }
        if (raw instanceof List<?> list && q.several()) {
            return list.isEmpty()
                    ? new Understood(new Answer.DontKnow())
                    : read(
                            q,
                            String.join(", ", list.stream().map(String::valueOf).toList()),
                            false);
        }
        return new Again(
                "'" + q.id() + "' takes one answer: a text, a number, or null for don't know." + example(q), List.of());
    }

    private static String plain(Number n) {
        if (n instanceof Double d && !Double.isFinite(d)) {
            return n.toString();
        }
        BigDecimal exact = new BigDecimal(n.toString());
        // A number of a thousand million digits is written in ten characters: it is never written out.
        return Math.abs((long) exact.scale()) > MOST_DIGITS ? exact.toString() : exact.toPlainString();
    }

    private Outcome read(Question q, String typed, boolean prompt) {
        // Where "unsure" is a choice of its own, it is that choice.
        boolean named = q.choice(typed.strip().toLowerCase(Locale.ROOT)).isPresent();
        if (!named && DontKnow.typed(typed)) {
            return new Understood(new Answer.DontKnow());
        }
        boolean words = !q.kind().equals("quantity") && !q.kind().equals("ratio");
        if (words && typed.length() > (q.kind().equals("log") ? LONGEST_LOG : LONGEST)) {
            return new Again(
                    TypedText.quote(typed) + " is too long for an answer to '" + q.id() + "'. Accepted: at most "
                            + (q.kind().equals("log") ? LONGEST_LOG : LONGEST) + " characters." + example(q),
                    List.of());
        }
        String text = words ? ended(clean(typed)) : typed;
        return switch (q.kind()) {
            case "quantity" -> quantity(q, typed, prompt);
            case "ratio" -> ratio(typed, prompt);
            case "material" -> material(q, text, prompt);
            case "text" -> text(q, typed);
            case "places" -> places(q, typed);
            case "log" -> log(q, typed);
            case "cans" -> cans(q, typed);
            default -> choice(q, text, prompt);
        };
    }

    private static Outcome quantity(Question q, String typed, boolean prompt) {
        Dimension d = Dimension.named(q.quantity());
        boolean gauge = q.id().equals("gauge-reading");
        Expect e = new Expect(d, q.unit(), q.min(), q.max(), q.example(), !prompt, gauge);
        Reading reading = QuantityReader.read(typed, e);
        if (reading instanceof Read r) {
            return new Understood(
                    new Answer.Quantity(new Estimate(r.lowSi(), r.typicalSi(), r.highSi()), r.unit(), r.echo()));
        }
        if (reading instanceof Ask a) {
            return new Again(a.sentence(), a.meanings());
        }
        return reading instanceof DontKnow
                ? new Understood(new Answer.DontKnow())
                : new Again(((Bad) reading).sentence(), List.of());
    }

    private static Outcome ratio(String typed, boolean prompt) {
        RatioReading reading = RatioReader.read(typed, prompt);
        if (reading instanceof Ratio r) {
            return new Understood(new Answer.Ratio(r.first(), r.second(), r.by(), r.echo()));
        }
        if (reading instanceof Ask a) {
            return new Again(a.sentence(), a.meanings());
        }
        return reading instanceof DontKnow
                ? new Understood(new Answer.DontKnow())
                : new Again(((Bad) reading).sentence(), List.of());
    }

    /** Kept as typed but for control characters: two spaces in the name of a file are two spaces. */
    private static Outcome text(Question q, String typed) {
        String plain = typed.replaceAll("[\\p{Cc}\\p{Cf}]", "").strip();
        return plain.isEmpty()
                ? new Again("Nothing was typed for '" + q.id() + "'." + example(q), List.of())
                : new Understood(new Answer.Text(plain));
    }

    /** Points or directions: three numbers each, with semicolons between several. */
    private static Outcome places(Question q, String typed) {
        Outcome text = text(q, typed);
        if (text instanceof Understood u
                && u.answer() instanceof Answer.Text t
                && !PLACES.matcher(t.text()).matches()) {
            return new Again(
                    TypedText.quote(t.text())
                            + " is not a place. Accepted: three numbers with commas between them, and a"
                            + " semicolon between several places." + example(q),
                    List.of());
        }
        return text;
    }

    /** What happened at the bench: a time from the start of mixing and a word each, with semicolons between. */
    private static Outcome log(Question q, String typed) {
        Outcome text = text(q, typed);
        if (text instanceof Understood u && u.answer() instanceof Answer.Text t) {
            for (String entry : t.text().split("\\s*;\\s*")) {
                if (!LOGGED.matcher(entry).matches()) {
                    return new Again(
                            TypedText.quote(entry)
                                    + " is not an entry of the log. Accepted: minutes, a colon, seconds and what happened, with"
                                    + " semicolons between." + example(q),
                            List.of());
                }
            }
        }
        return text;
    }

    /** The cans of a part that are at hand. */
    private static Outcome cans(Question q, String typed) {
        Outcome text = text(q, typed);
        if (text instanceof Understood u && u.answer() instanceof Answer.Text t) {
            try {
                Cans.read(t.text());
            } catch (Cans.Unreadable e) {
                return new Again(e.getMessage() + example(q), List.of());
            }
        }
        return text;
    }

    /** Where the question offers some classes only, these go before all others and the numbers mean them. */
    private Outcome material(Question q, String text, boolean prompt) {
        if (!q.choices().isEmpty()) {
            Outcome offered = one(q, text, prompt);
            if (offered instanceof Understood || !((Again) offered).meanings().isEmpty()) {
                return offered;
            }
        }
        List<MaterialClass> all = List.copyOf(knowledge.materials().values());
        Outcome picked = pick(q, text, prompt, all, MaterialClass::id, MaterialClass::name, MaterialClass::says);
        boolean strange = picked instanceof Again a && a.meanings().isEmpty();
        return prompt && strange ? nearest(text, all).orElse(picked) : picked;
    }

    /** "Clear casting epoxy" names no class, but most of its words are words of some: these are offered. */
    private static Optional<Outcome> nearest(String text, List<MaterialClass> all) {
        Set<String> typed =
                new LinkedHashSet<>(List.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")));
        typed.removeIf(w -> w.length() < LEAST_WORD || EVERYWHERE.contains(w));
        Map<MaterialClass, Integer> shared = new LinkedHashMap<>();
        for (MaterialClass m : all) {
            Set<String> known = new LinkedHashSet<>();
            Stream.concat(Stream.of(m.id(), m.name(), m.family()), m.says().stream())
                    .forEach(
                            w -> known.addAll(List.of(w.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))));
            known.retainAll(typed);
            shared.put(m, known.size());
        }
        int most = shared.values().stream().max(Integer::compare).orElse(0);
        List<String> near = all.stream()
                .filter(m -> shared.get(m) > 0 && shared.get(m) >= most - 1)
                .sorted(Comparator.comparing(m -> -shared.get(m)))
                .limit(MOST_NEAR)
                .map(MaterialClass::id)
                .toList();
        return near.isEmpty()
                ? Optional.empty()
                : Optional.of(new Again(
                        TypedText.quote(text) + " is no name of a liquid here. Nearest: " + String.join(", ", near)
                                + ". Which is it?",
                        near));
    }

    private static Outcome choice(Question q, String text, boolean prompt) {
        return q.several() ? several(q, text, prompt) : one(q, text, prompt);
    }

    /** One or more choices: "1, 3", "round and flat". What cannot be read as a list is judged as one answer. */
    private static Outcome several(Question q, String text, boolean prompt) {
        Outcome whole = one(q, text, prompt);
        Set<String> found = new LinkedHashSet<>();
        if (whole instanceof Understood u && u.answer() instanceof Answer.Choice c) {
            found.add(c.id());
        } else {
            String between = text.matches("[\\d ]+") ? " +" : " *(?:[,;&+]|\\band\\b) *";
            for (String piece : text.split(between)) {
                Outcome part = one(q, piece, prompt);
                if (!(part instanceof Understood u && u.answer() instanceof Answer.Choice c)) {
                    return text.equals(piece) ? whole : part;
                }
                found.add(c.id());
            }
        }
        return new Understood(new Answer.Several(q.choices().stream()
                .map(Question.Choice::id)
                .filter(found::contains)
                .toList()));
    }

    private static Outcome one(Question q, String text, boolean prompt) {
        return pick(q, text, prompt, q.choices(), Question.Choice::id, Question.Choice::text, Question.Choice::says);
    }

    private static <T> Outcome pick(
            Question q,
            String text,
            boolean prompt,
            List<T> all,
            Function<T, String> id,
            Function<T, String> name,
            Function<T, List<String>> says) {
        String wanted = text.toLowerCase(Locale.ROOT);
        Set<String> exact = new LinkedHashSet<>();
        Set<String> beginnings = new LinkedHashSet<>();
        for (T c : all) {
            List<String> words = new ArrayList<>(says.apply(c));
            words.add(id.apply(c));
            words.add(id.apply(c).replace('-', ' '));
            words.add(name.apply(c));
            words.addAll(PLAIN.getOrDefault(id.apply(c), Set.of()));
            for (String w : words) {
                String word = w.toLowerCase(Locale.ROOT);
                if (word.equals(wanted)) {
                    exact.add(id.apply(c));
                } else if (word.startsWith(wanted) || (q.kind().equals("material") && within(word, wanted))) {
                    beginnings.add(id.apply(c));
                }
            }
        }
        if (exact.size() == 1) {
            return new Understood(new Answer.Choice(exact.iterator().next()));
        }
        if (prompt && exact.isEmpty() && !wanted.isEmpty()) {
            if (wanted.matches("\\d{1,3}")) {
                int n = Integer.parseInt(wanted);
                if (n >= 1 && n <= all.size()) {
                    return new Understood(new Answer.Choice(id.apply(all.get(n - 1))));
                }
            } else if (beginnings.size() == 1) {
                return new Understood(new Answer.Choice(beginnings.iterator().next()));
            }
        }
        if (prompt && exact.isEmpty() && beginnings.isEmpty() && q.kind().equals("choice")) {
            Set<String> held = holding(wanted, q);
            // One word alone can mean something else: "wet" is no name of a soft casting. It is taken only for a
            // question.
            if (held.size() == 1 && meaningful(wanted).size() > 1) {
                return new Understood(new Answer.Choice(held.iterator().next()));
            }
            beginnings.addAll(held.size() > 1 ? held : Set.of());
        }
        Set<String> several = exact.size() > 1 ? exact : prompt ? beginnings : Set.<String>of();
        if (several.size() > 1 && !wanted.isEmpty()) {
            return new Again(
                    TypedText.quote(text) + " could be " + String.join(" or ", several) + ". Which?"
                            + oneOf(several, prompt),
                    List.copyOf(several));
        }
        List<String> ids = all.stream().map(id).toList();
        String accepted = ids.size() <= SHOWN_CHOICES || !q.kind().equals("material")
                ? String.join(", ", ids)
                : String.join(", ", ids.subList(0, SHOWN_CHOICES)) + " and " + (ids.size() - SHOWN_CHOICES)
                        + " more (see 'pourwright questions')";
        return new Again(
                TypedText.quote(text) + " is not an answer to '" + q.id() + "'. Accepted: " + accepted
                        + ", or \"don't know\"."
                        + (q.example() == null ? oneOf(ids, prompt) : example(q)),
                List.of());
    }

    /** An example that would be taken; at a prompt, where choices are numbered, also the shortest way to give it. */
    private static String oneOf(Collection<String> ids, boolean prompt) {
        return " For example " + (prompt ? "\"1\" or \"" : "\"")
                + ids.iterator().next() + "\".";
    }

    /** "Mould around a master" begins no choice, but all its words stand in one; a number or a "not" means more than words. */
    private static Set<String> holding(String wanted, Question q) {
        Set<String> found = new LinkedHashSet<>();
        Set<String> typed = meaningful(wanted);
        if (typed.isEmpty()
                || wanted.matches(".*\\d.*")
                || words(wanted).stream().anyMatch(NEGATIONS::contains)) {
            return found;
        }
        for (Question.Choice c : q.choices()) {
            Set<String> known = words(c.id() + " " + c.text() + " " + String.join(" ", c.says()));
            if (known.containsAll(typed)) {
                found.add(c.id());
            }
        }
        return found;
    }

    private static Set<String> meaningful(String text) {
        Set<String> words = words(text);
        words.removeIf(w -> w.length() < LEAST_WORD || FILLERS.contains(w));
        return words;
    }

    private static Set<String> words(String text) {
        return new LinkedHashSet<>(List.of(text.toLowerCase(Locale.ROOT).strip().split("[^\\p{L}]+")));
    }

    /** "Epoxy" is a word of four classes, though the name of only one begins with it. */
    private static boolean within(String name, String wanted) {
        return !wanted.isEmpty() && (" " + name + " ").contains(" " + wanted + " ");
    }

    private static String example(Question q) {
        return q.example() == null ? "" : " For example " + q.example() + ".";
    }

    /** Without the full stop or the exclamation mark that ends a sentence. */
    private static String ended(String text) {
        String end = text;
        while (end.length() > 1 && (end.endsWith(".") || end.endsWith("!"))) {
            end = end.substring(0, end.length() - 1).strip();
        }
        return end;
    }

    /** Control characters out, spaces collapsed. */
    static String clean(String typed) {
        return typed.replaceAll("[\\p{Cc}\\p{Cf}]", " ").strip().replaceAll("\\s+", " ");
    }
}
