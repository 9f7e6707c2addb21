package pourwright.geometry;

/** A quick count of the tops of a domain on the surface: vertices with no higher neighbour and the domain below them. */
final class LocalTops {

    private LocalTops() {}

    static int count(Mesh mesh, Frame frame, Domain domain) {
        double[] facing = new double[mesh.vertexCount()];
        int[] corners = mesh.triangles;
        for (int t = 0; t < corners.length; t += 3) {
            double area = frame.twiceArea(corners[t], corners[t + 1], corners[t + 2]);
            facing[corners[t]] += area;
            facing[corners[t + 1]] += area;
            facing[corners[t + 2]] += area;
        }
        double sign = domain == Domain.CAVITY ? 1 : -1;
        double tie = mesh.noiseM();
        int tops = 0;
        for (int v = 0; v < facing.length; v++) {
            if (sign * facing[v] > 0 && isTop(mesh, frame.h, v, tie)) {
                tops++;
            }
        }
        return tops;
    }

    /** Of the vertices of a flat top only one without an earlier level neighbour counts. */
    private static boolean isTop(Mesh mesh, double[] h, int v, double tie) {
        for (int at = mesh.firstNeighbour[v]; at < mesh.firstNeighbour[v + 1]; at++) {
            int w = mesh.neighbours[at];
            if (h[w] > h[v] + tie || (w < v && h[w] >= h[v] - tie)) {
                return false;
            }
        }
        return mesh.firstNeighbour[v] < mesh.firstNeighbour[v + 1];
    }
}
