package pourwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Words that two trades use for two units: what was typed is asked about, with each meaning ready to be taken. */
final class UnitTraps {
    private static final Set<String> MIL = Set.of("mil", "mils", "mill", "mills");
    private static final Set<String> OUNCE = Set.of("oz", "ozs", "ounce", "ounces");
    private static final Set<String> MICROMETRE =
            Set.of("um", "micrometre", "micrometres", "micrometer", "micrometers");

    private UnitTraps() {}

    /** The question to ask, or null where the unit can mean but one thing. */
    static Reading asked(Typed shape, Span span, Expect e) {
        String key = shape.second() == null || shape.tolerancePercent()
                ? shape.first().key()
                : shape.second().key();
        return switch (e.dimension()) {
            case LENGTH -> MIL.contains(key) ? mil(span, e) : null;
            case MASS -> OUNCE.contains(key) ? weight(span, e) : null;
            case VOLUME -> OUNCE.contains(key) ? measure(span, e) : null;
            case PRESSURE -> MICROMETRE.contains(key) ? micrometre(span, e) : null;
            default -> null;
        };
    }

    /** As it can be typed without being asked about again. */
    static String plain(Span span) {
        boolean ounces = span.unit().dimension() == Dimension.MASS
                && span.unit().symbol().equals("oz")
                && span.said() == null;
        return span.typedAgain() + (ounces ? Show.JOIN + "weight" : "");
    }

    private static Reading mil(Span span, Expect e) {
        List<String> meanings = new ArrayList<>();
        fitting(meanings, span.withUnit(UnitBook.need("thou", Dimension.LENGTH)), e);
        fitting(meanings, span.withUnit(UnitBook.need("mm", Dimension.LENGTH)), e);
        return meanings.size() < 2 ? null : Sentences.mils(numbers(span), meanings);
    }

    private static Reading weight(Span span, Expect e) {
        List<String> meanings = new ArrayList<>();
        fitting(meanings, span, e);
        return meanings.isEmpty() ? null : Sentences.ounces(span.typedAgain(), e.dimension(), meanings);
    }

    private static Reading measure(Span span, Expect e) {
        List<String> meanings = new ArrayList<>();
        fitting(meanings, span.withUnit(UnitBook.need("US fl oz", Dimension.VOLUME)), e);
        fitting(meanings, span.withUnit(UnitBook.need("UK fl oz", Dimension.VOLUME)), e);
        return meanings.isEmpty() ? null : Sentences.ounces(numbers(span) + Show.JOIN + "oz", e.dimension(), meanings);
    }

    private static Reading micrometre(Span span, Expect e) {
        List<String> meanings = new ArrayList<>();
        fitting(meanings, span, e);
        return meanings.isEmpty() ? null : Sentences.micrometres(numbers(span) + Show.JOIN + "µm", meanings);
    }

    private static void fitting(List<String> meanings, Span span, Expect e) {
        UnitDef unit = span.unit();
        if (span.low() <= span.high() && e.fits(unit.toSi(span.low())) && e.fits(unit.toSi(span.high()))) {
            meanings.add(plain(span));
        }
    }

    private static String numbers(Span span) {
        String high = NumberText.echoed(span.high());
        return span.low() == span.high() ? high : NumberText.echoed(span.low()) + " to " + high;
    }
}
