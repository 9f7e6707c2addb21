package pourwright.units;

/**
 * One amount as typed.
 *
 * @param unit null when no unit was typed
 * @param key the folded spelling of the unit, "" without one
 * @param said how it is shown back where number and unit are not all of it, such as "5 ft 3 in"; null otherwise
 */
record Amount(double value, UnitDef unit, String key, boolean about, String said) {
    static Amount bare(double value) {
        return new Amount(value, null, "", false, null);
    }

    static Amount of(double value, UnitDef unit, String key) {
        return new Amount(value, unit, key, false, null);
    }

    boolean bare() {
        return unit == null;
    }

    Amount withUnitOf(Amount other) {
        return new Amount(value, other.unit, other.key, about, null);
    }

    Amount vague() {
        return new Amount(value, unit, key, true, said);
    }

    Amount negated() {
        return new Amount(value == 0 ? 0 : -value, unit, key, about, null);
    }

    /** As it is shown back. */
    String shown() {
        return said != null ? said : Show.joined(NumberText.echoed(value), unit);
    }
}
