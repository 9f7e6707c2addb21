package pourwright.units;

import java.util.ArrayList;
import java.util.List;

/** The units a number without one could have been meant in. */
final class Alternatives {
    private static final int MOST = 4;

    /** A dial for vacuum shows no more than one atmosphere, on the best day at the lowest place; common practice. */
    private static final double DEEPEST_PA = 110000;

    private Alternatives() {}

    /** The readings that lie in the question's range, the question's own unit first. */
    static List<Span> fitting(Span bare, Expect e) {
        List<Span> out = new ArrayList<>();
        UnitDef own = e.own();
        add(out, bare.withUnit(own), e);
        for (String symbol : others(e, own)) {
            if (!symbol.equals(own.symbol()) && out.size() < MOST) {
                add(out, bare.withUnit(UnitBook.need(symbol, e.dimension())), e);
            }
        }
        return out;
    }

    private static void add(List<Span> out, Span span, Expect e) {
        double highSi = span.unit().toSi(span.high());
        boolean possible = !(e.dimension() == Dimension.PRESSURE && e.gauge() && !e.pot()) || highSi <= DEEPEST_PA;
        if (possible && e.fits(span.unit().toSi(span.low())) && e.fits(highSi)) {
            out.add(span);
        }
    }

    private static String[] others(Expect e, UnitDef own) {
        return switch (e.dimension()) {
            case TIME -> new String[] {"min", "h", "s"};
            case MASS -> new String[] {"g", "kg", "oz", "lb"};
            case VOLUME -> new String[] {"mL", "L", "US fl oz", "US gal"};
            case LENGTH -> own.symbol().equals("m") ? new String[] {"m", "ft"} : new String[] {"mm", "cm", "in"};
            case PRESSURE ->
                e.pot()
                        ? new String[] {"bar", "psi"}
                        : e.gauge()
                                ? new String[] {"inHg", "bar", "mbar", "kPa", "torr"}
                                : e.outsideAir()
                                        ? new String[] {"mbar", "inHg", "kPa", "torr"}
                                        : new String[] {"mbar", "torr", "kPa"};
            case TEMPERATURE -> new String[] {"°C", "°F"};
            case FLOW -> new String[] {"L/s", "cfm", "L/min", "m³/h"};
            case CONDUCTANCE -> new String[] {"L/s", "L/min", "m³/h"};
            case LEAK -> new String[] {"mbar L/s"};
            case VISCOSITY -> new String[] {"Pa·s", "mPa·s"};
            case DENSITY -> new String[] {"kg/m³", "g/mL"};
            default -> new String[0];
        };
    }
}
