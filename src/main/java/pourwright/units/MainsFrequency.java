package pourwright.units;

/**
 * "3 cfm at 60 Hz": an induction motor turns with the mains, and the pump's speed with it. The plate may not name the
 * mains of the shop, so it is asked. The speed is in proportion to the frequency: common practice.
 */
final class MainsFrequency {
    private static final int EUROPE_HZ = 50;
    private static final int AMERICA_HZ = 60;

    private MainsFrequency() {}

    /** The question which mains it is, or null where no frequency stands behind a pump speed. */
    static Reading read(String clean, Expect e) {
        if (e.dimension() != Dimension.FLOW) {
            return null;
        }
        for (int plateHz : new int[] {EUROPE_HZ, AMERICA_HZ}) {
            String before = cut(clean, plateHz);
            if (before != null && QuantityReader.grammar(before, before, e) instanceof Read r) {
                return asked(r, plateHz, e);
            }
        }
        return null;
    }

    private static Reading asked(Read r, int plateHz, Expect e) {
        int otherHz = EUROPE_HZ + AMERICA_HZ - plateHz;
        double share = (double) otherHz / plateHz;
        if (!e.fits(r.lowSi() * share) || !e.fits(r.highSi() * share)) {
            return null;
        }
        UnitDef unit = UnitBook.need(r.unit(), e.dimension());
        Span other = new Span(
                unit.fromSi(r.lowSi()) * share,
                unit.fromSi(r.typicalSi()) * share,
                unit.fromSi(r.highSi()) * share,
                unit,
                false,
                r.lowSi() < r.highSi());
        return Sentences.mains(r.echo(), plateHz, otherHz, other.rounded());
    }

    /** The text without "at 60 Hz" at its end, or null. */
    private static String cut(String clean, int hz) {
        String text = clean.endsWith(")") ? clean.substring(0, clean.length() - 1) : clean;
        for (String end : new String[] {hz + " hz", hz + "hz"}) {
            if (text.endsWith(end)) {
                String before = text.substring(0, text.length() - end.length()).strip();
                for (String joint : new String[] {"(at", "(", " at", "@", " on", ",", "/"}) {
                    if (before.endsWith(joint)) {
                        return before.substring(0, before.length() - joint.length())
                                .strip();
                    }
                }
                return before;
            }
        }
        return null;
    }
}
