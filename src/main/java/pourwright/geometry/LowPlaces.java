package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Low places of a cavity that liquid reaches only over a sill. Turned upside down they are pockets whose outlet is the
 * gate: draining a shape and filling it upside down are the same question.
 */
final class LowPlaces {
    /** Low places smaller than this share of the cavity change nothing that a caster would see. */
    private static final double SMALLEST_SHARE = 1e-4;

    private LowPlaces() {}

    static List<Trapped.Region> find(Mesh mesh, Setup setup) {
        List<Trapped.Region> found = new ArrayList<>();
        if (setup.domain() != Domain.CAVITY) {
            return found;
        }
        double ignore = Math.max(
                setup.ignoreM3(), SMALLEST_SHARE * Math.abs(mesh.report().volumeM3()));
        Setup drained = setup.withUp(setup.up().times(-1)).withVents(List.of()).withIgnored(ignore);
        Frame frame = new Frame(mesh.xyz, drained.up());
        Air air = Pockets.air(mesh, frame, drained, Outlets.of(mesh, drained));
        Pieces pieces = Pockets.pieces(mesh, air, drained);
        for (int piece : pieces.roots()) {
            boolean reached = air.sealH(piece) > Double.NEGATIVE_INFINITY;
            if (!reached || !pieces.counts(piece)) {
                continue;
            }
            if (!air.sealedAtOutlet(piece)) {
                add(found, mesh, air, piece);
                continue;
            }
            // The gate itself seals it: the gate stands high over this basin, and only what is apart within it counts.
            List<Integer> parts = pieces.parts(piece);
            for (int i = 1; i < parts.size(); i++) {
                add(found, mesh, air, parts.get(i));
            }
        }
        return found;
    }

    private static void add(List<Trapped.Region> found, Mesh mesh, Air air, int piece) {
        found.add(new Trapped.Region(air.volumeM3(piece), air.peak(piece).plus(mesh.origin)));
    }
}
