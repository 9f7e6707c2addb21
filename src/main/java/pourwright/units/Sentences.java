package pourwright.units;

import java.util.List;

/** The sentences people read when an answer is not taken as it stands: what was read, what is accepted, one example. */
final class Sentences {
    private Sentences() {}

    static Bad empty(Expect e) {
        return bad("I read nothing. Give " + accepted(e), e);
    }

    static Bad tooLong(String typed, Expect e) {
        return bad("I read " + TypedText.quote(typed) + ", which is too long. Give " + accepted(e), e);
    }

    static Bad notUnderstood(String typed, Expect e) {
        return bad("I read " + TypedText.quote(typed) + ", but found no value in it. Give " + accepted(e), e);
    }

    static Bad tooLarge(String typed, Expect e) {
        return bad("I read " + TypedText.quote(typed) + ", which is no number I can use." + limits(e), e);
    }

    static Bad oneSided(String typed, Expect e) {
        return bad("I read " + TypedText.quote(typed) + ", which gives one end only. Give a value or both ends.", e);
    }

    static Bad otherKind(String typed, Dimension found, Expect e) {
        return bad(
                "I read " + TypedText.quote(typed) + ", which is " + found.kind() + ". Here I need " + accepted(e), e);
    }

    static Bad leftOver(String typed, String rest, Amount first, Expect e) {
        if (first.bare() && !rest.isEmpty() && (Character.isLetter(rest.charAt(0)) || rest.charAt(0) == '°')) {
            return bad(
                    "I read " + TypedText.quote(typed) + ", but do not know the unit " + TypedText.quote(rest)
                            + ". Give " + accepted(e),
                    e);
        }
        return bad(
                "I read " + TypedText.quote(typed) + ", but cannot place " + TypedText.quote(rest) + ". Give "
                        + accepted(e),
                e);
    }

    static Bad order(String low, String high, Expect e) {
        return bad(
                "I read a range from " + low + " to " + high + ", which runs backwards. Put the smaller value first.",
                e);
    }

    static Bad outside(String read, String hint, Expect e) {
        String meant = hint.isEmpty() ? "" : " Did you mean " + hint + "?";
        return bad("I read " + read + "." + limits(e) + meant, e);
    }

    static Bad belowZeroPressure(String read, String atSeaLevel, Expect e) {
        String same = atSeaLevel.isEmpty() ? "" : " At sea level that reading is about " + atSeaLevel + ".";
        return bad(
                "I read " + read
                        + ". A pressure counted from zero cannot be negative; this looks like a gauge reading. "
                        + "Give the absolute pressure, or give this as the gauge reading." + same,
                e);
    }

    static Bad belowAbsoluteZero(String read, Expect e) {
        return bad("I read " + read + ", which is colder than anything can be." + limits(e), e);
    }

    static Ask bare(String number, List<String> meanings) {
        String which = meanings.size() == 1 ? "Is it " : "Which is it: ";
        return new Ask("I read " + number + " without a unit. " + which + list(meanings) + "?", meanings);
    }

    static Ask clock(String typed, List<String> meanings) {
        return new Ask("I read " + TypedText.quote(typed) + ". Is that " + list(meanings) + "?", meanings);
    }

    /** "1 h 30 min", held together. */
    static String parts(double first, String unit, double second, String smaller) {
        char j = Show.JOIN;
        return NumberText.echoed(first) + j + unit + j + NumberText.echoed(second) + j + smaller;
    }

    static Ask belowAir(String read, List<String> meanings) {
        return new Ask(
                "I read " + read + ". Dials in that unit mostly count down from local air, and this needs the absolute "
                        + "pressure. At sea level it would be one of these: " + list(meanings) + ".",
                meanings);
    }

    static Ask fromLocalAir(String read, String meaning) {
        return new Ask(
                "I read " + read + ", counted from local air, and this needs the absolute pressure. At sea level it is "
                        + meaning + "; higher up it is less.",
                List.of(meaning));
    }

    static Ask absoluteOnPot(String read, String meaning) {
        return new Ask(
                "I read " + read + ", but a pot's gauge counts from local air. At sea level the gauge shows " + meaning
                        + ".",
                List.of(meaning));
    }

    static Ask percentVacuum(String read, String meaning) {
        return new Ask(
                "I read " + read + " vacuum, which depends on the local air. At sea level it is " + meaning + ".",
                List.of(meaning));
    }

    static Ask inches(String read, List<String> meanings) {
        return new Ask(
                "I read " + read + " inches. No vacuum is that deep in inches of mercury. Is it " + list(meanings)
                        + "?",
                meanings);
    }

    static Ask slashed(String typed, List<String> meanings) {
        String which = meanings.size() == 1 ? ". Is it " : ". Which is it: ";
        return new Ask("I read " + TypedText.quote(typed) + which + list(meanings) + "?", meanings);
    }

    static Ask mains(String read, int plateHz, int otherHz, String other) {
        return new Ask(
                "I read " + read + " at " + plateHz + Show.JOIN + "Hz. A pump turns with its mains. On " + plateHz
                        + Show.JOIN + "Hz take " + read + ", on " + otherHz + Show.JOIN + "Hz " + other + ".",
                List.of(read, other));
    }

    static Bad hardness(String typed, boolean scaled, Expect e) {
        String which = scaled ? "a hardness" : "a hardness without its scale, A, D or 00";
        return bad("I read " + TypedText.quote(typed) + ", which is " + which + ". Here I need " + accepted(e), e);
    }

    static Ask micrometres(String read, List<String> meanings) {
        return new Ask(
                "I read " + read + ". As a pressure, a micron is a thousandth of a torr. Is it " + list(meanings) + "?",
                meanings);
    }

    static Ask mils(String number, List<String> meanings) {
        return new Ask(
                "I read " + number + Show.JOIN + "mil. To some that is a thousandth of an inch, to others a "
                        + "millimetre. Which is it: " + list(meanings) + "?",
                meanings);
    }

    static Ask ounces(String read, Dimension wanted, List<String> meanings) {
        String which = meanings.size() == 1 ? "Is it " : "Which is it: ";
        return new Ask(
                "I read " + read + ". An ounce can be a weight or a measure of liquid. Here I need " + wanted.kind()
                        + ". " + which + list(meanings) + "?",
                meanings);
    }

    static Bad nearlyPerfect(String read, Expect e) {
        return bad(
                "I read " + read + ", counted from local air. So near to perfect, a dial cannot tell what is left. "
                        + "Give the absolute pressure",
                e);
    }

    static Ask mountains(List<String> meanings) {
        return new Ask("How high up? A rough height will do: " + list(meanings) + ".", meanings);
    }

    static String accepted(Expect e) {
        Dimension d = e.dimension();
        if (d == Dimension.NUMBER) {
            return "a plain number";
        }
        return d.kind() + " in " + d.usualUnits();
    }

    static String list(List<String> items) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < items.size(); i++) {
            out.append(i == 0 ? "" : i == items.size() - 1 ? " or " : ", ").append(items.get(i));
        }
        return out.toString();
    }

    private static String limits(Expect e) {
        boolean low = e.min() > Double.NEGATIVE_INFINITY;
        boolean high = e.max() < Double.POSITIVE_INFINITY;
        if (!low && !high) {
            return "";
        }
        UnitDef own = e.own();
        if (low && high) {
            return " This takes " + NumberText.echoed(e.min()) + " to " + Show.joined(NumberText.echoed(e.max()), own)
                    + ".";
        }
        return low
                ? " This takes " + Show.joined(NumberText.echoed(e.min()), own) + " or more."
                : " This takes " + Show.joined(NumberText.echoed(e.max()), own) + " or less.";
    }

    /** Ends the sentence, and names one answer that would be taken. */
    private static Bad bad(String sentence, Expect e) {
        char last = sentence.charAt(sentence.length() - 1);
        String ended = last == '.' || last == '?' ? sentence : sentence + ".";
        boolean none = e.example() == null || e.example().isBlank();
        return new Bad(none ? ended : ended + " Example: " + e.example().replace(' ', Show.JOIN) + ".");
    }
}
