package pourwright.geometry;

/** A triangle's corners after all below a level is cut away. */
final class ClippedTriangle {
    private final Mesh mesh;
    private final Frame frame;
    /** Corners counted from the mesh's origin, three coordinates each, m. */
    final double[] corners = new double[12];

    int count;

    ClippedTriangle(Mesh mesh, Frame frame) {
        this.mesh = mesh;
        this.frame = frame;
    }

    /** Cuts a triangle; false when nothing of it lies above. */
    boolean above(int triangle, double level) {
        count = 0;
        for (int i = 0; i < 3; i++) {
            int p = mesh.triangles[3 * triangle + i];
            int q = mesh.triangles[3 * triangle + (i + 1) % 3];
            double hp = frame.h[p] - level;
            double hq = frame.h[q] - level;
            if (hp >= 0) {
                put(p, q, 0);
            }
            if (hp > 0 && hq < 0 || hp < 0 && hq > 0) {
                put(p, q, hp / (hp - hq));
            }
        }
        return count > 2;
    }

    private void put(int p, int q, double share) {
        for (int axis = 0; axis < 3; axis++) {
            double from = mesh.xyz[3 * p + axis];
            corners[3 * count + axis] = from + share * (mesh.xyz[3 * q + axis] - from);
        }
        count++;
    }
}
