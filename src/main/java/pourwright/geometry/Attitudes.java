package pourwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Looks for the way to stand a mould that needs fewest vents. */
public final class Attitudes {
    /** Vertices times directions that are worth finding exact volumes for; about ten seconds of two cores. */
    private static final long EXACT_WORK = 60_000_000L;

    private static final int LEAST_EXACT = 48;
    /** Columns along the size where a mesh with overlapping parts is searched; the winners deserve a finer look. */
    private static final double COARSE = 128;

    private Attitudes() {}

    /**
     * Tries directions spread over the sphere, the axes, and the normals of the largest faces. Directions that promise most
     * by the tops seen on the surface alone are measured exactly; for small meshes all are.
     *
     * @param mesh      the cavity or the master
     * @param setup     domain, fixed gate and vents; its own direction is tried too, when allowed
     * @param count     directions over the sphere, besides axes and faces
     * @param allowed   which directions may be up, see {@link Directions#within}
     * @param needsVent which pockets need a vent
     * @return measured attitudes: fewest vents first, then least trapped air, then the lowest height to fill
     * @throws MeshFault as {@link Pockets#find}, or when no direction is allowed
     */
    public static List<Attitude> search(
            Mesh mesh, Setup setup, int count, Predicate<Vec3> allowed, Predicate<Pocket> needsVent) {
        List<Vec3> directions = new ArrayList<>();
        directions.add(setup.up());
        directions.addAll(Directions.ofFaces(mesh));
        directions.addAll(Directions.sphere(Math.max(0, count)));
        directions.removeIf(direction -> !allowed.test(direction));
        if (directions.isEmpty()) {
            throw new MeshFault("None of the directions tried may be up; allow a wider cone.");
        }
        Setup coarse = mesh.simple || setup.resolutionM() > 0 ? setup : setup.withResolution(mesh.sizeM() / COARSE);
        List<Vec3> best = promising(mesh, coarse, directions);
        return best.parallelStream()
                .map(up -> measure(mesh, coarse.withUp(up), needsVent))
                .collect(Collectors.toList())
                .stream()
                .sorted(Comparator.comparingInt(Attitude::vents)
                        .thenComparingDouble(attitude -> rounded(attitude.trappedM3()))
                        .thenComparingDouble(attitude -> rounded(attitude.fillHeightM())))
                .toList();
    }

    /** To single precision, so that the last digits of a sum do not decide an order. */
    private static double rounded(double value) {
        return (float) value;
    }

    private static List<Vec3> promising(Mesh mesh, Setup setup, List<Vec3> directions) {
        long affordable = Math.max(LEAST_EXACT, EXACT_WORK / Math.max(1, mesh.vertexCount()));
        if (directions.size() <= affordable) {
            return directions;
        }
        int[] tops = IntStream.range(0, directions.size())
                .parallel()
                .map(i -> LocalTops.count(mesh, new Frame(mesh.xyz, directions.get(i)), setup.domain()))
                .toArray();
        return IntStream.range(0, directions.size())
                .boxed()
                .sorted(Comparator.comparingInt(i -> tops[i]))
                .limit(affordable)
                .map(directions::get)
                .toList();
    }

    /** Measures one attitude. */
    public static Attitude measure(Mesh mesh, Setup setup, Predicate<Pocket> needsVent) {
        Frame frame = new Frame(mesh.xyz, setup.up());
        Setup settled = Pockets.withGate(mesh, frame, setup);
        Air air = Pockets.air(mesh, frame, settled, Outlets.of(mesh, settled));
        VentNeeds needs = new VentNeeds(mesh, air, settled, needsVent);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int v : mesh.triangles) {
            low = Math.min(low, frame.h[v]);
            high = Math.max(high, frame.h[v]);
        }
        return new Attitude(frame.up, needs.count(), needs.trappedM3(), high - low);
    }
}
