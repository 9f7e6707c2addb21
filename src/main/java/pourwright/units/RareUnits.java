package pourwright.units;

import java.util.Optional;
import java.util.regex.Pattern;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.format.MeasurementParseException;
import tech.units.indriya.format.SimpleUnitFormat;
import tech.units.indriya.unit.Units;

/**
 * Units that nobody at a bench usually types but that are right all the same, such as dag, hl or dm³: read by the
 * public units library (JSR 385). The usual ones have a table of their own, because loading the library would double
 * the start; the tests hold that table against the library, unit by unit.
 */
final class RareUnits {
    private static final Pattern WORD = Pattern.compile("[\\p{L}µ][\\p{L}µ0-9²³/*·^.-]{0,11}");

    private RareUnits() {}

    /** The unit a word names in the library, if it measures that dimension and has no zero of its own. */
    static Optional<UnitDef> find(String word, Dimension d) {
        Unit<?> si = systemUnit(d);
        if (si == null || !WORD.matcher(word).matches()) {
            return Optional.empty();
        }
        try {
            Unit<?> unit = SimpleUnitFormat.getInstance().parse(word);
            if (!unit.isCompatible(si)) {
                return Optional.empty();
            }
            UnitConverter to = unit.getConverterToAny(si);
            double factor = to.convert(1.0);
            boolean usable = to.isLinear() && factor > 0 && Double.isFinite(factor);
            return usable ? Optional.of(new UnitDef(word, d, factor, 1, UnitDef.Scale.LINEAR, "")) : Optional.empty();
        } catch (MeasurementParseException | IncommensurableException | IllegalArgumentException e) {
            return Optional.empty();
        } catch (UnsupportedOperationException | IndexOutOfBoundsException e) {
            // The library's parser answers some broken words this way.
            return Optional.empty();
        }
    }

    private static Unit<?> systemUnit(Dimension d) {
        return switch (d) {
            case TIME -> Units.SECOND;
            case MASS -> Units.KILOGRAM;
            case VOLUME -> Units.CUBIC_METRE;
            case LENGTH -> Units.METRE;
            case PRESSURE -> Units.PASCAL;
            case FORCE -> Units.NEWTON;
            case VISCOSITY -> Units.PASCAL.multiply(Units.SECOND);
            case DENSITY -> Units.KILOGRAM.divide(Units.CUBIC_METRE);
            case FLOW, CONDUCTANCE -> Units.CUBIC_METRE.divide(Units.SECOND);
            default -> null;
        };
    }
}
