package pourwright.units;

import java.util.ArrayList;
import java.util.List;

/**
 * "30/40 min" is thirty to forty minutes to some and three quarters of one by the rule of fractions: asked about. A
 * fraction people mean has a small lower number, or a power of two as on an inch rule. Common practice.
 */
final class SlashedRange {
    private static final int LEAST = 10;

    private SlashedRange() {}

    /** The two meanings, or null where the text is no such thing. */
    static Reading read(String typed, String clean, Expect e) {
        Cursor c = new Cursor(clean);
        boolean about = AboutWords.before(c);
        c.spaces();
        double first = whole(c);
        if (Double.isNaN(first) || c.peek(0) != '/') {
            return null;
        }
        c.at++;
        double second = whole(c);
        boolean range = first >= LEAST && second > first && Long.bitCount((long) second) > 1;
        if (!range || Cursor.digit(c.peek(0)) || c.peek(0) == '/') {
            return null;
        }
        String lead = about ? "about " : "";
        String unit = c.rest();
        List<String> meanings = new ArrayList<>();
        add(meanings, lead + NumberText.echoed(first) + " to " + NumberText.echoed(second) + " " + unit, e);
        add(meanings, lead + NumberText.echoed(first / second) + " " + unit, e);
        return meanings.isEmpty() ? null : Sentences.slashed(typed, meanings);
    }

    private static void add(List<String> meanings, String text, Expect e) {
        Reading r = QuantityReader.grammar(text, TypedText.clean(text), e);
        if (r instanceof Read read) {
            meanings.add(read.echo());
        } else if (r instanceof Ask ask) {
            meanings.addAll(ask.meanings());
        }
    }

    private static double whole(Cursor c) {
        int from = c.at;
        while (Cursor.digit(c.peek(0)) && c.at - from < 6) {
            c.at++;
        }
        return c.at == from ? Double.NaN : Double.parseDouble(c.text.substring(from, c.at));
    }
}
