package pourwright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One rule taken apart as text: its name, what it says about itself, its patterns and its conclusions. A lint reads the
 * text, since the compiled rule no longer shows how it was written.
 */
final class RuleText {
    private static final Pattern NAME = Pattern.compile("\\brule\\s+\"([^\"]*)\"");
    private static final Pattern TAG =
            Pattern.compile("@(\\w+)\\(\\s*\"((?:[^\"\\\\]|\\\\.)*)\"\\s*\\)", Pattern.DOTALL);
    private static final Pattern QUOTED = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"");
    private static final String STRING = "\"(?:[^\"\\\\]|\\\\.)*\"";
    private static final Pattern CALL = Pattern.compile(
            "\\badvice\\s*\\.\\s*(\\w+)\\s*\\(\\s*(" + STRING + "(?:\\s*,\\s*" + STRING + "){0,2})\\s*\\)\\s*;");
    private static final Pattern COMMENT = Pattern.compile("(?m)//[^\\n]*$|/\\*.*?\\*/", Pattern.DOTALL);

    private static final Set<String> TARGETED =
            Set.of("choose", "refuse", "caution", "need", "speaksFor", "speaksAgainst", "rulesOut", "decide");

    private final RuleFiles.RuleFile file;
    private final String text;

    private RuleText(RuleFiles.RuleFile file) {
        this.file = file;
        this.text = file.read();
    }

    /** One conclusion: the verb and the quoted strings handed to it. */
    record Call(String verb, List<String> strings) {
        /** The method, caution or question it is about; empty where the verb only speaks. */
        String target() {
            return TARGETED.contains(verb) ? strings.get(0) : "";
        }

        /** The sentence for the person; empty where the verb carries none. */
        String say() {
            return switch (verb) {
                case "choose", "refuse", "decide" -> strings.get(1);
                case "contradicts" -> strings.get(2);
                case "caution", "need", "speaksFor", "speaksAgainst", "rulesOut" -> "";
                default -> strings.get(0);
            };
        }
    }

    static List<RuleText> all() {
        return RuleFiles.all().stream().map(RuleText::new).toList();
    }

    RuleFiles.RuleFile file() {
        return file;
    }

    /** How many rules stand in the file. */
    int rules() {
        return (int) NAME.matcher(bare()).results().count();
    }

    String name() {
        return first(NAME, 1);
    }

    /** What an annotation holds, or an empty string when it is missing. */
    String tag(String name) {
        Matcher m = TAG.matcher(text);
        while (m.find()) {
            if (m.group(1).equals(name)) {
                return m.group(2).strip();
            }
        }
        return "";
    }

    /** The conditions, strings and all. */
    String when() {
        return between("(?m)^when\\b", "(?m)^then\\b");
    }

    /** The consequences, strings and all. */
    String then() {
        return between("(?m)^then\\b", "(?m)^end\\b");
    }

    /** The whole text without comments, annotations and quoted strings: what is left is code. */
    String code() {
        return QUOTED.matcher(TAG.matcher(bare()).replaceAll("")).replaceAll("\"\"");
    }

    List<Call> calls() {
        List<Call> calls = new ArrayList<>();
        Matcher m = CALL.matcher(then());
        while (m.find()) {
            calls.add(new Call(m.group(1), strings(m.group(2))));
        }
        return calls;
    }

    /** What the conditions name between these two pieces of a pattern, for example after {@code has(}. */
    List<String> named(String regex) {
        return Pattern.compile(regex, Pattern.DOTALL)
                .matcher(when())
                .results()
                .map(r -> r.group(1))
                .toList();
    }

    /** Every quoted string of a piece of rule text. */
    static List<String> strings(String piece) {
        return QUOTED.matcher(piece)
                .results()
                .map(r -> r.group().substring(1, r.group().length() - 1).replace("\\\"", "\""))
                .toList();
    }

    private String bare() {
        return COMMENT.matcher(text).replaceAll("");
    }

    private String first(Pattern p, int group) {
        Matcher m = p.matcher(text);
        return m.find() ? m.group(group) : "";
    }

    private String between(String from, String to) {
        String[] after = bare().split(from, 2);
        return after.length < 2 ? "" : after[1].split(to, 2)[0];
    }

    @Override
    public String toString() {
        return file.toString();
    }
}
