package pourwright.units;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every unit the program knows, with its exact definition and the ways people spell it.
 *
 * <p>Sources of the factors: SI Brochure, 9th ed. (SI units, min, h, d, L, bar); international yard and pound agreement of 1959
 * (in = 25.4 mm, lb = 0.453 592 37 kg); US gallon = 231 in³; UK gallon = 4.546 09 L (UK Weights and Measures Act 1985); standard
 * gravity 9.806 65 m/s² (3rd CGPM, 1901); atm = 101 325 Pa and torr = atm/760 (10th CGPM, 1954; ISO 80000-4); conventional mercury
 * 13 595.1 kg/m³ (mmHg, inHg) and conventional water 1000 kg/m³ (inH₂O), NIST SP 811, App. B.8, from memory. All are definitions, so
 * the error is that of rounding only. "Cup" in the UK has no law behind it: half a pint, common practice.
 */
final class UnitTable {
    /** Every spelling, as {@link Spelling#key} folds it, with the units it can mean: at most one in each dimension. */
    static final Map<String, UnitDef[]> BY_KEY = new HashMap<>(2048);

    /** The units under their symbols, in the order of the table. */
    static final List<UnitDef> ALL = new ArrayList<>(160);

    /** Longest folded spelling, the bound of a search. */
    static final int LONGEST;

    static {
        time();
        massAndForce();
        volume();
        length();
        pressure();
        temperature();
        flow();
        liquid();
        rest();
        int longest = 0;
        for (String key : BY_KEY.keySet()) {
            longest = Math.max(longest, key.length());
        }
        LONGEST = longest;
    }

    private UnitTable() {}

    private static void time() {
        Dimension d = Dimension.TIME;
        add(d, "s", 1, 1, "sec,second,\",''");
        // A bare m or a prime is minutes when a time is asked for; for a length the same marks are metre and foot.
        add(d, "min", 60, 1, "minute,m,mn,'");
        add(d, "h", 3600, 1, "hr,hour");
        add(d, "d", 86400, 1, "day");
        add(d, "week", 604800, 1, "wk");
    }

    private static void massAndForce() {
        Dimension d = Dimension.MASS;
        add(d, "mg", 1, 1e6, "milligram,milligramme");
        add(d, "g", 1, 1000, "gram,gramme,gm,gr");
        add(d, "kg", 1, 1, "kilo,kilogram,kilogramme");
        add(d, "t", 1000, 1, "tonne,metric ton");
        add(
                d,
                "oz",
                28349523125.0,
                1e12,
                "ounce,oz weight,ounce weight,ounces weight,ounces by weight,oz by weight,weight oz,oz wt");
        add(d, "lb", 45359237, 1e8, "pound,#");
        d = Dimension.FORCE;
        add(d, "N", 1, 1, "newton");
        add(d, "kN", 1000, 1, "kilonewton");
        add(d, "kgf", 980665, 1e5, "kg force,kp");
        add(d, "lbf", 44482216152605.0, 1e13, "pound force,lb force");
    }

    private static void volume() {
        Dimension d = Dimension.VOLUME;
        add(d, "m³", 1, 1, "cubic metre,cubic meter,cbm,cu m");
        add(d, "L", 1, 1000, "litre,liter,lt,ltr,dm3");
        add(d, "mL", 1, 1e6, "millilitre,milliliter,mil");
        add(d, "cc", 1, 1e6, "ccm,cm3,cubic cm,cubic centimetre,cubic centimeter,cu cm");
        add(d, "mm³", 1, 1e9, "cubic mm");
        add(d, "in³", 16387064, 1e12, "cubic inch,cubic inches,cu in");
        add(d, "ft³", 28316846592.0, 1e12, "cubic foot,cubic feet,cu ft,cuft");
        String[] us = {"us ", "u.s. ", "american ", ""};
        add(d, "US gal", 3785411784.0, 1e12, each(us, "gallon,gal"));
        add(d, "US qt", 946352946, 1e12, each(us, "quart,qt"));
        add(d, "US pint", 473176473, 1e12, each(us, "pint,pt"));
        add(d, "US cup", 2365882365.0, 1e13, each(us, "cup"));
        add(d, "US fl oz", 295735295625.0, 1e16, each(us, "fl oz,fluid ounce,fluid oz,ounce,oz,floz,fl ounce"));
        String[] uk = {"uk ", "imperial ", "imp ", "british "};
        add(d, "UK gal", 454609, 1e8, each(uk, "gallon,gal"));
        add(d, "UK qt", 11365225, 1e10, each(uk, "quart,qt"));
        add(d, "UK pint", 56826125, 1e11, each(uk, "pint,pt"));
        add(d, "UK cup", 284130625, 1e12, each(uk, "cup"));
        add(d, "UK fl oz", 284130625, 1e13, each(uk, "fl oz,fluid ounce,fluid oz,ounce,oz,floz,fl ounce"));
    }

    private static void length() {
        Dimension d = Dimension.LENGTH;
        add(d, "m", 1, 1, "metre,meter");
        add(d, "cm", 1, 100, "centimetre,centimeter");
        add(d, "mm", 1, 1000, "millimetre,millimeter");
        add(d, "µm", 1, 1e6, "um,micron,micrometre,micrometer");
        add(d, "km", 1000, 1, "kilometre,kilometer");
        add(d, "in", 254, 1e4, "inch,inches,\",''");
        add(d, "ft", 3048, 1e4, "foot,feet,'");
        add(d, "yd", 9144, 1e4, "yard");
        add(d, "mil", 254, 1e7, "mill");
        add(d, "thou", 254, 1e7, "thousandth of an inch,thousandths of an inch");
    }

    private static void pressure() {
        Dimension d = Dimension.PRESSURE;
        add(d, "Pa", 1, 1, "pascal");
        add(d, "mbar", 100, 1, "millibar,mb");
        add(d, "hPa", 100, 1, "hectopascal");
        add(d, "kPa", 1000, 1, "kilopascal");
        add(d, "MPa", 1e6, 1, "megapascal");
        add(d, "bar", 1e5, 1, "");
        // 13 595.1 kg/m³ × 9.806 65 m/s² × 25.4 mm = 3386.388 640 341 Pa
        add(
                d,
                "inHg",
                33863886403410.0,
                1e10,
                "in of hg,inches hg,inch hg,in of mercury,inch of mercury,inches of mercury,"
                        + "inches mercury,in mercury,\"hg,\" of hg,in,inch,inches,\",''");
        add(d, "inH₂O", 24908891, 1e5, "in h2o,inh2o,inch of water,inches of water,in of water,inwc,in wc,in wg");
        add(
                d,
                "mmHg",
                133322387415.0,
                1e9,
                "mm of hg,mm of mercury,mm mercury,millimetres of mercury,millimeters of mercury");
        add(d, "torr", 101325, 760, "");
        add(d, "mtorr", 101325, 760000, "millitorr");
        // The pump trade's micron is a micrometre of mercury, taken as a thousandth of a torr.
        add(
                d,
                "micron",
                101325,
                760000,
                "micron hg,micron of mercury,microns of mercury,umhg,microns hg,um,micrometre,micrometer");
        add(
                d,
                "psi",
                44482216152605.0,
                6451600000.0,
                "lb/in2,lbs/in2,lb per square inch,pounds per square inch,lb,pound,#");
        add(d, "atm", 101325, 1, "atmosphere");
        add(d, "kgf/cm²", 980665, 10, "kg/cm2,kgf/cm2,kg,kilo,at,kg per square cm");
    }

    private static void temperature() {
        Dimension d = Dimension.TEMPERATURE;
        put(new UnitDef("K", d, 1, 1, UnitDef.Scale.LINEAR, ""), "kelvin,°k,degk,deg kelvin,degrees kelvin,degrees k");
        put(
                new UnitDef("°C", d, 1, 1, UnitDef.Scale.CELSIUS, ""),
                "c,celsius,centigrade,degc,degrees c,degree c,deg celsius,degrees celsius,degrees centigrade,degree celsius");
        put(
                new UnitDef("°F", d, 5, 9, UnitDef.Scale.FAHRENHEIT, ""),
                "f,fahrenheit,farenheit,degf,degrees f,degree f,deg fahrenheit,degrees fahrenheit,degree fahrenheit");
        d = Dimension.TEMPERATURE_DIFFERENCE;
        add(d, "K", 1, 1, "kelvin");
        add(d, "°C", 1, 1, "c,celsius,degc,degrees c,degrees celsius,°,deg,degree");
        add(d, "°F", 5, 9, "f,fahrenheit,degf,degrees f,degrees fahrenheit");
    }

    private static void flow() {
        Dimension d = Dimension.FLOW;
        add(
                d,
                "L/s",
                1,
                1000,
                "l/sec,lps,litre/second,liter/second,litres/second,liters/second,litres/s,litres a second,liters a second");
        add(
                d,
                "L/min",
                1,
                60000,
                "litres a minute,liters a minute,litre a minute,liter a minute,lpm,litre/minute,liter/minute,litres/minute,liters/minute,litres/min,l/m");
        add(d, "L/h", 1, 3600000, "l/hr,litres/hour,liters/hour");
        add(d, "mL/s", 1, 1e6, "cc/s,cm3/s");
        add(d, "mL/min", 1, 6e7, "cc/min,cm3/min");
        add(
                d,
                "m³/h",
                1,
                3600,
                "m3/hr,m3/hour,cbm/h,cubic metres/hour,cubic meters/hour,cmh,cubic metres an hour,cubic meters an hour,m3 an hour");
        add(d, "m³/min", 1, 60, "");
        add(d, "m³/s", 1, 1, "");
        add(
                d,
                "cfm",
                28316846592.0,
                6e13,
                "cubic feet a minute,cu ft a minute,cubic feet/minute,cu ft/min,cuft/min,ft3/min,cuft,cu ft,cubic feet,cf,ft3");
        d = Dimension.CONDUCTANCE;
        add(d, "m³/s", 1, 1, "");
        add(d, "L/s", 1, 1000, "l/sec,lps");
        add(d, "L/min", 1, 60000, "lpm");
        add(d, "m³/h", 1, 3600, "m3/hr");
        d = Dimension.LEAK;
        add(d, "Pa m³/s", 1, 1, "");
        add(d, "mbar L/s", 1, 10, "mbar l/sec,millibar litre/second,mbarl/s");
        add(d, "mbar L/min", 1, 600, "");
        add(d, "torr L/s", 101325, 760000, "torr l/sec");
        add(d, "atm cm³/s", 101325, 1e6, "atm cc/s,atm cc/sec");
        // A standard cubic centimetre is taken at 0 °C and 1 atm, counted as pressure times volume at that temperature.
        add(d, "sccm", 101325, 6e7, "");
    }

    private static void liquid() {
        Dimension d = Dimension.VISCOSITY;
        add(d, "Pa·s", 1, 1, "pas,pascal second,pa sec");
        add(d, "mPa·s", 1, 1000, "mpas,millipascal second,mpa sec");
        add(d, "cP", 1, 1000, "cp,cps,centipoise");
        add(d, "P", 1, 10, "poise");
        d = Dimension.DENSITY;
        add(d, "kg/m³", 1, 1, "kg/cubic metre,kg/cubic meter");
        add(d, "g/mL", 1000, 1, "gram/ml,grams/ml");
        add(d, "g/cm³", 1000, 1, "g/cc,g/ccm,grams/cc");
        add(d, "kg/L", 1000, 1, "kg/litre,kg/liter");
        add(d, "g/L", 1, 1, "g/litre,g/liter");
        add(d, "lb/gal", 453592370000.0, 3785411784.0, "lbs/gal,pounds/gallon,lb/gallon,lb/us gal,ppg");
        add(d, "lb/ft³", 453592370000.0, 28316846592.0, "lbs/ft3,lb/cu ft,pcf");
        d = Dimension.SURFACE_TENSION;
        add(d, "N/m", 1, 1, "");
        add(d, "mN/m", 1, 1000, "");
        add(d, "dyn/cm", 1, 1000, "dyne/cm,dynes/cm");
    }

    private static void rest() {
        Dimension d = Dimension.FRACTION;
        add(d, "1", 1, 1, "");
        add(d, "%", 1, 100, "percent,per cent,pct,pc,% rh,%rh,percent rh,percent humidity");
        d = Dimension.SPEED;
        add(d, "m/s", 1, 1, "m/sec");
        add(d, "m/min", 1, 60, "");
        add(d, "cm/s", 1, 100, "cm/sec");
        add(d, "cm/min", 1, 6000, "");
        add(d, "mm/s", 1, 1000, "mm/sec");
        add(d, "mm/min", 1, 60000, "mm/minute");
        add(d, "in/min", 254, 6e5, "inch/minute,inches/minute,inches/min");
        d = Dimension.ENERGY_PER_MOLE;
        add(d, "J/mol", 1, 1, "");
        add(d, "kJ/mol", 1000, 1, "");
        add(d, "kcal/mol", 4184, 1, "");
        add(Dimension.NUMBER, "1", 1, 1, "");
    }

    private static void add(Dimension d, String symbol, double numerator, double denominator, String spellings) {
        put(new UnitDef(symbol, d, numerator, denominator, UnitDef.Scale.LINEAR, ""), spellings);
    }

    private static void put(UnitDef unit, String spellings) {
        ALL.add(unit);
        spell(unit, unit.symbol());
        int from = 0;
        while (from < spellings.length()) {
            int comma = spellings.indexOf(',', from);
            int to = comma < 0 ? spellings.length() : comma;
            spell(unit, spellings.substring(from, to));
            from = to + 1;
        }
    }

    private static void spell(UnitDef unit, String spelling) {
        String key = Spelling.key(spelling);
        register(key, unit);
        // A pascal takes no plural letter: "5 Pas" would then swallow a viscosity.
        boolean plural = key.length() > 1 && letters(key) && !key.endsWith("s") && !key.endsWith("pa");
        if (plural) {
            register(key.concat("s"), unit);
        }
        if (unit.dimension() == Dimension.PRESSURE) {
            reference(unit, key);
            if (plural) {
                reference(unit, key.concat("s"));
            }
        }
    }

    /** A pressure may say what it is counted from: "bar abs", "barg", "psia". */
    private static void reference(UnitDef unit, String key) {
        UnitDef abs =
                new UnitDef(unit.symbol(), unit.dimension(), unit.numerator(), unit.denominator(), unit.scale(), "abs");
        UnitDef gauge = new UnitDef(
                unit.symbol(), unit.dimension(), unit.numerator(), unit.denominator(), unit.scale(), "gauge");
        register(key.concat("abs"), abs);
        register(key.concat("absolute"), abs);
        register(key.concat("gauge"), gauge);
        register(key.concat("gage"), gauge);
        register(key.concat("vacuum"), gauge);
        register(key.concat("vac"), gauge);
        register(key.concat("ofvacuum"), gauge);
        if (key.endsWith("bar") || key.equals("psi") || key.equals("kpa")) {
            register(key.concat("a"), abs);
            register(key.concat("g"), gauge);
        }
    }

    private static void register(String key, UnitDef unit) {
        UnitDef[] old = BY_KEY.get(key);
        if (old == null) {
            BY_KEY.put(key, new UnitDef[] {unit});
            return;
        }
        for (UnitDef u : old) {
            if (u.dimension() == unit.dimension()) {
                return;
            }
        }
        UnitDef[] more = new UnitDef[old.length + 1];
        System.arraycopy(old, 0, more, 0, old.length);
        more[old.length] = unit;
        BY_KEY.put(key, more);
    }

    private static boolean letters(String key) {
        for (int i = 0; i < key.length(); i++) {
            if (key.charAt(i) < 'a' || key.charAt(i) > 'z') {
                return false;
            }
        }
        return true;
    }

    private static String each(String[] prefixes, String spellings) {
        StringBuilder out = new StringBuilder();
        for (String prefix : prefixes) {
            for (String s : spellings.split(",")) {
                out.append(out.length() == 0 ? "" : ",").append(prefix).append(s);
            }
        }
        return out.toString();
    }
}
