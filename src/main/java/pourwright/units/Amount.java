package pourwright.units;

/**
 * One amount as typed.
 *
 * @param unit null when no unit was typed
 * @param key the folded spelling of the unit, "" without one
 */
record Amount(double value, UnitDef unit, String key, boolean about) {
    boolean bare() {
        return unit == null;
    }

    Amount withUnitOf(Amount other) {
        return new Amount(value, other.unit, other.key, about);
    }

    Amount vague() {
        return new Amount(value, unit, key, true);
    }

    Amount negated() {
        return new Amount(value == 0 ? 0 : -value, unit, key, about);
    }
}
