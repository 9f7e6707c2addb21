package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Gates and vents, each laid onto the surface. */
final class Outlets {
    private static final double SHARE_OF_SIZE = 0.01;

    private final List<Vec3> places = new ArrayList<>();
    private final List<Integer> triangles = new ArrayList<>();
    private final int gates;
    /** What was moved, as sentences. */
    final List<String> notes = new ArrayList<>();

    private Outlets(int gates) {
        this.gates = gates;
    }

    /**
     * Finds the surface at each opening. It may lie off the surface by one column, or by 1 % of the size when no column width
     * was given; farther off is a fault.
     */
    static Outlets of(Mesh mesh, Setup setup) {
        boolean cavity = setup.domain() == Domain.CAVITY;
        Outlets result = new Outlets(cavity ? setup.gates().size() : 0);
        double reach = setup.resolutionM() > 0 ? setup.resolutionM() : SHARE_OF_SIZE * mesh.sizeM();
        Nearest nearest = new Nearest(mesh);
        if (cavity) {
            for (Vec3 gate : setup.gates()) {
                result.add("gate", gate, mesh, nearest, reach);
            }
        }
        for (Vec3 vent : setup.vents()) {
            result.add("vent", vent, mesh, nearest, reach);
        }
        return result;
    }

    private void add(String what, Vec3 place, Mesh mesh, Nearest nearest, double reach) {
        double apart = nearest.find(place.minus(mesh.origin));
        if (apart > reach) {
            throw new MeshFault(String.format(
                    Locale.ROOT,
                    "The %s at (%.6g, %.6g, %.6g) mm lies %.3g mm off the surface; at most %.3g mm is accepted.",
                    what,
                    place.x() * 1000,
                    place.y() * 1000,
                    place.z() * 1000,
                    apart * 1000,
                    reach * 1000));
        }
        if (apart > 1e-3 * reach) {
            notes.add(String.format(
                    Locale.ROOT, "A %s lay %.2g mm off the surface and was moved onto it.", what, apart * 1000));
        }
        places.add(place.minus(mesh.origin));
        triangles.add(nearest.triangle);
    }

    int count() {
        return places.size();
    }

    boolean isGate(int outlet) {
        return outlet < gates;
    }

    /** The place of an outlet as it was given, counted from the mesh's origin, m. */
    Vec3 place(int outlet) {
        return places.get(outlet);
    }

    int triangle(int outlet) {
        return triangles.get(outlet);
    }
}
