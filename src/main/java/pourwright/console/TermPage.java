package pourwright.console;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.advice.Nearest;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Term;

/** A word of the trade with its meaning and source; where the word is not known, those that come near. */
public final class TermPage {
    private final Knowledge knowledge;
    private final int width;

    public TermPage(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    /** The headword that a word means: itself, another word for it, or one of its forms. */
    public static Optional<String> headword(String typed, Knowledge knowledge) {
        String wanted = plain(typed);
        for (String form : forms(wanted)) {
            for (Map.Entry<String, Term> e : knowledge.terms().entrySet()) {
                if (plain(e.getKey()).equals(form)
                        || e.getValue().also().stream().anyMatch(a -> plain(a).equals(form))) {
                    return Optional.of(e.getKey());
                }
            }
        }
        return Optional.empty();
    }

    /** Spelled one way: lower case, a space for a hyphen, and mould for mold. */
    private static String plain(String text) {
        return text.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[\\s-]+", " ")
                .replace("mold", "mould")
                .replace("vapor ", "vapour ");
    }

    /** The word and what it may be a form of: vents, venting, vented. */
    private static List<String> forms(String word) {
        List<String> forms = new ArrayList<>(List.of(word));
        Map<String, List<String>> endings = new LinkedHashMap<>();
        endings.put("ies", List.of("y"));
        endings.put("es", List.of("", "e"));
        endings.put("s", List.of(""));
        endings.put("ed", List.of("", "e"));
        endings.put("ing", List.of("", "e"));
        endings.forEach((ending, instead) -> {
            if (word.endsWith(ending) && word.length() > ending.length() + 2) {
                String stem = word.substring(0, word.length() - ending.length());
                instead.forEach(i -> forms.add(stem + i));
                int n = stem.length();
                if (!ending.endsWith("s") && stem.charAt(n - 1) == stem.charAt(n - 2)) {
                    // degassing, dripped: the last letter was doubled.
                    forms.add(stem.substring(0, n - 1));
                }
            }
        });
        return forms;
    }

    /** The lines for a word. */
    public List<String> lines(String typed) {
        if (typed.isBlank()) {
            return wrap("Say which word: \"define gel time\".", "", "");
        }
        Optional<String> head = headword(typed, knowledge);
        if (head.isEmpty()) {
            Map<String, String> means = new LinkedHashMap<>();
            knowledge.terms().forEach((word, t) -> means.put(word, t.means() + " " + String.join(" ", t.also())));
            List<String> near = Nearest.of(typed, means);
            return wrap(
                    "The glossary has no word \"" + Clean.quoted(typed) + "\"."
                            + (near.isEmpty() ? "" : " Close to it: " + String.join(", ", near) + "."),
                    "",
                    "");
        }
        Term t = knowledge.terms().get(head.get());
        List<String> out = new ArrayList<>(wrap(head.get() + ": " + t.means(), "", "    "));
        if (!t.also().isEmpty()) {
            out.addAll(wrap(String.join(", ", t.also()) + ".", "  also: ", "    "));
        }
        out.addAll(wrap(new Explained(knowledge, width).source(t.source()) + ".", "  source: ", "    "));
        return out;
    }

    private List<String> wrap(String text, String first, String rest) {
        return Wrap.text(text, width, first, rest);
    }
}
