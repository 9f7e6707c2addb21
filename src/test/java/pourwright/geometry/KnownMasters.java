package pourwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Masters in an open-top box with closed forms. Lengths in mm. */
final class KnownMasters {

    private KnownMasters() {}

    static List<KnownSolid> masters(int n) {
        List<KnownSolid> all = new ArrayList<>();
        all.add(KnownSolid.around("S17a T-slot in the underside, closed ends", slot(10, 50))
                .pocket(11520, 20));
        all.add(KnownSolid.around("S17b T-slot open at both ends", slot(-1, 61)));
        all.add(KnownSolid.around("S17c T-slot open at one end", slot(10, 61)));
        all.add(KnownSolid.around("S18a cup upside down", cup(n)).pocket(Math.PI * 324 * 35, 0));
        all.add(KnownSolid.around("S19a table with an apron", table(9)).pocket((74 * 44 - 100) * 9, 31));
        all.add(KnownSolid.around("S19b table without an apron", table(0)));
        for (double degrees : new double[] {4, 20, 30}) {
            all.add(tray(degrees));
        }
        double e = 15.0 / 12 * Math.tan(Math.toRadians(10));
        Figure recess = Shapes.turned(new double[][] {{0, 12}, {15, 0}, {30, 0}, {30, 25}, {0, 25}}, n);
        double tilt = Math.toRadians(10);
        all.add(KnownSolid.around("S23 cone-shaped recess, tilted", recess)
                .up(Math.sin(tilt), 0, Math.cos(tilt))
                .pocket(Math.PI * 225 * 12 / 3 * Math.pow((1 - e) / (1 + e), 1.5), 15 * Math.sin(tilt)));
        double ballR = (144 + 25) / 10.0;
        double half = Math.toDegrees(Math.asin(12 / ballR));
        Figure dimple = Shapes.turned(
                Shapes.path(
                        Shapes.arc(0, 5 - ballR, ballR, 90, 90 - half, n / 2),
                        new double[][] {{30, 0}, {30, 25}, {0, 25}}),
                n);
        all.add(KnownSolid.around("S24a dimple shaped like a ball", snapped(dimple))
                .pocket(Math.PI * 5 * (432 + 25) / 6, 0));
        double flatZ = -Math.sqrt(900 - 100);
        double[][] flatted = Shapes.arc(0, 0, 30, Math.toDegrees(Math.asin(flatZ / 30)), 90, n / 2);
        all.add(KnownSolid.around(
                "S24b ball with a flat underside",
                Shapes.turned(Shapes.path(new double[][] {{0, flatted[0][1]}}, flatted), n)));
        Figure groove = Shapes.turned(
                Shapes.path(new double[][] {{0, 0}}, Shapes.arc(20, 0, 4, 180, 0, n / 2), new double[][] {
                    {40, 0}, {40, 20}, {0, 20}
                }),
                n);
        all.add(KnownSolid.around("S25 ring groove in the underside", snapped(groove))
                .pocket(Math.PI * Math.PI * 320, 0));
        all.add(KnownSolid.around("ball: nothing to trap", Shapes.ball(30, n)));
        return all;
    }

    /** Rims that lie in the plane of the underside, but for rounding, are put into it. */
    private static Figure snapped(Figure figure) {
        return figure.moved(v -> new Vec3(v.x(), v.y(), Math.abs(v.z()) < 1e-9 ? 0 : v.z()));
    }

    private static Figure slot(double from, double to) {
        return Shapes.blocks(
                new double[] {0, 18, 24, 36, 42, 60},
                new double[] {0, 10, 50, 60},
                new double[] {20, 28, 36, 55},
                (x, y, z) -> {
                    boolean along = y > from && y < to;
                    boolean neck = z < 28 && x > 24 && x < 36;
                    boolean head = z > 28 && z < 36 && x > 18 && x < 42;
                    return !(along && (neck || head));
                });
    }

    static Figure cup(int n) {
        return Shapes.turned(new double[][] {{0, 35}, {18, 35}, {18, 0}, {22, 0}, {22, 40}, {0, 40}}, n);
    }

    private static Figure table(double apron) {
        return Shapes.blocks(
                new double[] {0, 3, 8, 72, 77, 80},
                new double[] {0, 3, 8, 42, 47, 50},
                apron > 0 ? new double[] {0, 40 - apron, 40, 45} : new double[] {0, 40, 45},
                (x, y, z) -> {
                    boolean leg = (x > 3 && x < 8 || x > 72 && x < 77) && (y > 3 && y < 8 || y > 42 && y < 47);
                    boolean rim = x < 3 || x > 77 || y < 3 || y > 47;
                    return z > 40 || leg || rim && z > 40 - apron;
                });
    }

    static KnownSolid tray(double degrees) {
        Figure tray = Shapes.blocks(
                new double[] {-5, 0, 60, 65},
                new double[] {-5, 0, 30, 35},
                new double[] {0, 10, 14},
                (x, y, z) -> z > 10 || x < 0 || x > 60 || y < 0 || y > 30);
        double t = Math.toRadians(degrees);
        double tan = Math.tan(t);
        double volume = 60 * tan <= 10 ? 30 * (600 - 3600 * tan / 2) : 30 * 100 / (2 * tan);
        return KnownSolid.around("S20 tray upside down, tilted by " + degrees, tray)
                .up(Math.sin(t), 0, Math.cos(t))
                .pocket(volume, 60 * Math.sin(t));
    }
}
