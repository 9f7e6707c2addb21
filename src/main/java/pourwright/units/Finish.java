package pourwright.units;

import java.util.List;

/** The last step of every reading: sign, order, limits, and what is shown back. */
final class Finish {
    private static final double SEA_LEVEL_PA = 101325;

    private Finish() {}

    static Reading reading(Span given, boolean wasBare, Expect e) {
        boolean gauge = e.gauge() && e.dimension() == Dimension.PRESSURE;
        Span signed = gauge ? given.unsigned() : given;
        if (signed.low() > signed.high()) {
            return Sentences.order(number(signed.low(), signed), number(signed.high(), signed), e);
        }
        Span span = signed.widened();
        UnitDef unit = span.unit();
        double lowSi = unit.toSi(span.low());
        double typicalSi = unit.toSi(span.typical());
        double highSi = unit.toSi(span.high());
        String read = signed.typedAgain() + inOwnUnit(signed, e);
        if (!Double.isFinite(lowSi) || !Double.isFinite(highSi)) {
            return Sentences.outside(read, "", e);
        }
        if (e.dimension() == Dimension.PRESSURE && signed.low() < 0) {
            double leftPa = SEA_LEVEL_PA + typicalSi;
            String left = leftPa > 0 && !e.pot() ? Show.quantity(leftPa, "mbar", Dimension.PRESSURE) + " absolute" : "";
            return Sentences.belowZeroPressure(read, left, e);
        }
        if (e.dimension() == Dimension.TEMPERATURE && unit.toSi(signed.low()) < 0) {
            return Sentences.belowAbsoluteZero(read, e);
        }
        boolean clampable = span.about() && !span.range();
        boolean inside = e.fits(typicalSi) && (clampable || (e.fits(lowSi) && e.fits(highSi)));
        if (!inside) {
            return Sentences.outside(read, wasBare ? hint(signed, e) : "", e);
        }
        // "About" at the end of a range does not reach past it.
        if (clampable) {
            double least = e.own().toSi(e.min());
            double most = e.own().toSi(e.max());
            lowSi = Math.min(Math.max(lowSi, least), typicalSi);
            highSi = Math.max(Math.min(highSi, most), typicalSi);
            span = new Span(unit.fromSi(lowSi), span.typical(), unit.fromSi(highSi), unit, true, false, span.said());
        }
        double middle = span.range() ? lowSi + (highSi - lowSi) / 2 : typicalSi;
        return new Read(lowSi, middle, highSi, span.about(), span.range(), unit.shown(), span.echo() + note(span));
    }

    private static String number(double v, Span span) {
        return Show.joined(NumberText.echoed(v), span.unit());
    }

    /** In another unit than the limits are given in, both are shown. */
    private static String inOwnUnit(Span span, Expect e) {
        if (span.unit().symbol().equals(e.own().symbol())) {
            return "";
        }
        double own = e.own().fromSi(span.unit().toSi(span.typical()));
        return Double.isFinite(own) ? " (" + Show.joined(NumberText.shown(own), e.own()) + ")" : "";
    }

    /** A bare number that fits in another unit was probably meant in that. */
    private static String hint(Span bare, Expect e) {
        List<Span> fitting = Alternatives.fitting(bare, e);
        return fitting.isEmpty() ? "" : fitting.get(0).typedAgain();
    }

    /** A mil is a thousandth of an inch, and some say it for a millimetre: show which was taken. */
    private static String note(Span span) {
        UnitDef unit = span.unit();
        return !span.range() && (unit.symbol().equals("mil") || unit.symbol().equals("thou"))
                ? " ("
                        + Show.joined(
                                NumberText.shown(unit.toSi(span.typical()) * 1000),
                                UnitBook.need("mm", Dimension.LENGTH))
                        + ")"
                : "";
    }
}
