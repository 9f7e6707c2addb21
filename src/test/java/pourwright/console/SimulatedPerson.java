package pourwright.console;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.testing.Generated;

/**
 * A person at a terminal, made of chance: what is typed depends on the seed, on what was asked and on how many prompts
 * this person has patience for. When it is used up the person wants to leave, in one way and no other.
 */
final class SimulatedPerson {
    /** How a person leaves once the patience is used up. */
    enum Leaves {
        /** Don't know to everything, Enter at the review, quit at the result. */
        BY_RESULT,
        /** Enter and nothing else. */
        BY_ENTER,
        /** "don't know" and nothing else. */
        BY_DONT_KNOW,
        BY_ENOUGH,
        BY_QUIT,
        BY_END_OF_INPUT,
        BY_CTRL_C
    }

    /** What a person types mostly. */
    enum Kind {
        ANSWERS,
        MIXED,
        NONSENSE,
        /** Has no patience at all: leaves from the first prompt on, in the way drawn. */
        LEAVES_AT_ONCE
    }

    private static final Map<String, String[]> CURIOUS = Map.of(
            "plan",
            new String[] {
                "more",
                "cautions",
                "how 1",
                "how 2",
                "how 3",
                "how 99",
                "how",
                "figures",
                "rules",
                "sources",
                "answers",
                "again",
                "what-if cup-volume=5 L",
                "what-if batch-mass=2 kg kit=vacuum",
                "what-if",
                "what-if cheese=1",
                "what-if room-temperature=ten",
                "why",
                "help",
                "define froth",
                "define",
                "define cheese",
                "save ear mould",
                "save",
                "save ../../x",
                "prevent 1"
            },
            "diagnose",
            new String[] {
                "how 1", "how 2", "how 7", "how 99", "how cheese", "causes", "more", "prevent 1", "prevent 2",
                        "prevent 99",
                "prevent", "otherwise", "cautions", "figures", "rules", "sources", "answers", "again", "why", "help",
                "define froth", "save bad hoof", "save", "what-if cup-volume=5 L"
            });

    private static final String[] NONSENSE = {
        "nonsense",
        "-5",
        "0",
        "1e999",
        "5 furlongs",
        "99999999999999",
        "1:0",
        "\u001b[2J",
        "½ kg",
        "10..5",
        "x".repeat(500),
        "quit now",
        "ı İ ß",
        "٣ kg",
        "3,5",
        "1.234,5 g",
        "\u0007",
        "{}",
        "%s %d %n",
        "🙂",
        "a".repeat(2000),
        "\t",
        "' OR 1=1",
        "yes and no",
        "1, 2, 3",
        "1 2 3 4 5 6 7 8 9",
        "0x10",
        "NaN",
        "infinity",
        "-0",
        "1/0",
        "5 kg 3 L",
        "= 5",
        "5 ° C"
    };

    private final Generated any;
    private final Knowledge knowledge;
    private final String word;
    private final String[] sayings;
    private final Kind kind;
    private final Leaves leaves;
    private int patience;
    private final Deque<String> last = new ArrayDeque<>();

    /**
     * @param any the chance
     * @param word {@code plan} or {@code diagnose}
     * @param sayings words that people use about bad parts
     */
    SimulatedPerson(Generated any, Knowledge knowledge, String word, String[] sayings) {
        this.any = any;
        this.knowledge = knowledge;
        this.word = word;
        this.sayings = sayings;
        double which = any.uniform(0, 1);
        this.kind = which < 0.4
                ? Kind.ANSWERS
                : which < 0.75 ? Kind.MIXED : which < 0.85 ? Kind.NONSENSE : Kind.LEAVES_AT_ONCE;
        this.leaves = any.pick(Leaves.values());
        this.patience = kind == Kind.LEAVES_AT_ONCE ? 0 : any.whole(2, 20);
    }

    Leaves leaves() {
        return leaves;
    }

    /** True once the person types nothing but what leads out. */
    boolean leaving() {
        return patience <= 0;
    }

    /** What is typed at a prompt; null when the input ends there. */
    String types(String prompt, List<String> offered) {
        String line = patience-- > 0 ? talking(prompt, offered) : leavingLine(prompt);
        last.addLast(prompt + " > " + line);
        if (last.size() > 12) {
            last.removeFirst();
        }
        return line;
    }

    private String leavingLine(String prompt) {
        return switch (leaves) {
            case BY_ENTER -> "";
            case BY_DONT_KNOW -> "don't know";
            case BY_RESULT -> prompt.equals(word) ? "quit" : prompt.equals("review") ? "" : "don't know";
            // "enough" leads to the result where one is possible; where it is not, don't know goes on.
            case BY_ENOUGH -> prompt.equals(word) ? "quit" : any.pick("enough", "don't know");
            case BY_QUIT -> "quit";
            case BY_END_OF_INPUT -> null;
            case BY_CTRL_C -> throw new Door.Interrupted();
        };
    }

    private String talking(String prompt, List<String> offered) {
        if (prompt.equals(word) && offered.isEmpty()) {
            return ownWords();
        }
        double what = any.uniform(0, 1);
        double straight = kind == Kind.ANSWERS ? 0.85 : kind == Kind.MIXED ? 0.5 : 0.1;
        if (prompt.equals(word)) {
            return what < 0.04
                    ? "back"
                    : what < 0.12
                            ? "change " + any.whole(1, 12)
                            : what < 0.16 ? nonsense() : any.pick(CURIOUS.get(word));
        }
        if (prompt.equals("review")) {
            return any.pick(
                    "", "", "", "change " + any.whole(1, 9), "back", "answers", "help", "why", "3", nonsense(), "dk");
        }
        Question q = knowledge.question(prompt).orElse(null);
        if (q == null) {
            return any.pick("", "", "yes", "no", "1", "2", "why", "help", "back", nonsense());
        }
        if (what < straight) {
            return any.uniform(0, 1) < 0.1 ? "don't know" : answer(q);
        }
        return switch (any.whole(0, 5)) {
            case 0 -> any.pick("back", "back", "change " + any.whole(1, 9), "change x", "change", "change material");
            case 1 -> any.pick("why", "help", "answers", "?", "");
            case 2 -> any.uniform(0, 1) < 0.1 ? "enough" : any.pick("1", "2", "3", "7", "40", "0,5", "1200");
            case 3 -> any.pick("don't know", "dunno", "");
            default -> nonsense();
        };
    }

    private String nonsense() {
        return any.pick(NONSENSE);
    }

    private String ownWords() {
        List<String> said = new ArrayList<>();
        for (int i = any.whole(0, 3); i > 0; i--) {
            said.add(any.uniform(0, 1) < 0.8 ? any.pick(sayings) : nonsense());
        }
        return String.join(any.pick(" ", " and ", ", "), said);
    }

    /** An answer that the question takes. */
    private String answer(Question q) {
        return switch (q.kind()) {
            case "material" -> any.pick(knowledge.materials().keySet().toArray(String[]::new));
            case "choice" -> choice(q);
            case "ratio" ->
                any.pick("10:1", "1:1", "100:3", any.whole(1, 100) + ":" + any.whole(1, 10))
                        + any.pick("", " by weight", " by volume");
            default -> quantity(q);
        };
    }

    private String choice(Question q) {
        int n = any.whole(1, q.choices().size());
        String one =
                any.pick(q.choices().get(n - 1).id(), q.choices().get(n - 1).text(), String.valueOf(n));
        return q.several() && any.uniform(0, 1) < 0.3
                ? n + ", " + any.whole(1, q.choices().size())
                : one;
    }

    private String quantity(Question q) {
        double how = any.uniform(0, 1);
        if (how < 0.4) {
            return q.example();
        }
        if (how < 0.5 && !q.tries().isEmpty()) {
            return any.pick(q.tries().toArray(String[]::new));
        }
        double x = q.min() > 0 ? any.logUniform(Math.max(q.min(), 1e-3), q.max()) : any.uniform(q.min(), q.max());
        return any.pick("", "about ", "at most ") + String.format(Locale.ROOT, "%.4f", x) + " " + q.unit();
    }

    /** The last lines typed, for a message that can be followed. */
    @Override
    public String toString() {
        return any + ", " + kind + ", leaves " + leaves + ", last typed " + last;
    }
}
