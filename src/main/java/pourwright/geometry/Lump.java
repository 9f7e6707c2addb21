package pourwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The thickest lump of a solid: the largest ball that fits inside. Heat must cross its radius to leave. Balls are started
 * between facing walls and moved until they cannot grow; the largest wins. An estimate from below.
 */
public final class Lump {
    private static final int RAYS = 2000;
    private static final int CLIMBS = 12;
    private static final int DIRECTIONS = 27;
    private static final double FINE = 2e-3;
    private static final double TINY = 1e-6;

    private final Mesh mesh;
    private final Nearest nearest;

    private Lump(Mesh mesh) {
        this.mesh = mesh;
        this.nearest = new Nearest(mesh);
    }

    private record Ball(Vec3 middle, double radius) {}

    /** Diameter of the largest ball inside a mesh, m. */
    public static double thickestM(Mesh mesh) {
        return 2 * new Lump(mesh).run();
    }

    private double run() {
        List<Ball> balls = new ArrayList<>();
        Thickness rays = new Thickness(mesh);
        int step = Math.max(1, mesh.triangleCount() / RAYS);
        for (int t = 0; t < mesh.triangleCount(); t += step) {
            Vec3 normal = rays.normal(t);
            double length = normal.length();
            if (length == 0) {
                continue;
            }
            Vec3 inwards = normal.times(-1 / length);
            Vec3 from = rays.middle(t);
            double across = rays.across(from, inwards, t);
            if (!Double.isNaN(across)) {
                Vec3 middle = from.plus(inwards.times(across / 2));
                balls.add(new Ball(middle, nearest.find(middle)));
            }
        }
        balls.sort(Comparator.comparingDouble(ball -> -ball.radius()));
        return balls.stream().limit(CLIMBS).mapToDouble(this::grown).max().orElse(0);
    }

    /** A step shorter than the ball's radius stays inside it, and so inside the solid. */
    private double grown(Ball start) {
        Ball best = start;
        double stride = start.radius() / 2;
        while (stride > FINE * start.radius()) {
            Ball better = better(best, stride);
            if (better == null) {
                stride /= 2;
            } else {
                best = better;
            }
        }
        return best.radius();
    }

    /** A larger ball one step away in any of 26 directions, or null. */
    private Ball better(Ball from, double stride) {
        for (int i = 0; i < DIRECTIONS; i++) {
            Vec3 way = new Vec3(i % 3 - 1, i / 3 % 3 - 1, i / 9 - 1);
            if (way.length() == 0) {
                continue;
            }
            Vec3 moved = from.middle().plus(way.times(stride / way.length()));
            double radius = nearest.find(moved);
            if (radius > from.radius() * (1 + TINY)) {
                return new Ball(moved, radius);
            }
        }
        return null;
    }
}
