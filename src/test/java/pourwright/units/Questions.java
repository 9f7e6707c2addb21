package pourwright.units;

/** Questions as the program asks them, for the tests. */
final class Questions {
    static final Expect POT_LIFE = program(Dimension.TIME, "min", 0.5, 1440, "40 min");
    static final Expect CUP = program(Dimension.VOLUME, "L", 0.02, 200, "1 L");
    static final Expect BATCH = program(Dimension.MASS, "g", 1, 500000, "500 g");
    static final Expect BOX = program(Dimension.LENGTH, "mm", 10, 3000, "300 mm");
    static final Expect WALL = program(Dimension.LENGTH, "mm", 0.05, 200, "3 mm");
    static final Expect ALTITUDE = program(Dimension.LENGTH, "m", -400, 4500, "600 m");
    static final Expect ROOM = prompt(Dimension.TEMPERATURE, "°C", 0, 45, "21 °C");
    static final Expect MOULD = prompt(Dimension.TEMPERATURE, "°C", 0, 90, "40 °C");
    static final Expect TARGET = program(Dimension.PRESSURE, "mbar", 0.001, 1100, "30 mbar");
    static final Expect BAROMETER = program(Dimension.PRESSURE, "mbar", 500, 1100, "1,013 mbar");
    static final Expect GAUGE = new Expect(Dimension.PRESSURE, "inHg", 0, 1100, "28 inHg", true, true);
    static final Expect GAUGE_PROMPT = new Expect(Dimension.PRESSURE, "inHg", 0, 1100, "28 inHg", false, true);
    static final Expect POT = new Expect(Dimension.PRESSURE, "bar", 0.1, 20, "3 bar", true, true);
    static final Expect PUMP = program(Dimension.FLOW, "L/s", 0.01, 50, "1.5 L/s");
    static final Expect VISCOSITY = program(Dimension.VISCOSITY, "Pa·s", 0.0005, 200, "3 Pa·s");
    static final Expect HUMIDITY = program(Dimension.FRACTION, "%", 5, 100, "50 %");
    static final Expect DENSITY = program(Dimension.DENSITY, "kg/m³", 500, 5000, "1,100 kg/m³");
    static final Expect LEAK = program(Dimension.LEAK, "mbar L/s", 0, 100, "0.1 mbar L/s");

    private Questions() {}

    static Expect program(Dimension d, String unit, double min, double max, String example) {
        return new Expect(d, unit, min, max, example, true, false);
    }

    static Expect prompt(Dimension d, String unit, double min, double max, String example) {
        return new Expect(d, unit, min, max, example, false, false);
    }

    static Expect anything(Dimension d, String unit) {
        return new Expect(d, unit, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, "", true, false);
    }
}
