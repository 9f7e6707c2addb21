package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Cavities and masters with closed forms, each made from its parameters. Lengths in mm. */
final class KnownSolids {

    private KnownSolids() {}

    /** Area of the part of a circle above a chord at a height over the middle. */
    static double segment(double r, double y) {
        return r * r * Math.acos(y / r) - y * Math.sqrt(r * r - y * y);
    }

    /** Volume of the part of a ball above a height over the middle. */
    static double cap(double r, double z) {
        return Math.PI * (r - z) * (r - z) * (2 * r + z) / 3;
    }

    /** All cavities; curved ones with so many segments around. */
    static List<KnownSolid> cavities(int n) {
        List<KnownSolid> all = new ArrayList<>();
        all.addAll(turnedCavities(n));
        all.addAll(boxes());
        all.addAll(blockCavities());
        all.addAll(prisms(n));
        return all;
    }

    private static List<KnownSolid> turnedCavities(int n) {
        List<KnownSolid> all = new ArrayList<>();
        Figure cylinder = Shapes.cylinder(20, 0, 50, n);
        all.add(KnownSolid.cavity("S01b upright cylinder, vent in the side", cylinder, 20, 0, 42)
                .pocket(Math.PI * 400 * 8, 42));
        all.add(KnownSolid.cavity("S01c upright cylinder, vent in the flat top", cylinder, 5, 3, 50));
        double side = Math.sqrt(900 - 144);
        all.add(KnownSolid.cavity("S02 ball", Shapes.ball(30, n), side, 0, 12).pocket(cap(30, 12), 12));
        Figure capsule =
                Shapes.turned(Shapes.path(Shapes.arc(0, 0, 10, -90, 0, n / 4), Shapes.arc(0, 25, 10, 0, 90, n / 4)), n);
        all.add(KnownSolid.cavity("S03 upright capsule", capsule, 10, 0, 20)
                .pocket(Math.PI * 2000 / 3 + Math.PI * 500, 20));
        Figure lying = Shapes.cylinder(15, 0, 60, n).turnedAboutY(90);
        all.add(KnownSolid.cavity("S04 lying cylinder", lying, 60, 0, 9).pocket(60 * segment(15, 9), 9));
        Figure torus = Shapes.torus(40, 10, n);
        all.add(KnownSolid.cavity("S05a torus like a wheel", torus.turnedAboutY(90), 0, 50, 0)
                .pocket(Math.PI * Math.PI * 4000, 0));
        all.add(KnownSolid.cavity("S05b torus lying flat", torus, 48, 0, 6).pocket(80 * Math.PI * segment(10, 6), 6));
        Figure cone = Shapes.turned(new double[][] {{0, 0}, {25, 0}, {0, 60}}, n);
        all.add(KnownSolid.cavity("S06a cone, apex up", cone, 10, 0, 36)
                .pocket(Math.PI * 625 * 20 * Math.pow(0.4, 3), 36));
        Figure funnel = Shapes.turned(new double[][] {{0, 0}, {25, 60}, {0, 60}}, n);
        all.add(KnownSolid.cavity("S06b cone, apex down", funnel, 15, 0, 36)
                .pocket(Math.PI * 625 * 20 * (1 - Math.pow(0.6, 3)), 36));
        Figure dome = Shapes.turned(
                Shapes.path(new double[][] {{0, 0}, {40, 0}, {40, 6}, {20, 6}}, Shapes.arc(0, 6, 20, 0, 90, n / 4)), n);
        all.add(KnownSolid.cavity("S09 dome on a plate, vent in the plate", dome, 40, 0, 6)
                .pocket(Math.PI * 16000 / 3, 6));
        Figure core = Shapes.ball(30, n).with(Shapes.ball(18, n).reversed());
        all.add(KnownSolid.cavity("S29 ball with a core", core, Math.sqrt(819), 0, 9)
                .pocket(cap(30, 9) - cap(18, 9), 9));
        all.add(ellipsoid(n));
        return all;
    }

    private static KnownSolid ellipsoid(int n) {
        Figure body = Shapes.ball(1, n).moved(v -> new Vec3(30 * v.x(), 20 * v.y(), 12 * v.z()));
        Vec3 u = new Vec3(2.0 / 3, -1.0 / 3, 2.0 / 3);
        double h = Math.sqrt(square(30 * u.x()) + square(20 * u.y()) + square(12 * u.z()));
        double k = 0.35;
        // On the unit ball the height is h times the part along w; a point at height k h is k w plus any side of the
        // right length.
        Vec3 w = new Vec3(30 * u.x(), 20 * u.y(), 12 * u.z()).times(1 / h);
        Vec3 on = w.times(k).plus(w.anyNormal().times(Math.sqrt(1 - k * k)));
        return KnownSolid.cavity("S30 ellipsoid, up at an angle", body, 30 * on.x(), 20 * on.y(), 12 * on.z())
                .up(u.x(), u.y(), u.z())
                .pocket(Math.PI * 30 * 20 * 12 / 3 * square(1 - k) * (2 + k), k * h);
    }

    private static double square(double x) {
        return x * x;
    }

    private static List<KnownSolid> boxes() {
        List<KnownSolid> all = new ArrayList<>();
        Figure box = Shapes.box(0, 0, 0, 60, 40, 30);
        for (double degrees : new double[] {12, 50}) {
            double t = Math.toRadians(degrees);
            double q = 30;
            double tan = Math.tan(t);
            double volume = q * tan <= 30 ? 40 * q * q * tan / 2 : 40 * (q * 30 - 900 / (2 * tan));
            double seal = (60 - q) * Math.sin(t) + 30 * Math.cos(t);
            all.add(KnownSolid.cavity("S07 box tilted by " + degrees, box, 60 - q, 20, 30)
                    .up(Math.sin(t), 0, Math.cos(t))
                    .pocket(volume, seal));
        }
        double u3 = Math.sqrt(0.75);
        double d = 15 * 0.3 + 10 * 0.4;
        all.add(KnownSolid.cavity("S08 box on its corner", box, 45, 30, 30)
                .up(0.3, 0.4, u3)
                .pocket(d * d * d / (6 * 0.3 * 0.4 * u3), 60 * 0.3 + 40 * 0.4 + 30 * u3 - d));
        return all;
    }

    private static List<KnownSolid> blockCavities() {
        List<KnownSolid> all = new ArrayList<>();
        Figure towers = Shapes.blocks(
                new double[] {0, 5, 20, 45, 65, 70},
                new double[] {0, 5, 11, 19, 25, 30},
                new double[] {0, 5, 10, 18, 35, 45},
                (x, y, z) -> {
                    boolean plate = z < 5;
                    boolean first = x > 5 && x < 20 && y > 5 && y < 25;
                    boolean second = x > 45 && x < 65 && y > 5 && y < 25 && z < 35;
                    boolean tunnel = x > 20 && x < 45 && y > 11 && y < 19 && z > 10 && z < 18;
                    return plate || first || second || tunnel;
                });
        all.add(KnownSolid.cavity("S11a two towers with a tunnel, vent on the first", towers, 12, 15, 45)
                .pocket(6800, 18));
        all.add(KnownSolid.cavity("S11b two towers with a tunnel, vent on the plate", towers, 1, 1, 5)
                .pocket(25600, 5));
        Figure comb = Shapes.blocks(
                new double[] {0, 5, 15, 20, 30, 35, 45, 50, 57, 62},
                new double[] {0, 5, 15, 20},
                new double[] {0, 8, 20, 25, 29, 38},
                (x, y, z) -> {
                    boolean deep = y > 5 && y < 15;
                    return z < 8
                            || deep && x > 5 && x < 15 && z < 20
                            || deep && x > 20 && x < 30 && z < 38
                            || deep && x > 35 && x < 45 && z < 29
                            || deep && x > 50 && x < 57 && z < 25;
                });
        all.add(KnownSolid.cavity("S12 comb, equal sealing heights", comb, 25, 10, 38)
                .pocket(1200, 8)
                .pocket(2100, 8)
                .pocket(1190, 8));
        Figure tube = Shapes.blocks(
                new double[] {0, 10, 40, 50},
                new double[] {0, 10},
                new double[] {0, 10, 35, 60},
                (x, y, z) -> z < 10 || x < 10 && z < 60 || x > 40 && z < 35);
        all.add(KnownSolid.cavity("S13 U-tube poured from its open leg", tube)
                .gate(5, 5, 60)
                .pocket(2500, 10));
        Figure lintel = Shapes.blocks(
                new double[] {0, 19, 23, 50},
                new double[] {0, 20},
                new double[] {0, 18, 30},
                (x, y, z) -> z < 18 || x < 19 || x > 23);
        all.add(KnownSolid.cavity("S14 wall hanging from the ceiling", lintel, 40, 10, 30)
                .pocket(4560, 18));
        double[] steps = new double[7];
        double[] rises = new double[7];
        for (int i = 0; i < 7; i++) {
            steps[i] = 12 * i;
            rises[i] = 7 * i;
        }
        Figure stairs =
                Shapes.blocks(steps, new double[] {0, 25}, rises, (x, y, z) -> Math.floor(x / 12) >= Math.floor(z / 7));
        all.add(KnownSolid.cavity("S15 stairs, vent on the second step", stairs, 18, 12, 14)
                .pocket(21000, 14));
        Figure tee = Shapes.blocks(
                new double[] {0, 20, 36, 60},
                new double[] {0, 20},
                new double[] {0, 12, 47},
                (x, y, z) -> z < 12 || x > 20 && x < 36);
        all.add(KnownSolid.cavity("S16 inverted T, vent on the bar", tee, 5, 10, 12)
                .pocket(11200, 12));
        return all;
    }

    private static List<KnownSolid> prisms(int n) {
        List<KnownSolid> all = new ArrayList<>();
        double[][] letterM = {
            {0, 0}, {10, 0}, {10, 34}, {25, 14}, {40, 34}, {40, 0}, {50, 0}, {50, 50}, {40, 50}, {25, 30}, {10, 50},
            {0, 50}
        };
        all.add(KnownSolid.cavity("S26 letter M, vent on the left post", Shapes.prism(letterM, 0, 8), 5, 4, 50)
                .pocket(8 * (200 + 150 - 6), 30));
        all.add(letterE());
        all.add(arch(n));
        all.add(humps(n));
        return all;
    }

    private static KnownSolid letterE() {
        double t = 8;
        double l = 32;
        double th = Math.toRadians(9);
        double[][] outline = {
            {0, 0},
            {10 + l, 0},
            {10 + l, t},
            {10, t},
            {10, 21},
            {10 + l, 21},
            {10 + l, 21 + t},
            {10, 21 + t},
            {10, 42},
            {10 + l, 42},
            {10 + l, 42 + t},
            {0, 42 + t}
        };
        Figure letter = Shapes.prism(outline, 0, 8);
        double volume = 8 * l * l * Math.tan(th) / 2;
        double sin = Math.sin(th);
        double cos = Math.cos(th);
        return KnownSolid.cavity("S27 letter E, arm tips raised", letter, 10 + l, 4, 42 + t)
                .up(sin, 0, cos)
                .pocket(volume, 10 * sin + t * cos)
                .pocket(volume, 10 * sin + (21 + t) * cos);
    }

    private static KnownSolid arch(int n) {
        double[][] outer = Shapes.arc(0, 40, 30, 0, 180, n / 2);
        double[][] inner = Shapes.arc(0, 40, 18, 180, 0, n / 2);
        // The circle helper turns about an axis and folds negative radii; here both sides are needed.
        List<double[]> outline = new ArrayList<>();
        outline.add(new double[] {30, 0});
        for (int i = 0; i < outer.length; i++) {
            double angle = Math.PI * i / (outer.length - 1);
            outline.add(new double[] {30 * Math.cos(angle), 40 + 30 * Math.sin(angle)});
        }
        outline.add(new double[] {-30, 0});
        outline.add(new double[] {-18, 0});
        for (int i = 0; i < inner.length; i++) {
            double angle = Math.PI - Math.PI * i / (inner.length - 1);
            outline.add(new double[] {18 * Math.cos(angle), 40 + 18 * Math.sin(angle)});
        }
        outline.add(new double[] {18, 0});
        Figure arch = Shapes.prism(outline.toArray(double[][]::new), 0, 15);
        double volume = 15 * (2 * 12 * 15 + Math.PI * (900 - 324) / 2);
        return KnownSolid.cavity("S28 arch, vent in one leg", arch, 30, 7, 25)
                .gate(-24, 7, 0)
                .pocket(volume, 25);
    }

    private static KnownSolid humps(int n) {
        double a = 20;
        double edge = a * Math.sqrt(1 + Math.sqrt(30.0 / 9));
        List<double[]> outline = new ArrayList<>();
        outline.add(new double[] {-edge, -5});
        outline.add(new double[] {edge, -5});
        for (int i = 0; i <= 2 * n; i++) {
            double x = i == n ? 0 : edge - 2 * edge * i / (2 * n);
            outline.add(new double[] {x, 30 - 9 * square(square(x / a) - 1)});
        }
        Figure body = Shapes.prism(outline.toArray(double[][]::new), 0, 25);
        // The vent stands on the vertex that is highest on the right hump.
        double[] top = outline.stream()
                .filter(p -> p[0] > 0)
                .max(java.util.Comparator.comparingDouble(p -> p[1]))
                .orElseThrow();
        return KnownSolid.cavity("S31 ceiling with two humps", body, top[0], 0, top[1])
                .pocket(8 * Math.sqrt(2) / 15 * 25 * 9 * a, 21);
    }
}
