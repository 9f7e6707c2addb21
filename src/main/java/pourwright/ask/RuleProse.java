package pourwright.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pourwright.knowledge.Guideline;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.Question;
import pourwright.rulebook.Condition;
import pourwright.rulebook.RuleText;

/** The conditions and conclusions of a rule as plain sentences. */
public final class RuleProse {
    private final Knowledge knowledge;
    private final Map<String, String> names;

    /**
     * @param knowledge the words of questions, ways of working and thresholds
     * @param names what causes are called, by id; may be empty
     */
    public RuleProse(Knowledge knowledge, Map<String, String> names) {
        this.knowledge = knowledge;
        this.names = names;
    }

    /** One sentence for each condition. */
    public List<String> conditions(RuleText rule) {
        Map<String, String> bound = new HashMap<>();
        return rule.when().stream().map(c -> sentence(c, bound)).toList();
    }

    private String sentence(Condition c, Map<String, String> bound) {
        if (c instanceof Condition.Not not) {
            String inside = not.all().stream().map(x -> sentence(x, bound)).collect(Collectors.joining(", and "));
            return "not so: " + inside;
        }
        Condition.Fact f = (Condition.Fact) c;
        return switch (f.type()) {
            case "Material" -> material(f);
            case "Said" -> asked(values(f, "question")) + " was answered" + choices(f);
            case "Unknown" -> asked(values(f, "question")) + " has no answer";
            case "Method" -> "the plan is to " + processes(values(f, "what"));
            case "Refused" -> "it was ruled out to " + processes(values(f, "what"));
            case "Shown" ->
                "the test \"" + String.join("\" or \"", values(f, "test")) + "\" shows"
                        + (values(f, "outcome").isEmpty()
                                ? " something"
                                : " \"" + String.join("\" or \"", values(f, "outcome")) + "\"");
            case "Figure" -> figure(f, bound);
            default -> throw new IllegalArgumentException("no fact is called " + f.type());
        };
    }

    private static List<String> values(Condition.Fact f, String field) {
        return f.tests().stream()
                .filter(t -> t instanceof Condition.OneOf one && one.field().equals(field) && !one.not())
                .flatMap(t -> ((Condition.OneOf) t).values().stream())
                .toList();
    }

    private String asked(List<String> questions) {
        return questions.stream()
                .map(id -> "\"" + knowledge.question(id).map(Question::ask).orElse(id) + "\"")
                .collect(Collectors.joining(" or "));
    }

    private String choices(Condition.Fact f) {
        List<String> choices = values(f, "choice");
        if (choices.isEmpty()) {
            return "";
        }
        List<String> questions = values(f, "question");
        return choices.stream()
                .map(c -> "\""
                        + questions.stream()
                                .flatMap(q -> knowledge.question(q).stream())
                                .flatMap(q -> q.choice(c).stream())
                                .map(Question.Choice::text)
                                .findFirst()
                                .orElse(c)
                        + "\"")
                .collect(Collectors.joining(" or ", " with ", ""));
    }

    private String processes(List<String> ids) {
        return ids.stream().map(this::process).collect(Collectors.joining(" or to "));
    }

    private String process(String id) {
        return knowledge.processes().containsKey(id)
                ? knowledge.processes().get(id).name()
                : id;
    }

    private String material(Condition.Fact f) {
        return f.tests().isEmpty()
                ? "the liquid is known"
                : "the liquid " + f.tests().stream().map(this::ofMaterial).collect(Collectors.joining(", and "));
    }

    private String ofMaterial(Condition.Test t) {
        if (t instanceof Condition.Any any) {
            return any.some().stream().map(this::ofMaterial).collect(Collectors.joining(", or "));
        }
        if (t instanceof Condition.OneOf one) {
            String some = one.values().stream()
                    .map(v -> one.field().equals("id") && knowledge.materials().containsKey(v)
                            ? knowledge.materials().get(v).name()
                            : v)
                    .collect(Collectors.joining(" or "));
            String is = one.not() ? "is not " : "is ";
            return switch (one.field()) {
                case "family" -> is + "of the family " + some;
                case "vacuum" -> is + "one for which vacuum counts as " + some;
                default -> is + some;
            };
        }
        Condition.Is is = (Condition.Is) t;
        return (is.not() ? "does not count as \"" : "counts as \"")
                + is.argument().replace('-', ' ') + "\"";
    }

    private String figure(Condition.Fact f, Map<String, String> bound) {
        String name = named(String.join(" or ", values(f, "id")));
        if (!f.bind().isEmpty()) {
            bound.put(f.bind(), name);
        }
        List<String> words = new ArrayList<>();
        for (Condition.Test t : f.tests()) {
            if (!(t instanceof Condition.OneOf)) {
                words.add(compared(t, name, bound));
            }
        }
        return words.isEmpty() ? "there is a figure for the " + name : String.join(", and ", words);
    }

    private String compared(Condition.Test t, String name, Map<String, String> bound) {
        if (t instanceof Condition.Any any) {
            return any.some().stream().map(x -> compared(x, name, bound)).collect(Collectors.joining(", or "));
        }
        Condition.Is is = (Condition.Is) t;
        String who = "the " + (is.of().isEmpty() ? name : bound.getOrDefault(is.of(), is.of()));
        String to = is.not() ? " is not " : " is ";
        if (is.word().equals("known")) {
            return who + to + "known from you or a data sheet";
        }
        if (is.word().equals("assumed")) {
            return who + to + "a usual value that stood in";
        }
        String how = is.word().replaceFirst("([a-z]+)(Above|Below)", "$1 $2").toLowerCase(Locale.ROOT);
        if (!how.matches("(?:possibly|likely|surely|firmly) (?:above|below)")) {
            throw new IllegalArgumentException("no word about a figure is " + is.word());
        }
        String other = is.argument().isEmpty()
                ? "the " + (is.other().equals("this") ? name : bound.getOrDefault(is.other(), is.other()))
                : named(is.argument()) + " (" + value(is.argument()) + ")";
        return who + to + how + " " + other;
    }

    /** A name of a figure or threshold as people say it. */
    static String named(String id) {
        return id.replace('-', ' ');
    }

    private String value(String guideline) {
        Guideline g = knowledge.guidelines().get(guideline);
        return g == null ? "not set" : shown(g);
    }

    /** The value of a threshold, in its own unit. */
    public static String shown(Guideline g) {
        return Settings.typed(g.value(), g.unit());
    }

    /** Names of the thresholds a rule compares with or says. */
    public Set<String> guidelines(RuleText rule) {
        Set<String> ids = new TreeSet<>();
        gather(rule.when(), ids);
        for (RuleText.Call call : rule.then()) {
            for (String word : call.words()) {
                java.util.regex.Pattern.compile("\\{guideline:([a-z0-9-]+)}")
                        .matcher(word)
                        .results()
                        .forEach(r -> ids.add(r.group(1)));
            }
        }
        ids.retainAll(knowledge.guidelines().keySet());
        return ids;
    }

    private static void gather(List<Condition> conditions, Set<String> ids) {
        for (Condition c : conditions) {
            if (c instanceof Condition.Not not) {
                gather(not.all(), ids);
            } else {
                ((Condition.Fact) c).tests().forEach(t -> gather(t, ids));
            }
        }
    }

    private static void gather(Condition.Test t, Set<String> ids) {
        if (t instanceof Condition.Any any) {
            any.some().forEach(x -> gather(x, ids));
        } else if (t instanceof Condition.Is is && !is.argument().isEmpty()) {
            ids.add(is.argument());
        }
    }

    /** Ids of the figures a rule looks at. */
    public Set<String> figures(RuleText rule) {
        Set<String> ids = new TreeSet<>();
        figures(rule.when(), ids);
        return ids;
    }

    private static void figures(List<Condition> conditions, Set<String> ids) {
        for (Condition c : conditions) {
            if (c instanceof Condition.Not not) {
                figures(not.all(), ids);
            } else if (c instanceof Condition.Fact f && f.type().equals("Figure")) {
                ids.addAll(values(f, "id"));
            }
        }
    }

    /** One sentence for each conclusion; figures stand in it by name. */
    public List<String> conclusions(RuleText rule) {
        return rule.then().stream().map(this::concluded).toList();
    }

    private String concluded(RuleText.Call call) {
        List<String> w = call.words();
        return switch (call.verb()) {
            case "stop" -> "stop: " + filled(w.get(0));
            case "change" -> "change this: " + filled(w.get(0));
            case "suggest" -> "do this: " + filled(w.get(0));
            case "consider" -> "weigh this up: " + filled(w.get(0));
            case "note" -> "know this: " + filled(w.get(0));
            case "caution" ->
                "be warned of a hazard: " + knowledge.cautions().get(w.get(0)).hazard();
            case "need" -> "ask: " + asked(List.of(w.get(0)));
            case "choose" ->
                "the plan is to " + process(w.get(0)) + ", unless a rule rules it out: " + filled(w.get(1));
            case "refuse" -> "it is ruled out to " + process(w.get(0)) + ": " + filled(w.get(1));
            case "decide" -> "a pocket is dealt with by \"" + w.get(0) + "\": " + filled(w.get(1));
            case "speaksFor" -> w.get(1) + " evidence for: " + cause(w.get(0));
            case "speaksAgainst" -> w.get(1) + " evidence against: " + cause(w.get(0));
            case "rulesOut" -> "this cause is impossible: " + cause(w.get(0));
            case "contradicts" -> "two answers cannot both be true: " + filled(w.get(2));
            default -> throw new IllegalArgumentException("no verb is called " + call.verb());
        };
    }

    private String cause(String id) {
        return names.getOrDefault(id, named(id));
    }

    /** Thresholds by their values; figures, which only a job has, by name. */
    private String filled(String say) {
        StringBuilder out = new StringBuilder();
        java.util.regex.Matcher m =
                java.util.regex.Pattern.compile("\\{(guideline:)?([a-z0-9-]+)}").matcher(say);
        while (m.find()) {
            String with = m.group(1) == null ? "(" + named(m.group(2)) + ")" : value(m.group(2));
            m.appendReplacement(out, java.util.regex.Matcher.quoteReplacement(with));
        }
        return m.appendTail(out).toString();
    }
}
