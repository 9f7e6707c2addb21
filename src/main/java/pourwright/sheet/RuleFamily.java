package pourwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pourwright.advice.BadAnswer;
import pourwright.advice.Nearest;
import pourwright.ask.RuleProse;
import pourwright.knowledge.Caution;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.knowledge.Source;
import pourwright.rulebook.RuleBook;
import pourwright.rulebook.RuleCard;
import pourwright.rulebook.RuleText;

/** The card of a family of rules: a folder such as {@code degas}, or a topic such as {@code @cup}. */
public final class RuleFamily {
    private static final String SAFETY = "safety";
    /** The groups, by the verb of a rule, in the order in which they hang on the wall. */
    private static final Map<String, String> GROUPS = groups();

    private static final Set<String> SLIGHT = Set.of("Weigh up", "Know");

    /** Words that begin a sentence which tells what to do. */
    private static final Set<String> TELLS =
            Set.of(("Do Use Let Pour Degas Leave Keep Look Read Cure Never Take Fill Mix Dry"
                            + " Make Set Find Vent Pull Warm Check Brush Fit Try Stir Seal Put Replace Test Run Have Choose Open Weigh"
                            + " Hold Time Split Go Stay Stop Fold Vibrate Cast Watch Pump Repeat Plan Shut Search Scrap Drain Repair"
                            + " Bake Cool Bring Change Add Tilt Lead Fix Close Get Skip Hang Wipe Compare Cut Clean Pipe Blank Clear"
                            + " Peel Turn Allow Give Sift Build Coat Spray Wax Heat Thin Cover Paint Measure Lay Work Brace Tape Slush"
                            + " Clamp Mount Degrease Soak Lean Rinse Tap Pinch Rock Widen Shorten Melt Wear Strain Demould Spread"
                            + " Start Finish Scrape Write Zero Expect Note Reach")
                    .split(" "));

    private static final Pattern PLACE = Pattern.compile("(the |your )?\\{(guideline:)?([a-z0-9-]+)}");

    private final Knowledge knowledge;
    private final RuleProse prose;

    private RuleFamily(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.prose = new RuleProse(knowledge, Map.of());
    }

    private static Map<String, String> groups() {
        Map<String, String> g = new LinkedHashMap<>();
        g.put("stop", "Stop");
        g.put("change", "Change first");
        g.put("suggest", "Do");
        g.put("choose", "Do");
        g.put("refuse", "Not this way");
        g.put("decide", "A pocket of air");
        g.put("need", "Ask");
        g.put("speaksFor", "What shows a cause");
        g.put("speaksAgainst", "What speaks against one");
        g.put("rulesOut", "What cannot be");
        g.put("contradicts", "What cannot both be true");
        g.put("consider", "Weigh up");
        g.put("note", "Know");
        return g;
    }

    /** Every folder, and every topic with an at-sign, with what it holds in words. */
    public static Map<String, String> names() {
        Map<String, Integer> count = new TreeMap<>();
        RuleBook.allCards().forEach(c -> {
            count.merge(c.folder(), 1, Integer::sum);
            count.merge("@" + c.topic(), 1, Integer::sum);
        });
        Map<String, String> names = new TreeMap<>();
        count.forEach((name, n) -> names.put(name, n + (n == 1 ? " rule" : " rules")));
        return names;
    }

    /**
     * The card of a family.
     *
     * @param name a folder, or a topic with or without an at-sign; where both have the name, the folder
     * @param knowledge with the questions of a diagnosis
     * @param version what made it
     * @throws BadAnswer when there is no such family, naming those that may have been meant
     */
    public static Card of(String name, Knowledge knowledge, String version) {
        String wanted = name.strip()
                .toLowerCase(Locale.ROOT)
                .replaceFirst("^rules/", "")
                .replaceFirst("/$", "");
        String topic = wanted.startsWith("@") ? wanted.substring(1) : wanted;
        List<RuleCard> cards = RuleBook.allCards()
                .filter(c -> c.folder().equals(wanted))
                .sorted()
                .toList();
        if (cards.isEmpty()) {
            cards = RuleBook.allCards()
                    .filter(c -> c.topic().equals(topic))
                    .sorted()
                    .toList();
        }
        if (cards.isEmpty()) {
            List<String> near = Nearest.of(topic, names());
            throw new BadAnswer(
                    "rules",
                    "No family of rules is called \"" + wanted.replaceAll("\\p{Cntrl}", " ") + "\". "
                            + (near.isEmpty()
                                    ? "Known are: " + String.join(", ", names().keySet()) + "."
                                    : "Perhaps " + String.join(" or ", near) + "."));
        }
        return new RuleFamily(knowledge).card(wanted, cards, version);
    }

    private Card card(String name, List<RuleCard> cards, String version) {
        Map<String, List<Card.Line>> groups = new LinkedHashMap<>();
        groups.put("Safety", new ArrayList<>());
        GROUPS.values().forEach(g -> groups.putIfAbsent(g, new ArrayList<>()));
        List<String> cautions = new ArrayList<>();
        Set<String> sources = new TreeSet<>();
        for (RuleCard c : cards) {
            RuleText text = RuleText.of(c);
            RuleText.Call call = text.then().get(0);
            if (call.verb().equals("caution")) {
                Caution caution = knowledge.cautions().get(call.words().get(0));
                String say = upper(caution.hazard()) + ". " + caution.say();
                if (!cautions.contains(say)) {
                    cautions.add(say);
                }
                sources.add(caution.source());
            } else {
                String group = GROUPS.get(call.verb());
                boolean safety = c.topic().equals(SAFETY) && !SLIGHT.contains(group);
                groups.get(safety ? "Safety" : group).add(line(text, call));
                sources.addAll(c.sources());
            }
        }
        boolean strong = groups.entrySet().stream()
                .anyMatch(g -> !SLIGHT.contains(g.getKey()) && !g.getValue().isEmpty());
        int left =
                strong ? SLIGHT.stream().mapToInt(g -> groups.remove(g).size()).sum() : 0;
        return new Card(
                upper(name.replaceFirst("^@", "")) + ": the rules",
                "Each rule speaks only where its conditions hold. A plan or a diagnosis says which do.",
                groups.entrySet().stream()
                        .map(g -> new Card.Group(g.getKey(), g.getValue()))
                        .toList(),
                cautions,
                List.of(
                        "The safety data sheet decides.",
                        left == 0
                                ? ""
                                : "Not on this card: " + left
                                        + (left == 1
                                                ? " rule that only weighs something up or remarks on it. \"pourwright rules\" has it."
                                                : " rules that only weigh something up or remark on it. \"pourwright rules\" has them."),
                        knowledge.closing(),
                        "Sources: "
                                + sources.stream()
                                        .map(this::source)
                                        .sorted(Comparator.naturalOrder())
                                        .distinct()
                                        .collect(Collectors.joining("; "))
                                + ".",
                        version));
    }

    private Card.Line line(RuleText text, RuleText.Call call) {
        String limits = prose.guidelines(text).stream().map(this::limit).collect(Collectors.joining("; "));
        return new Card.Line(
                imperative(text.card(), call), text.card().because() + (limits.isEmpty() ? "" : " By " + limits + "."));
    }

    private String limit(String name) {
        Guideline g = knowledge.guidelines().get(name);
        String owner = g.owner().equals("workshop")
                ? "your workshop"
                : "shipped, " + g.source().replace('-', ' ');
        return name.replace('-', ' ') + " " + RuleProse.shown(g) + " (" + owner + ")";
    }

    /** The one sentence that tells what to do; where a rule has none, what it says about itself. */
    private String imperative(RuleCard card, RuleText.Call call) {
        List<String> words = call.words();
        String say = words.get(words.size() - 1);
        if (call.verb().equals("need")) {
            return "Ask: " + knowledge.question(say).map(Question::ask).orElse(say);
        }
        if (Set.of("speaksFor", "speaksAgainst", "rulesOut").contains(call.verb())) {
            return sentence(card.says());
        }
        List<String> tells = Stream.of(say.split("(?<=[.!?])\\s+"))
                .filter(s -> TELLS.contains(s.split("[\\s,:;.]", 2)[0]))
                .toList();
        // One that needs no figure says most where there is no job to take it from.
        return tells.stream()
                .filter(s -> !s.contains("{"))
                .findFirst()
                .or(() -> tells.stream().findFirst())
                .map(this::filled)
                .orElse(sentence(card.says()));
    }

    private static String sentence(String text) {
        return text.matches(".*[.!?]$") ? text : text + ".";
    }

    /** Thresholds by their values; figures, which only a job has, by name. */
    private String filled(String say) {
        Matcher m = PLACE.matcher(say);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            String with = m.group(2) != null
                    ? (m.group(1) == null ? "" : m.group(1))
                            + RuleProse.shown(knowledge.guidelines().get(m.group(3)))
                    : named(m.group(1), m.group(3));
            m.appendReplacement(out, Matcher.quoteReplacement(with));
        }
        return m.appendTail(out).toString();
    }

    private static String named(String article, String name) {
        String word = switch (name) {
            case "material" -> "liquid";
            case "first-can" -> "first part";
            case "second-can" -> "second part";
            case "gauge-target" -> "pressure that the plan names";
            default -> name.replace('-', ' ');
        };
        return (article == null ? "the " : article) + word;
    }

    private String source(String key) {
        Source s = knowledge.sources().get(key);
        return s == null || s.author() == null && s.year() == null
                ? key.replace('-', ' ')
                : Stream.of(s.author(), s.title(), s.year())
                        .filter(p -> p != null && !p.isBlank())
                        .collect(Collectors.joining(", "));
    }

    private static String upper(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
