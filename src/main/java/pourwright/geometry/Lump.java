package pourwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The thickest lump of a solid: the largest ball that fits inside. Heat must cross its radius to leave. Balls are started
 * between facing walls and pushed away from the nearest wall until they cannot grow; the largest wins. An estimate from below.
 */
public final class Lump {
    private static final int RAYS = 2000;
    private static final int CLIMBS = 40;
    private static final int STEPS = 60;
    private static final double SHRINK = 0.7;

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

    private double grown(Ball start) {
        Ball best = start;
        double stride = start.radius();
        for (int i = 0; i < STEPS; i++) {
            nearest.find(best.middle());
            Vec3 away = best.middle().minus(nearest.point);
            double length = away.length();
            if (length == 0) {
                break;
            }
            Vec3 moved = best.middle().plus(away.times(stride / length));
            double radius = nearest.find(moved);
            // Out through the far wall a ball would grow without end: from one place to the next it grows by the way at
            // most.
            boolean inside = radius > best.radius() && radius <= best.radius() + stride && stays(best.middle(), moved);
            if (inside) {
                best = new Ball(moved, radius);
            } else {
                stride *= SHRINK;
            }
        }
        return best.radius();
    }

    /** Whether a ball's middle can move there without crossing the surface. */
    private boolean stays(Vec3 from, Vec3 to) {
        Vec3 way = to.minus(from);
        double length = way.length();
        double across = new Thickness(mesh).across(from, way.times(1 / length), -1);
        return Double.isNaN(across) || across > length;
    }
}
