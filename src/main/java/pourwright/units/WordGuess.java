package pourwright.units;

import java.util.List;

/**
 * Quantities given in words without a number. The figures are common practice; each is a range or an "about", so that nobody takes
 * a guess for a measurement.
 */
final class WordGuess {
    private WordGuess() {}

    /** The reading of the whole text, or null if it is not one of these words. */
    static Reading read(String typed, String clean, Expect e) {
        String word = bareWord(clean);
        return switch (e.dimension()) {
            case TIME -> time(typed, word, e);
            case LENGTH -> e.altitude() ? altitude(word, e) : null;
            case FRACTION -> damp(word, e);
            case VISCOSITY -> thickness(word, e);
            default -> null;
        };
    }

    private static Reading time(String typed, String word, Expect e) {
        return switch (word) {
            case "overnight",
                    "over night",
                    "left overnight",
                    "left it overnight",
                    "all night",
                    "until the next day",
                    "next day",
                    "the next day",
                    "till the next day",
                    "next morning",
                    "the next morning" -> range(12, 16, "h", e);
            case "24/7" -> Sentences.notUnderstood(typed, e);
            default -> null;
        };
    }

    private static Reading altitude(String word, Expect e) {
        return switch (word) {
            case "sea level", "at sea level", "sea", "coast", "at the coast", "on the coast", "by the sea" ->
                exact(0, "m", e);
            case "mountains", "up in the mountains", "in the mountains", "up a mountain", "high up" ->
                Sentences.mountains(List.of(metres(1000), metres(2000), metres(3000)));
            default -> null;
        };
    }

    private static String metres(double m) {
        return Show.quantity(m, "m", Dimension.LENGTH);
    }

    private static Reading damp(String word, Expect e) {
        return switch (word) {
            case "damp", "damp air" -> about(80, "%", e);
            case "humid", "muggy" -> about(75, "%", e);
            case "rainy", "rain", "raining", "wet" -> about(90, "%", e);
            case "dry" -> about(35, "%", e);
            default -> null;
        };
    }

    private static Reading thickness(String word, Expect e) {
        return switch (word) {
            case "water" -> about(1, "mPa·s", e);
            case "cream" -> range(10, 50, "mPa·s", e);
            case "motor oil", "engine oil", "car oil" -> range(200, 300, "mPa·s", e);
            case "honey", "runny honey" -> range(5000, 10000, "mPa·s", e);
            case "ketchup", "catsup" -> about(50000, "mPa·s", e);
            // A paste starts here and has no upper end but the question's own.
            case "paste", "thick paste" -> range(100000, Math.max(100000, Math.min(200000, most(e))), "mPa·s", e);
            default -> null;
        };
    }

    private static double most(Expect e) {
        return UnitBook.fromSi(e.own().toSi(e.max()), "mPa·s", Dimension.VISCOSITY);
    }

    /** Without "like", "as thick as" and a full stop. */
    private static String bareWord(String clean) {
        String word = clean.endsWith(".") ? clean.substring(0, clean.length() - 1) : clean;
        for (String lead : new String[] {
            "it is ",
            "it's ",
            "about ",
            "as thin as ",
            "thin as ",
            "as thick as ",
            "thick as ",
            "thick like ",
            "a bit like ",
            "like ",
            "a "
        }) {
            if (word.startsWith(lead)) {
                word = word.substring(lead.length());
            }
        }
        return word.strip();
    }

    private static Reading exact(double v, String unit, Expect e) {
        return Finish.reading(new Span(v, v, v, UnitBook.need(unit, e.dimension()), false, false), false, e);
    }

    private static Reading about(double v, String unit, Expect e) {
        return Finish.reading(new Span(v, v, v, UnitBook.need(unit, e.dimension()), true, false), false, e);
    }

    private static Reading range(double low, double high, String unit, Expect e) {
        return Finish.reading(
                new Span(low, (low + high) / 2, high, UnitBook.need(unit, e.dimension()), true, true), false, e);
    }
}
