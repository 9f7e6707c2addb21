package pourwright.geometry;

import java.util.List;
import java.util.function.Predicate;

/**
 * How many vents a tree of air needs, and where the next belongs. A vent at one top frees its piece and leaves the parts that
 * hang off the way from there to the whole. So a piece needs as many vents as its parts together, and one if none of them
 * needs any; that is the fewest.
 */
final class VentNeeds {
    private final Mesh mesh;
    private final Air air;
    private final Pieces pieces;
    private final Setup setup;
    private final int[] needed;

    VentNeeds(Mesh mesh, Air air, Setup setup, Predicate<Pocket> needsVent) {
        this.mesh = mesh;
        this.air = air;
        this.setup = setup;
        pieces = Pockets.pieces(mesh, air, setup);
        JoinTree tree = air.tree();
        needed = new int[tree.pieces];
        double high = Double.NEGATIVE_INFINITY;
        for (int v : mesh.triangles) {
            high = Math.max(high, air.frame().h[v]);
        }
        double pour = Double.isNaN(setup.pourLevelM()) ? high : setup.pourLevelM() - mesh.origin.dot(setup.up());
        for (int piece = 0; piece < tree.pieces; piece++) {
            boolean asked = !unreachable(piece) && pieces.counts(piece);
            if (asked && (cannotFill(piece) || needsVent.test(Pockets.pocket(mesh, air, piece, 1, 0, pour)))) {
                needed[piece] = Math.max(1, needed[piece]);
            } else {
                needed[piece] = 0;
            }
            if (tree.parent[piece] >= 0) {
                needed[tree.parent[piece]] += needed[piece];
            }
        }
    }

    private boolean unreachable(int piece) {
        return air.sealH(piece) == Double.NEGATIVE_INFINITY;
    }

    private boolean cannotFill(int piece) {
        return air.tree().parent[piece] < 0 && Pockets.withoutOutlet(air, piece, setup);
    }

    /** Vents needed in all. */
    int count() {
        return pieces.roots().stream().mapToInt(piece -> needed[piece]).sum();
    }

    /** Air that stays before any vent is added, m3; where nothing can fill without one, the first vent is counted as there. */
    double trappedM3() {
        double sum = 0;
        for (int piece : pieces.roots()) {
            if (unreachable(piece) || !pieces.counts(piece)) {
                continue;
            }
            sum += cannotFill(piece) ? leftAfterVent(piece) : air.volumeM3(piece);
        }
        return sum;
    }

    /** The largest whole piece that needs a vent, or -1. */
    int next() {
        for (int piece : pieces.roots()) {
            if (needed[piece] > 0) {
                return piece;
            }
        }
        return -1;
    }

    /** The top at which a vent into a whole piece belongs, in the mesh's coordinates, m. */
    Vec3 place(int whole) {
        int at = whole;
        for (int part = best(at); part >= 0; part = best(at)) {
            at = part;
        }
        return air.peak(at).plus(mesh.origin);
    }

    /** What a vent at {@link #place} leaves of a whole piece, m3. */
    double leftAfterVent(int whole) {
        double left = 0;
        int at = whole;
        for (int part = best(at); part >= 0; part = best(at)) {
            for (int other : pieces.parts(at)) {
                left += other == part ? 0 : air.volumeM3(other);
            }
            at = part;
        }
        return left;
    }

    double volumeM3(int piece) {
        return air.volumeM3(piece);
    }

    /** The part to go into: the largest of those that need a vent, else the largest. */
    private int best(int piece) {
        List<Integer> parts = pieces.parts(piece);
        for (int part : parts) {
            if (needed[part] > 0) {
                return part;
            }
        }
        return parts.isEmpty() ? -1 : parts.get(0);
    }
}
