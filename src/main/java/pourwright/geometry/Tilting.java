package pourwright.geometry;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Which pockets a tilt frees: the mould leans while it fills, and is set level again when the place is full. A pocket is freed by
 * a tilt when no air that matters stays anywhere on the surface that bounds it. Where a large triangle bounds two pockets, both
 * count as kept: the answer errs on the side of air.
 */
public final class Tilting {
    /** Ways to lean, all round. */
    private static final int AROUND = 8;

    private Tilting() {}

    /**
     * Tries to lean the mould all round by an angle.
     *
     * @param mesh    the cavity or the master
     * @param setup   its level stand, as given to {@link Pockets#find}
     * @param level   what that gave
     * @param degrees how far it leans
     * @param matters which pockets of a leaning mould would be worse than none
     * @return for each pocket by id the first direction up that frees it, or nothing where none does; no entries at all where
     *     parts of the mesh overlap, since then the surface does not bound the pockets
     */
    public static Map<Integer, Optional<Vec3>> frees(
            Mesh mesh, Setup setup, Trapped level, double degrees, Predicate<Pocket> matters) {
        Map<Integer, Optional<Vec3>> freed = new HashMap<>();
        if (!mesh.simple) {
            return freed;
        }
        Setup settled = level.gate() == null ? setup : setup.withGates(gates(setup, level));
        List<Vec3> leaning = leaning(settled.up(), degrees);
        List<BitSet> kept = leaning.parallelStream()
                .map(up -> kept(mesh, settled.withUp(up), matters))
                .toList();
        for (Pocket pocket : level.pockets()) {
            BitSet bound = level.spaces().touched(pocket);
            freed.put(
                    pocket.id(),
                    IntStream.range(0, leaning.size())
                            .filter(i -> kept.get(i) != null && !kept.get(i).intersects(bound))
                            .mapToObj(leaning::get)
                            .findFirst());
        }
        return freed;
    }

    private static List<Vec3> gates(Setup setup, Trapped level) {
        return setup.gates().isEmpty() ? List.of(level.gate()) : setup.gates();
    }

    /** The surface on which air stays, or null when nothing can fill. */
    private static BitSet kept(Mesh mesh, Setup leaning, Predicate<Pocket> matters) {
        Trapped trapped = Pockets.find(mesh, leaning);
        if (trapped.noOutlet()) {
            return null;
        }
        BitSet kept = new BitSet(mesh.triangleCount());
        trapped.whole().stream()
                .filter(matters)
                .forEach(pocket -> kept.or(trapped.spaces().touched(pocket)));
        return kept;
    }

    private static List<Vec3> leaning(Vec3 up, double degrees) {
        Vec3 right = up.anyNormal();
        Vec3 ahead = up.cross(right);
        double tilt = Math.toRadians(degrees);
        return IntStream.range(0, AROUND)
                .mapToObj(i -> {
                    double round = 2 * Math.PI * i / AROUND;
                    Vec3 sideways = right.times(Math.cos(round)).plus(ahead.times(Math.sin(round)));
                    return up.times(Math.cos(tilt))
                            .plus(sideways.times(Math.sin(tilt)))
                            .unit();
                })
                .toList();
    }
}
