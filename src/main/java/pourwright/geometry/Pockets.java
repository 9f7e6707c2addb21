package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Finds the air that stays in a mould when it fills from below. */
public final class Pockets {
    /** Pieces no deeper than this many steps of the mesh's own numbers are noise. */
    private static final double NOISE_STEPS = 4;

    private final Mesh mesh;
    private final Setup setup;
    private final Frame frame;
    private final double baseH;
    private final List<Pocket> pockets = new ArrayList<>();
    private final List<Integer> pieceOfPocket = new ArrayList<>();
    private final List<Trapped.Region> unreachable = new ArrayList<>();
    private boolean noOutlet;
    private double trappedM3;
    private int ignored;
    private double ignoredM3;

    private Pockets(Mesh mesh, Setup setup) {
        this.mesh = mesh;
        this.setup = setup;
        this.frame = new Frame(mesh.xyz, setup.up());
        this.baseH = mesh.origin.dot(frame.up);
    }

    /**
     * Finds all pockets.
     *
     * @param mesh  the cavity or the master
     * @param setup how it stands and where it is open
     * @return pockets, with what else stands in the way of filling
     * @throws MeshFault when a gate or vent does not lie on the surface, or the resolution needs too many columns
     */
    public static Trapped find(Mesh mesh, Setup setup) {
        return new Pockets(mesh, setup).run();
    }

    /** The spaces alone, for a setup whose gates are settled. */
    static Air air(Mesh mesh, Frame frame, Setup setup, Outlets outlets) {
        return mesh.simple
                ? SurfaceAir.find(mesh, frame, setup.domain(), outlets)
                : ColumnAir.find(mesh, frame, setup.domain(), outlets, setup.resolutionM());
    }

    static Pieces pieces(Mesh mesh, Air air, Setup setup) {
        double column = air instanceof ColumnAir columns ? columns.columnM() : 0;
        return new Pieces(air, setup.ignoreM3(), NOISE_STEPS * mesh.noiseM(), column);
    }

    /** The lowest vertex, in the mesh's coordinates. */
    static Vec3 lowest(Mesh mesh, Frame frame) {
        int best = mesh.triangles[0];
        for (int v : mesh.triangles) {
            if (frame.h[v] < frame.h[best] || (frame.h[v] == frame.h[best] && v < best)) {
                best = v;
            }
        }
        return mesh.vertex(best);
    }

    /** A cavity without a gate fills from its lowest point. */
    static Setup withGate(Mesh mesh, Frame frame, Setup setup) {
        boolean assume = setup.domain() == Domain.CAVITY && setup.gates().isEmpty();
        return assume ? setup.withGates(List.of(lowest(mesh, frame))) : setup;
    }

    /** Whether a piece is sealed only at the lowest point of its space: then its only opening is where liquid comes in. */
    static boolean withoutOutlet(Air air, int piece, Setup setup) {
        JoinTree tree = air.tree();
        return setup.domain() == Domain.CAVITY
                && tree.sealHeight[piece] <= tree.lowest(tree.peak[piece]) + 2 * tree.tie();
    }

    private Trapped run() {
        Setup settled = withGate(mesh, frame, setup);
        Outlets outlets = Outlets.of(mesh, settled);
        Air air = air(mesh, frame, settled, outlets);
        Pieces pieces = pieces(mesh, air, settled);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int v : mesh.triangles) {
            low = Math.min(low, frame.h[v]);
            high = Math.max(high, frame.h[v]);
        }
        double pour = Double.isNaN(setup.pourLevelM()) ? high : setup.pourLevelM() - baseH;
        for (int piece : pieces.roots()) {
            root(air, pieces, piece, settled, pour);
        }
        List<Trapped.Region> lowPlaces = LowPlaces.find(mesh, settled);
        List<String> notes = new ArrayList<>(outlets.notes);
        double column = air instanceof ColumnAir columns ? columns.columnM() : 0;
        note(notes, lowPlaces, column);
        boolean cavity = setup.domain() == Domain.CAVITY;
        return new Trapped(
                pockets,
                trappedM3,
                noOutlet,
                unreachable,
                lowPlaces,
                cavity ? settled.gates().get(0) : null,
                cavity && setup.gates().isEmpty(),
                low + baseH,
                high + baseH,
                mesh.report().volumeM3(),
                air.flatCeilingM2(),
                cavity ? Thickness.thinnestM(mesh) : Double.NaN,
                ignored,
                ignoredM3,
                column,
                notes,
                new Spaces(air, pieceOfPocket.stream().mapToInt(i -> i).toArray()));
    }

    private void root(Air air, Pieces pieces, int piece, Setup settled, double pour) {
        double volume = air.volumeM3(piece);
        if (air.tree().sealHeight[piece] == Double.NEGATIVE_INFINITY) {
            if (pieces.counts(piece)) {
                unreachable.add(new Trapped.Region(volume, air.peak(piece).plus(mesh.origin)));
            }
        } else if (withoutOutlet(air, piece, settled)) {
            noOutlet = true;
        } else if (pieces.counts(piece)) {
            trappedM3 += volume;
            emit(air, pieces, piece, 0, pour);
        } else {
            ignored++;
            ignoredM3 += Math.max(0, volume);
        }
    }

    /** Parts within parts can go as deep as there are tops, so they wait in a list and not on the call stack. */
    private void emit(Air air, Pieces pieces, int top, int parentOfTop, double pour) {
        java.util.ArrayDeque<int[]> waiting = new java.util.ArrayDeque<>();
        waiting.push(new int[] {top, parentOfTop});
        while (!waiting.isEmpty()) {
            int[] next = waiting.pop();
            int id = pockets.size() + 1;
            pockets.add(pocket(air, next[0], id, next[1], pour));
            pieceOfPocket.add(next[0]);
            List<Integer> parts = pieces.parts(next[0]);
            for (int i = parts.size() - 1; i >= 0; i--) {
                waiting.push(new int[] {parts.get(i), id});
            }
        }
    }

    private Pocket pocket(Air air, int piece, int id, int parent, double pour) {
        return pocket(mesh, air, piece, id, parent, pour);
    }

    static Pocket pocket(Mesh mesh, Air air, int piece, int id, int parent, double pour) {
        double base = mesh.origin.dot(air.frame().up);
        Vec3 sealed = air.sealedAt(piece);
        double seal = air.sealH(piece);
        return new Pocket(
                id,
                parent,
                air.volumeM3(piece),
                air.peak(piece).plus(mesh.origin),
                air.tree().peakHeight[piece] + base,
                seal + base,
                sealed == null ? null : sealed.plus(mesh.origin),
                air.waterlineM2(piece),
                air.mouthWidthM(piece),
                Math.max(0, pour - seal));
    }

    private void note(List<String> notes, List<Trapped.Region> lowPlaces, double column) {
        if (!unreachable.isEmpty()) {
            notes.add(
                    (unreachable.size() == 1 ? "A closed region touches" : unreachable.size() + " closed regions touch")
                            + " neither gate nor outlet, so no liquid gets there.");
        }
        if (!lowPlaces.isEmpty()) {
            notes.add((lowPlaces.size() == 1 ? "One low place fills" : lowPlaces.size() + " low places fill")
                    + " only when liquid runs over a sill. Until then the level is not the same everywhere.");
        }
        if (column > 0) {
            notes.add(String.format(
                    Locale.ROOT,
                    "Parts of the mesh overlap or touch, so columns of %.3g mm were used; walls and gaps thinner than that"
                            + " are not seen.",
                    column * 1000));
        }
        if (ignored > 0) {
            notes.add(String.format(
                    Locale.ROOT, "%d pockets too small to count hold %.3g mm3 together.", ignored, ignoredM3 * 1e9));
        }
    }
}
