package pourwright.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Holds what was typed against what the question takes: units left out, gauges, traps, limits. */
final class Resolver {
    /** A bare negative figure of this size or less on a gauge is in bar: no gauge shows more below local air. Common practice. */
    private static final double BARE_BAR = 1.02;

    /** More inches of mercury than any barometer at sea level shows. */
    private static final double MOST_INHG = 31;

    /** Spellings that name an inch and leave open of what. */
    private static final Set<String> INCHES = Set.of("in", "ins", "inch", "inches", "\"", "''");

    /** Units in which the pressure left is mostly meant, even where "vacuum" is said. */
    private static final Set<String> WHAT_IS_LEFT = Set.of("torr", "mmHg", "mtorr", "micron");

    /** A dial is right to 0.3 inHg at best; common practice. */
    private static final double DIAL_ERROR_PA = 1000;

    private static final double SEA_LEVEL_PA = 101325;

    /** A room question takes a bare figure in these ranges without asking; common practice. */
    private static final double ROOM_LOW_C = 10;

    private static final double ROOM_HIGH_C = 30;
    private static final double ROOM_LOW_F = 50;
    private static final double ROOM_HIGH_F = 100;

    private final String typed;
    private final Typed shape;
    private final Expect e;

    Resolver(String typed, Typed shape, Expect e) {
        this.typed = typed;
        this.shape = shape;
        this.e = e;
    }

    Reading resolve() {
        if (!shape.finite()) {
            return Sentences.tooLarge(typed, e);
        }
        Reading share = share();
        if (share != null) {
            return share;
        }
        Span span = span();
        if (!span.finite()) {
            return Sentences.tooLarge(typed, e);
        }
        if (shape.first().bare()) {
            return bare(span);
        }
        Reading asked = shape.confirmed() || e.bareAccepted() ? null : UnitTraps.asked(shape, span, e);
        return asked == null ? pressureTraps(span) : asked;
    }

    /** A percentage where it is not a share: "98 % vacuum", or a unit of another kind. */
    private Reading share() {
        boolean percentFirst = shape.first().key().equals("%") && e.dimension() != Dimension.FRACTION;
        boolean percentSecond =
                shape.second() != null && shape.second().key().equals("%") && e.dimension() != Dimension.FRACTION;
        if (!percentFirst) {
            return percentSecond && !shape.tolerancePercent()
                    ? Sentences.otherKind(typed, Dimension.FRACTION, e)
                    : null;
        }
        double share = shape.first().value() / 100;
        if (shape.form() != Typed.Form.VALUE
                || e.dimension() != Dimension.PRESSURE
                || e.pot()
                || share < 0
                || share > 1) {
            return Sentences.otherKind(typed, Dimension.FRACTION, e);
        }
        if (!e.fits(SEA_LEVEL_PA * (e.gauge() ? share : 1 - share))) {
            return Sentences.otherKind(typed, Dimension.FRACTION, e);
        }
        String read = Show.joined(
                NumberText.echoed(shape.first().value()), shape.first().unit());
        return Sentences.percentVacuum(
                read, e.gauge() ? inHg(SEA_LEVEL_PA * share) : absolute(SEA_LEVEL_PA * (1 - share)));
    }

    /** Both ends in one unit. A bare amount stands in the question's own unit until it is looked at. */
    private Span span() {
        Amount a = shape.first();
        Amount b = shape.second();
        UnitDef unit = b != null && !b.bare() && !shape.tolerancePercent() && shape.form() == Typed.Form.RANGE
                ? b.unit()
                : a.bare() ? e.own() : a.unit();
        boolean about = shape.about();
        double first = in(unit, a);
        if (b == null) {
            return new Span(first, first, first, unit, about, false, a.said());
        }
        if (shape.form() == Typed.Form.TOLERANCE) {
            double by =
                    Math.abs(shape.tolerancePercent() ? first * b.value() / 100 : b.bare() ? b.value() : step(unit, b));
            return new Span(first - by, first, first + by, unit, about, false, a.said());
        }
        if (shape.form() == Typed.Form.ENDS) {
            return new Span(in(unit, b), first, in(unit, shape.third()), unit, about, false, a.said());
        }
        double second = in(unit, b);
        if (first == second) {
            return new Span(first, first, first, unit, about, false, b.said());
        }
        return new Span(first, first + (second - first) / 2, second, unit, about, true, saidRange(a, b));
    }

    /** A range whose ends are in two units is shown back in both. */
    private static String saidRange(Amount low, Amount high) {
        boolean plain = low.bare()
                || high.bare()
                || low.said() == null && high.said() == null && low.unit().equals(high.unit());
        return plain ? null : low.shown() + " to " + high.shown();
    }

    private static double in(UnitDef unit, Amount a) {
        boolean same = a.bare() || a.unit().symbol().equals(unit.symbol());
        return same ? a.value() : unit.fromSi(a.unit().toSi(a.value()));
    }

    private static double step(UnitDef unit, Amount a) {
        return a.unit().equals(unit) ? a.value() : a.unit().stepSi(a.value()) / unit.stepSi(1);
    }

    private Reading bare(Span span) {
        if (e.dimension() == Dimension.NUMBER || e.bareAccepted() || zero(span)) {
            return finish(span, true);
        }
        if (e.dimension() == Dimension.TEMPERATURE && e.room()) {
            Reading room = room(span);
            if (room != null) {
                return room;
            }
        }
        if (e.dimension() == Dimension.PRESSURE && (e.gauge() || e.level()) && span.low() < 0 && span.high() <= 0) {
            double deepest = Math.abs(span.low());
            String unit = deepest <= BARE_BAR ? "bar" : deepest <= MOST_INHG ? "inHg" : "mbar";
            Span dial = span.withUnit(UnitBook.need(unit, Dimension.PRESSURE));
            if (e.level()) {
                return pressureTraps(dial);
            }
            if (!unit.equals("mbar")) {
                return finish(dial, false);
            }
        }
        List<Span> fitting = Alternatives.fitting(signless(span), e);
        if (fitting.isEmpty() || signless(span).low() > signless(span).high()) {
            return finish(span, true);
        }
        boolean ownOnly = fitting.size() == 1
                && fitting.get(0).unit().symbol().equals(e.own().symbol());
        if (ownOnly && e.dimension() != Dimension.TEMPERATURE) {
            return finish(span, true);
        }
        // What is put into a mould, an oven or a cup can be in either scale: ask even where only one of them fits.
        List<String> meanings = new ArrayList<>();
        for (Span s : fitting) {
            meanings.add(UnitTraps.plain(s));
        }
        return Sentences.bare(TypedText.quote(typed), meanings);
    }

    /** Nought is the same in every unit but those of temperature. */
    private static boolean zero(Span span) {
        return span.low() == 0 && span.high() == 0 && span.unit().scale() == UnitDef.Scale.LINEAR;
    }

    private Reading room(Span span) {
        if (span.low() >= ROOM_LOW_C && span.high() <= ROOM_HIGH_C) {
            return finish(span.withUnit(UnitBook.need("°C", Dimension.TEMPERATURE)), true);
        }
        if (span.low() >= ROOM_LOW_F && span.high() <= ROOM_HIGH_F) {
            return finish(span.withUnit(UnitBook.need("°F", Dimension.TEMPERATURE)), false);
        }
        return null;
    }

    private Span signless(Span span) {
        return e.gauge() && e.dimension() == Dimension.PRESSURE ? span.unsigned() : span;
    }

    private Reading pressureTraps(Span span) {
        if (e.dimension() != Dimension.PRESSURE) {
            return finish(span, false);
        }
        UnitDef unit = span.unit();
        boolean inches = INCHES.contains(shape.first().key());
        if (inches && Math.abs(span.high()) > MOST_INHG && !e.pot()) {
            Span water = signless(span).withUnit(UnitBook.need("inH₂O", Dimension.PRESSURE));
            return fits(water)
                    ? Sentences.inches(NumberText.echoed(Math.abs(span.typical())), List.of(water.typedAgain()))
                    : finish(span, false);
        }
        if (e.pot() && unit.absolute()) {
            double gaugePa = unit.toSi(span.typical()) - SEA_LEVEL_PA;
            UnitDef plain = UnitBook.need(unit.symbol(), Dimension.PRESSURE);
            return gaugePa <= 0 || !e.fits(gaugePa)
                    ? finish(span, false)
                    : Sentences.absoluteOnPot(
                            span.typedAgain(), Show.quantity(gaugePa, plain.symbol(), Dimension.PRESSURE));
        }
        if (e.level() && span.high() <= 0 && span.low() < 0 && !unit.absolute()) {
            return leftFits(span.unsigned()) ? fromLocalAir(span.unsigned(), span.typedAgain()) : finish(span, false);
        }
        if (!e.level() || span.low() < 0 || span.low() > span.high()) {
            return finish(span, false);
        }
        if (unit.gauge() || (shape.vacuum() && !unit.absolute())) {
            return fromLocalAir(span, span.typedAgain());
        }
        if (unit.symbol().equals("inHg") && !unit.absolute()) {
            return inchesOnLevel(span);
        }
        return finish(span, false);
    }

    /** "980 mbar vacuum" is counted down from local air; "vacuum 25 mmHg" can be that or what is left. */
    private Reading fromLocalAir(Span span, String read) {
        if (nearlyPerfect(span)) {
            return Sentences.nearlyPerfect(read, e);
        }
        if (!leftFits(span)) {
            return finish(span, false);
        }
        List<String> meanings = new ArrayList<>();
        meanings.add(left(span));
        UnitDef unit = span.unit();
        if (WHAT_IS_LEFT.contains(unit.symbol())) {
            addAbsolute(meanings, span);
        }
        return meanings.size() > 1 ? Sentences.belowAir(read, meanings) : Sentences.fromLocalAir(read, meanings.get(0));
    }

    /** 29 inHg is mostly 29 below local air, but a barometer is read in the same unit: ask where both fit. */
    private Reading inchesOnLevel(Span span) {
        if (nearlyPerfect(span)) {
            return Sentences.nearlyPerfect(span.typedAgain(), e);
        }
        if (!leftFits(span)) {
            return finish(span, false);
        }
        List<String> meanings = new ArrayList<>();
        meanings.add(left(span));
        addAbsolute(meanings, span);
        return Sentences.belowAir(span.typedAgain(), meanings);
    }

    private void addAbsolute(List<String> meanings, Span span) {
        if (fits(span)) {
            UnitDef absolute = UnitBook.need(span.unit().symbol() + " abs", Dimension.PRESSURE);
            meanings.add(span.withUnit(absolute).typedAgain());
        }
    }

    /** Within a dial's own error of no air at all, where what is left cannot be told from the reading. */
    private boolean nearlyPerfect(Span span) {
        double leastPa = SEA_LEVEL_PA - span.unit().toSi(span.high());
        return !e.outsideAir() && Math.abs(leastPa) < DIAL_ERROR_PA;
    }

    private boolean fits(Span span) {
        return e.fits(span.unit().toSi(span.low())) && e.fits(span.unit().toSi(span.high()));
    }

    private boolean leftFits(Span span) {
        double least = SEA_LEVEL_PA - span.unit().toSi(span.high());
        return least > 0 && e.fits(least) && e.fits(SEA_LEVEL_PA - span.unit().toSi(span.low()));
    }

    /** What is left at sea level of a reading below local air, as it could be typed. */
    private static String left(Span span) {
        double leastPa = SEA_LEVEL_PA - span.unit().toSi(span.high());
        double mostPa = SEA_LEVEL_PA - span.unit().toSi(span.low());
        String most = absolute(mostPa);
        return span.low() == span.high() ? most : NumberText.shown(leastPa / 100) + " to " + most;
    }

    private static String absolute(double pa) {
        return Show.quantity(pa, "mbar", Dimension.PRESSURE) + Show.JOIN + "abs";
    }

    private static String inHg(double pa) {
        return Show.quantity(pa, "inHg", Dimension.PRESSURE);
    }

    /** The last step for every reading: sign, order, limits, and what is shown back. */
    private Reading finish(Span given, boolean wasBare) {
        return Finish.reading(given, wasBare, e);
    }
}
