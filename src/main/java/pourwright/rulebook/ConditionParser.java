package pourwright.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the conditions of a rule. It knows the few patterns that rules use, and refuses any other. */
final class ConditionParser {
    private static final Pattern TOKEN =
            Pattern.compile("\\s*(\"(?:[^\"\\\\]|\\\\.)*\"|\\$?\\w+|==|!=|\\|\\||[(),:!.]|\\S)");

    private final List<String> tokens = new ArrayList<>();
    private int at;

    private ConditionParser(String text) {
        Matcher m = TOKEN.matcher(text);
        while (m.find()) {
            tokens.add(m.group(1));
        }
    }

    /**
     * The conditions in the order they stand.
     *
     * @throws IllegalArgumentException naming the piece that is no known pattern
     */
    static List<Condition> parse(String when) {
        ConditionParser p = new ConditionParser(when);
        List<Condition> all = new ArrayList<>();
        while (p.at < p.tokens.size()) {
            all.add(p.condition());
        }
        return List.copyOf(all);
    }

    private Condition condition() {
        if (takes("not")) {
            return new Condition.Not(group());
        }
        // That there is one is what a pattern says anyway.
        takes("exists");
        return fact();
    }

    private List<Condition> group() {
        if (!peek().equals("(")) {
            return List.of(fact());
        }
        expect("(");
        List<Condition> all = new ArrayList<>(List.of(condition()));
        while (takes("and")) {
            all.add(condition());
        }
        expect(")");
        return all;
    }

    private Condition.Fact fact() {
        String bind = "";
        if (peek().startsWith("$")) {
            bind = next();
            expect(":");
        }
        String type = next();
        if (!type.matches("[A-Z]\\w*")) {
            throw unknown(type);
        }
        List<Condition.Test> tests = new ArrayList<>();
        expect("(");
        while (!takes(")")) {
            tests.add(any());
            takes(",");
        }
        return new Condition.Fact(bind, type, tests);
    }

    private Condition.Test any() {
        List<Condition.Test> some = new ArrayList<>(List.of(one()));
        while (takes("||")) {
            some.add(one());
        }
        return some.size() == 1 ? some.get(0) : new Condition.Any(some);
    }

    private Condition.Test one() {
        boolean not = takes("!");
        String word = next();
        String of = "";
        if (takes(".")) {
            of = word;
            word = next();
        }
        if (!(word + of).matches("[$\\w]+")) {
            throw unknown(word);
        }
        if (peek().equals("(")) {
            return call(of, word, not);
        }
        if (takes("==")) {
            return new Condition.OneOf(word, false, List.of(string()));
        }
        if (takes("!=")) {
            return new Condition.OneOf(word, true, List.of(string()));
        }
        boolean none = takes("not");
        if (takes("in")) {
            return new Condition.OneOf(word, none, strings());
        }
        return new Condition.Is(of, word, "", "", not);
    }

    private Condition.Is call(String of, String word, boolean not) {
        expect("(");
        String argument = "";
        String other = "";
        if (peek().startsWith("\"")) {
            argument = string();
        } else {
            other = next();
        }
        expect(")");
        boolean no = not;
        if (takes("==")) {
            String is = next();
            if (!is.equals("false") && !is.equals("true")) {
                throw unknown(is);
            }
            no = not != is.toLowerCase(Locale.ROOT).equals("false");
        }
        return new Condition.Is(of, word, argument, other, no);
    }

    private List<String> strings() {
        expect("(");
        List<String> all = new ArrayList<>(List.of(string()));
        while (takes(",")) {
            all.add(string());
        }
        expect(")");
        return all;
    }

    private String string() {
        String quoted = next();
        if (!quoted.startsWith("\"")) {
            throw unknown(quoted);
        }
        return quoted.substring(1, quoted.length() - 1);
    }

    private String peek() {
        return at < tokens.size() ? tokens.get(at) : "";
    }

    private String next() {
        String token = peek();
        at++;
        return token;
    }

    private boolean takes(String token) {
        boolean there = peek().equals(token);
        at += there ? 1 : 0;
        return there;
    }

    private void expect(String token) {
        if (!takes(token)) {
            throw unknown(peek());
        }
    }

    private static IllegalArgumentException unknown(String token) {
        return new IllegalArgumentException("a condition cannot be read at '" + token + "'");
    }
}
