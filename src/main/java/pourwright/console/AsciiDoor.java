package pourwright.console;

import java.text.Normalizer;
import java.util.List;
import java.util.Map;

/** A door to a terminal that shows plain characters only: whatever else is said is spelled with them. */
public final class AsciiDoor extends DoorAround {
    private static final int ASCII = 128;
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻";
    private static final Map<Character, String> SPELLED = Map.ofEntries(
            Map.entry('·', "."),
            Map.entry('×', "x"),
            Map.entry('µ', "u"),
            Map.entry('μ', "u"),
            Map.entry('…', "..."),
            Map.entry('−', "-"),
            Map.entry('⁻', "-"),
            Map.entry('–', "-"),
            Map.entry('±', "+/-"),
            Map.entry('≥', "at least "),
            Map.entry('≤', "at most "),
            Map.entry('≈', "about "),
            Map.entry('∼', "about "),
            Map.entry('π', "pi"),
            Map.entry('ρ', "rho"),
            Map.entry('φ', "phi"),
            Map.entry('σ', "sigma"),
            Map.entry('∫', "integral of "),
            Map.entry('’', "'"),
            Map.entry('⁄', "/"));

    /** @param door the way to the terminal */
    public AsciiDoor(Door door) {
        super(door);
    }

    @Override
    public String ask(String prompt, List<String> words) {
        return door.ask(spelled(prompt).replace(Wrap.JOIN, ' '), words);
    }

    @Override
    public void say(String line) {
        String plain = spelled(line).replace(Wrap.JOIN, ' ');
        if (plain.length() <= width()) {
            door.say(plain);
            return;
        }
        // Spelling made it longer than the line: it is broken again, number and unit still together.
        String indent = " ".repeat(line.length() - line.stripLeading().length());
        Wrap.text(spelled(Wrap.joined(line.strip())), width(), indent, indent + "  ")
                .forEach(door::say);
    }

    /** The text with plain characters only: raised and lowered digits become digits, letters lose their accents. */
    static String spelled(String text) {
        if (text.chars().allMatch(c -> c < ASCII)) {
            return text;
        }
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean afterDigit = i > 0 && text.charAt(i - 1) >= '0' && text.charAt(i - 1) <= '9';
            if (c == '°') {
                // "20 °C" is "20 deg C", kept on one line; "45°" is "45 deg".
                boolean scale = i + 1 < text.length() && Character.isLetter(text.charAt(i + 1));
                out.append(afterDigit ? Wrap.JOIN + "deg" : "deg").append(scale ? String.valueOf(Wrap.JOIN) : "");
                continue;
            }
            if (afterDigit && RAISED.indexOf(c) >= 0) {
                // A power of a number must not read as more digits.
                out.append('^');
            }
            out.append(c < ASCII || c == Wrap.JOIN ? String.valueOf(c) : SPELLED.getOrDefault(c, basic(c)));
        }
        return out.toString();
    }

    private static String basic(char c) {
        String parts =
                Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKD).replace('⁄', '/');
        StringBuilder out = new StringBuilder();
        parts.chars().filter(p -> p < ASCII).forEach(p -> out.append((char) p));
        return out.isEmpty() && !Character.isSurrogate(c) && Character.getType(c) != Character.NON_SPACING_MARK
                ? "?"
                : out.toString();
    }
}
