package pourwright.physics;

/** How much of each part goes into a batch. */
public final class Mixing {

    private Mixing() {}

    /**
     * Masses of the parts of a batch, each its share of the whole: total x part / sum of parts.
     * "10 : 1" and "10 % of B in A" are both parts 10 and 1; B is then 9.1 % of the whole.
     * Source: conservation of mass, exact.
     *
     * @param totalKg   mass of the whole batch, kg, zero or more
     * @param massParts parts by mass, each zero or more, at least one above zero
     * @return mass of each part, kg, in the order given; they add up to the total
     * @throws PhysicsException when an input is not a number or out of its range, or no part is above zero
     */
    public static double[] partMassesKg(double totalKg, double... massParts) {
        Checked.zeroOrMore("batch mass", totalKg, "kg");
        double sum = sumOfParts(massParts);
        double[] massesKg = new double[massParts.length];
        for (int i = 0; i < massParts.length; i++) {
            massesKg[i] = totalKg * (massParts[i] / sum);
        }
        return massesKg;
    }

    /**
     * Parts by mass from parts by volume: each part times its density over that of the first.
     * The first part keeps its number, so "1 : 1 by volume" becomes "1 : density ratio".
     * Source: definition of density, exact.
     *
     * @param parts     parts by volume, each zero or more, at least one above zero
     * @param densities density of each part, kg/m3, above zero
     * @return parts by mass, in the order given
     * @throws PhysicsException when an input is not a number or out of its range, or the lists differ in length
     */
    public static double[] massPartsFromVolumeParts(double[] parts, double[] densities) {
        sumOfParts(parts);
        Checked.given("list of densities", densities);
        if (densities.length != parts.length) {
            throw new PhysicsException("Each part needs one density; got " + parts.length + " parts and "
                    + densities.length + " densities.");
        }
        double[] massParts = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            Checked.positive("density", densities[i], "kg/m3");
            massParts[i] = parts[i] * (densities[i] / densities[0]);
        }
        return massParts;
    }

    private static double sumOfParts(double[] parts) {
        double sum = 0;
        for (double part : Checked.given("list of parts", parts)) {
            sum += Checked.zeroOrMore("mixing part", part, "");
        }
        return Checked.positive("sum of the mixing parts", sum, "");
    }
}
