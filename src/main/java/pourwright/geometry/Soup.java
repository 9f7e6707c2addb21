package pourwright.geometry;

import java.util.Arrays;

/** Triangles as a file lists them, with vertices at the same place made one while they arrive. */
final class Soup {
    /** Larger numbers cannot be lengths of a part in any unit, and their products would leave the range of numbers. */
    private static final double LARGEST = 1e12;

    private final Limits limits;
    private double[] xyz = new double[3 * 1024];
    private int vertices;
    private int[] triangles = new int[3 * 2048];
    private int triangleCount;
    private int[] slots = new int[4096];
    private int points;
    /** What was odd in the file but could be read, in the order found. */
    final java.util.List<String> notes = new java.util.ArrayList<>();

    Soup(Limits limits) {
        this.limits = limits;
    }

    int vertices() {
        return vertices;
    }

    int triangleCount() {
        return triangleCount;
    }

    /** How many vertices were handed in, before those at the same place were made one. */
    int pointsGiven() {
        return points;
    }

    double coordinate(int vertex, int axis) {
        return xyz[3 * vertex + axis];
    }

    int corner(int triangle, int corner) {
        return triangles[3 * triangle + corner];
    }

    /**
     * Adds a vertex, or finds the one at exactly this place.
     *
     * @param where names the place in the file, for a fault
     */
    int vertex(double x, double y, double z, Object where) {
        if (!(Math.abs(x) <= LARGEST && Math.abs(y) <= LARGEST && Math.abs(z) <= LARGEST)) {
            boolean number = Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z);
            throw new MeshFault(
                    number
                            ? "A coordinate at " + where + " is too large for a part; the most is 1e12."
                            : "A coordinate at " + where + " is not a number.");
        }
        points++;
        // Adding zero makes -0 and 0 the same place.
        double px = x + 0.0;
        double py = y + 0.0;
        double pz = z + 0.0;
        int slot = (int) (mix(px, py, pz) & (slots.length - 1));
        while (slots[slot] != 0) {
            int at = 3 * (slots[slot] - 1);
            if (xyz[at] == px && xyz[at + 1] == py && xyz[at + 2] == pz) {
                return slots[slot] - 1;
            }
            slot = (slot + 1) & (slots.length - 1);
        }
        if (vertices >= limits.vertices()) {
            throw new MeshFault(
                    "The mesh has more than " + limits.vertices() + " vertices, which is the most accepted.");
        }
        if (3 * vertices + 3 > xyz.length) {
            xyz = Arrays.copyOf(xyz, xyz.length * 2);
        }
        xyz[3 * vertices] = px;
        xyz[3 * vertices + 1] = py;
        xyz[3 * vertices + 2] = pz;
        slots[slot] = ++vertices;
        if (2 * vertices > slots.length) {
            growSlots();
        }
        return vertices - 1;
    }

    private void growSlots() {
        int[] larger = new int[slots.length * 2];
        for (int v = 0; v < vertices; v++) {
            int slot = (int) (mix(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]) & (larger.length - 1));
            while (larger[slot] != 0) {
                slot = (slot + 1) & (larger.length - 1);
            }
            larger[slot] = v + 1;
        }
        slots = larger;
    }

    void triangle(int a, int b, int c) {
        if (triangleCount >= limits.triangles()) {
            throw new MeshFault(
                    "The mesh has more than " + limits.triangles() + " triangles, which is the most accepted.");
        }
        if (3 * triangleCount + 3 > triangles.length) {
            triangles = Arrays.copyOf(triangles, triangles.length * 2);
        }
        triangles[3 * triangleCount] = a;
        triangles[3 * triangleCount + 1] = b;
        triangles[3 * triangleCount + 2] = c;
        triangleCount++;
    }

    /** A well-mixed number for a place; the constants are those of the splitmix64 generator. */
    static long mix(double x, double y, double z) {
        long bits = Double.doubleToLongBits(x);
        bits = stir(bits) + Double.doubleToLongBits(y);
        bits = stir(bits) + Double.doubleToLongBits(z);
        return stir(bits);
    }

    private static long stir(long value) {
        long mixed = value + 0x9E3779B97F4A7C15L;
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }
}
