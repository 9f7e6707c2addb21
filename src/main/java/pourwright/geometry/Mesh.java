package pourwright.geometry;

/**
 * A checked, closed surface of triangles in metres. The normals point out of the solid.
 * Vertices and triangles stand in an order that depends on the shape alone, so the order in the file never matters.
 */
public final class Mesh {
    /** Coordinates less the origin, three for each vertex, m. */
    final double[] xyz;
    /** Vertices of the triangles, three for each. */
    final int[] triangles;
    /** For each vertex the range of its neighbours in {@link #neighbours}. */
    final int[] firstNeighbour;
    /** Vertices that share an edge. */
    final int[] neighbours;
    /** Boxes around the triangles. */
    final Bvh boxes;
    /** Middle of the mesh in the coordinates of the file, m; inside, all is counted from here to keep digits. */
    final Vec3 origin;
    /** Whether no two parts of the surface cross or lie on each other. */
    final boolean simple;

    private final MeshReport report;

    Mesh(double[] xyz, int[] triangles, Edges edges, Bvh boxes, Vec3 origin, MeshReport report) {
        this.xyz = xyz;
        this.triangles = triangles;
        this.firstNeighbour = edges.firstNeighbour;
        this.neighbours = edges.neighbours;
        this.boxes = boxes;
        this.origin = origin;
        this.simple = report.crossings() == 0;
        this.report = report;
    }

    /** What was found and put right while reading. */
    public MeshReport report() {
        return report;
    }

    /** How many triangles there are. */
    public int triangleCount() {
        return triangles.length / 3;
    }

    /** Greatest height u.x, m. */
    public double highestM(Vec3 up) {
        Vec3 unit = up.unit();
        double high = Double.NEGATIVE_INFINITY;
        for (int v : triangles) {
            high = Math.max(high, local(v).dot(unit));
        }
        return high + origin.dot(unit);
    }

    int vertexCount() {
        return xyz.length / 3;
    }

    /** A vertex in the coordinates of the file, m. */
    Vec3 vertex(int vertex) {
        return local(vertex).plus(origin);
    }

    /** A vertex counted from the origin of the mesh, m. */
    Vec3 local(int vertex) {
        return new Vec3(xyz[3 * vertex], xyz[3 * vertex + 1], xyz[3 * vertex + 2]);
    }

    /** Length of the diagonal of the box around the mesh, m. */
    public double sizeM() {
        return report.high().minus(report.low()).length();
    }

    /** Distance below which two heights cannot be told apart: the step of the 32-bit numbers that most files hold, m. */
    double noiseM() {
        Vec3 far = report.high();
        Vec3 near = report.low();
        double most = 0;
        for (Vec3 v : new Vec3[] {far, near}) {
            most = Math.max(most, Math.max(Math.abs(v.x()), Math.max(Math.abs(v.y()), Math.abs(v.z()))));
        }
        return most * FLOAT_STEP;
    }

    /** Two units in the last place of a 32-bit number, relative to its value. */
    private static final double FLOAT_STEP = 2.4e-7;
}
