package pourwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** The sentences about mix ratios: refusals, and the questions back where a ratio could be mixed wrongly. */
final class RatioWords {
    private static final String EXAMPLE = " Give two parts, for example 10:1 or 100:90 by weight.";

    private RatioWords() {}

    static Bad bad(String typed, String why) {
        return new Bad("I read " + TypedText.quote(typed) + ", " + why + EXAMPLE);
    }

    static Bad nothing() {
        return new Bad("I read nothing." + EXAMPLE);
    }

    static Ask drops(String typed) {
        return new Ask(
                "I read " + TypedText.quote(typed)
                        + ". Drops differ from bottle to bottle, so weigh them: 1 % of 30 g is 0.3 g. "
                        + "How much by weight?",
                List.of("1 % by weight", "1.5 % by weight", "2 % by weight"));
    }

    static Bad thirdPart(String typed) {
        return bad(
                typed,
                "which names an accelerator. That is a third part: never let it meet the peroxide. "
                        + "Here I need the resin and its hardener.");
    }

    static Ask percentOfWhat(String share, String kind) {
        List<String> meanings = List.of(share + " of base" + kind, share + " of total" + kind);
        return new Ask("I read " + share + ". Is that " + Sentences.list(meanings) + "?", meanings);
    }

    static Ask whichCan(String typed, double a, double b, String kind) {
        String first = NumberText.echoed(a);
        String second = NumberText.echoed(b);
        List<String> meanings = List.of(
                first + " base : " + second + " hardener" + kind,
                first + " hardener : " + second + " base" + kind,
                first + ":" + second + kind);
        return new Ask(
                "I read " + TypedText.quote(typed)
                        + ". Makers differ in which can is A. The hardener's label says hardener, "
                        + "catalyst, peroxide or isocyanate. Take the last where the cans say only A and B.",
                meanings);
    }

    /** A rough figure: mixing wants the exact one. */
    static Ask rough(String typed, String exact) {
        return new Ask(
                "I read " + TypedText.quote(typed) + ". A mix is weighed exactly, as the label says. Is it " + exact
                        + "?",
                List.of(exact));
    }

    /** A range: mixing wants one value of it. */
    @SafeVarargs
    static Ask oneOf(String typed, double low, double high, DoubleFunction<String>... texts) {
        List<String> meanings = new ArrayList<>();
        for (DoubleFunction<String> text : texts) {
            for (double v : new double[] {low, low + (high - low) / 2, high}) {
                meanings.add(text.apply(v));
            }
        }
        return new Ask(
                "I read " + TypedText.quote(typed) + ". A mix is weighed to one value. Which do you take?", meanings);
    }
}
