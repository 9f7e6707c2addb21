package pourwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A solid whose trapped air is known in closed form: the figure, how it stands, and volume and sealing height of each pocket. */
record KnownSolid(String name, Figure figure, Setup setup, List<double[]> pockets) {

    static KnownSolid cavity(String name, Figure figure, double... vent) {
        return new KnownSolid(name, figure, Setup.of(Domain.CAVITY), List.of()).vent(vent);
    }

    static KnownSolid around(String name, Figure figure) {
        return new KnownSolid(name, figure, Setup.of(Domain.AROUND), List.of());
    }

    KnownSolid vent(double... mm) {
        return mm.length == 0 ? this : new KnownSolid(name, figure, setup.withVents(List.of(place(mm))), pockets);
    }

    KnownSolid gate(double... mm) {
        return new KnownSolid(name, figure, setup.withGates(List.of(place(mm))), pockets);
    }

    KnownSolid up(double x, double y, double z) {
        return new KnownSolid(name, figure, setup.withUp(new Vec3(x, y, z)), pockets);
    }

    /** Adds a pocket that must be found: volume in mm3, sealing height in mm. */
    KnownSolid pocket(double volume, double seal) {
        List<double[]> more = new ArrayList<>(pockets);
        more.add(new double[] {volume, seal});
        return new KnownSolid(name, figure, setup, more);
    }

    private static Vec3 place(double... mm) {
        return new Vec3(mm[0] * Figure.MM, mm[1] * Figure.MM, mm[2] * Figure.MM);
    }

    /** The pockets that must be found, by volume and then by height. */
    List<double[]> expected() {
        return pockets.stream()
                .sorted(Comparator.comparingDouble((double[] p) -> -p[0]).thenComparingDouble(p -> p[1]))
                .toList();
    }

    @Override
    public String toString() {
        return name;
    }
}
