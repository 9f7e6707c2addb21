package pourwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MOLE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.SECOND;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Unit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tech.units.indriya.AbstractUnit;

/**
 * Every unit of the table against the same unit built with a public units library from base units and whole-number ratios. The
 * library is the oracle only: loading it takes longer than the rest of the program's start.
 */
class JsrUnitsTest {
    private static final double ROUNDING = 4e-16;

    @TestFactory
    Iterable<DynamicTest> everyLinearUnitAgreesWithTheLibrary() {
        Map<String, Unit<?>> library = library();
        java.util.List<DynamicTest> tests = new java.util.ArrayList<>();
        for (UnitDef u : UnitTable.ALL) {
            if (u.scale() != UnitDef.Scale.LINEAR) {
                continue;
            }
            String name = u.dimension().id() + " " + u.symbol();
            tests.add(DynamicTest.dynamicTest(name, () -> {
                Unit<?> same = library.get(name);
                assertThat(same).as("a library unit for " + name).isNotNull();
                double expected = same.getSystemUnit().equals(same)
                        ? 1
                        : ((AbstractUnit<?>) same)
                                .getSystemConverter()
                                .convert((Number) 1)
                                .doubleValue();
                assertThat(u.toSi(1)).isCloseTo(expected, within(expected * ROUNDING));
            }));
        }
        return tests;
    }

    private static Map<String, Unit<?>> library() {
        Map<String, Unit<?>> m = new LinkedHashMap<>();
        Unit<?> minute = SECOND.multiply(60);
        Unit<?> hour = minute.multiply(60);
        Unit<?> inch = METRE.multiply(254).divide(10000);
        Unit<?> foot = inch.multiply(12);
        Unit<?> pound = KILOGRAM.multiply(45359237).divide(100000000);
        Unit<?> m3 = METRE.pow(3);
        Unit<?> litre = m3.divide(1000);
        Unit<?> usGal = inch.pow(3).multiply(231);
        Unit<?> ukGal = litre.multiply(454609).divide(100000);
        Unit<?> kgf = NEWTON.multiply(980665).divide(100000);
        Unit<?> lbf = NEWTON.multiply(980665).divide(100000).multiply(45359237).divide(100000000);
        Unit<?> atm = PASCAL.multiply(101325);
        Unit<?> torr = atm.divide(760);
        Unit<?> metreOfMercury =
                PASCAL.multiply(135951).divide(10).multiply(980665).divide(100000);
        Unit<?> metreOfWater = PASCAL.multiply(980665).divide(100);
        Unit<?> flow = m3.divide(SECOND);
        put(m, "time", "s", SECOND, "min", minute, "h", hour, "d", hour.multiply(24), "week", hour.multiply(168));
        put(
                m,
                "mass",
                "mg",
                KILOGRAM.divide(1000000),
                "g",
                KILOGRAM.divide(1000),
                "kg",
                KILOGRAM,
                "t",
                KILOGRAM.multiply(1000),
                "oz",
                pound.divide(16),
                "lb",
                pound);
        put(m, "force", "N", NEWTON, "kN", NEWTON.multiply(1000), "kgf", kgf, "lbf", lbf);
        put(
                m,
                "volume",
                "m³",
                m3,
                "L",
                litre,
                "mL",
                litre.divide(1000),
                "cc",
                METRE.divide(100).pow(3),
                "mm³",
                METRE.divide(1000).pow(3),
                "in³",
                inch.pow(3),
                "ft³",
                foot.pow(3),
                "US gal",
                usGal,
                "US qt",
                usGal.divide(4),
                "US pint",
                usGal.divide(8),
                "US cup",
                usGal.divide(16),
                "US fl oz",
                usGal.divide(128),
                "UK gal",
                ukGal,
                "UK qt",
                ukGal.divide(4),
                "UK pint",
                ukGal.divide(8),
                "UK cup",
                ukGal.divide(16),
                "UK fl oz",
                ukGal.divide(160));
        put(
                m,
                "length",
                "m",
                METRE,
                "cm",
                METRE.divide(100),
                "mm",
                METRE.divide(1000),
                "µm",
                METRE.divide(1000000),
                "km",
                METRE.multiply(1000),
                "in",
                inch,
                "ft",
                foot,
                "yd",
                foot.multiply(3),
                "mil",
                inch.divide(1000),
                "thou",
                inch.divide(1000));
        put(
                m,
                "pressure",
                "Pa",
                PASCAL,
                "mbar",
                PASCAL.multiply(100),
                "hPa",
                PASCAL.multiply(100),
                "kPa",
                PASCAL.multiply(1000),
                "MPa",
                PASCAL.multiply(1000000),
                "bar",
                PASCAL.multiply(100000),
                "inHg",
                metreOfMercury.multiply(254).divide(10000),
                "inH₂O",
                metreOfWater.multiply(254).divide(10000),
                "mmHg",
                metreOfMercury.divide(1000),
                "torr",
                torr,
                "mtorr",
                torr.divide(1000),
                "micron",
                torr.divide(1000),
                "psi",
                lbf.divide(inch.pow(2)),
                "atm",
                atm,
                "kgf/cm²",
                kgf.divide(METRE.divide(100).pow(2)));
        put(m, "temperature", "K", tech.units.indriya.unit.Units.KELVIN);
        put(
                m,
                "temperature-difference",
                "K",
                SECOND,
                "°C",
                SECOND,
                "°F",
                SECOND.multiply(5).divide(9));
        put(
                m,
                "flow",
                "L/s",
                litre.divide(SECOND),
                "L/min",
                litre.divide(minute),
                "L/h",
                litre.divide(hour),
                "mL/s",
                litre.divide(1000).divide(SECOND),
                "mL/min",
                litre.divide(1000).divide(minute),
                "m³/h",
                m3.divide(hour),
                "m³/min",
                m3.divide(minute),
                "m³/s",
                flow,
                "cfm",
                foot.pow(3).divide(minute));
        put(
                m,
                "conductance",
                "m³/s",
                flow,
                "L/s",
                litre.divide(SECOND),
                "L/min",
                litre.divide(minute),
                "m³/h",
                m3.divide(hour));
        Unit<?> cm3 = METRE.divide(100).pow(3);
        put(
                m,
                "leak",
                "Pa m³/s",
                PASCAL.multiply(flow),
                "mbar L/s",
                PASCAL.multiply(100).multiply(litre).divide(SECOND),
                "mbar L/min",
                PASCAL.multiply(100).multiply(litre).divide(minute),
                "torr L/s",
                torr.multiply(litre).divide(SECOND),
                "atm cm³/s",
                atm.multiply(cm3).divide(SECOND),
                "sccm",
                atm.multiply(cm3).divide(minute));
        Unit<?> pas = PASCAL.multiply(SECOND);
        put(m, "viscosity", "Pa·s", pas, "mPa·s", pas.divide(1000), "cP", pas.divide(1000), "P", pas.divide(10));
        put(
                m,
                "density",
                "kg/m³",
                KILOGRAM.divide(m3),
                "g/mL",
                KILOGRAM.divide(1000).divide(litre.divide(1000)),
                "g/cm³",
                KILOGRAM.divide(1000).divide(cm3),
                "kg/L",
                KILOGRAM.divide(litre),
                "g/L",
                KILOGRAM.divide(1000).divide(litre),
                "lb/gal",
                pound.divide(usGal),
                "lb/ft³",
                pound.divide(foot.pow(3)));
        Unit<?> nm = NEWTON.divide(METRE);
        put(
                m,
                "surface-tension",
                "N/m",
                nm,
                "mN/m",
                nm.divide(1000),
                "dyn/cm",
                NEWTON.divide(100000).divide(METRE.divide(100)));
        put(m, "fraction", "1", AbstractUnit.ONE, "%", AbstractUnit.ONE.divide(100));
        put(m, "number", "1", AbstractUnit.ONE);
        put(
                m,
                "speed",
                "m/s",
                METRE.divide(SECOND),
                "m/min",
                METRE.divide(minute),
                "cm/s",
                METRE.divide(100).divide(SECOND),
                "cm/min",
                METRE.divide(100).divide(minute),
                "mm/s",
                METRE.divide(1000).divide(SECOND),
                "mm/min",
                METRE.divide(1000).divide(minute),
                "in/min",
                inch.divide(minute));
        Unit<?> jmol = JOULE.divide(MOLE);
        put(m, "energy-per-mole", "J/mol", jmol, "kJ/mol", jmol.multiply(1000), "kcal/mol", jmol.multiply(4184));
        return m;
    }

    private static void put(Map<String, Unit<?>> m, String dimension, Object... pairs) {
        for (int i = 0; i < pairs.length; i += 2) {
            m.put(dimension + " " + pairs[i], (Unit<?>) pairs[i + 1]);
        }
    }
}
