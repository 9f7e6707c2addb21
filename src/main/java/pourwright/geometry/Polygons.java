package pourwright.geometry;

import java.util.Arrays;

/** Vertices and polygons as an indexed file lists them; polygons become triangles once all vertices are known. */
final class Polygons {
    /** Cutting a polygon takes time with the square of its corners. */
    static final int MOST_CORNERS = 2000;

    private final Limits limits;
    private double[] xyz = new double[3 * 1024];
    private int vertices;
    private int[] faces = new int[8 * 1024];
    private int used;
    private int open;
    private int shortFaces;

    Polygons(Limits limits) {
        this.limits = limits;
    }

    int vertices() {
        return vertices;
    }

    void vertex(double x, double y, double z) {
        if (vertices >= limits.vertices()) {
            throw new MeshFault(
                    "The mesh has more than " + limits.vertices() + " vertices, which is the most accepted.");
        }
        if (3 * vertices + 3 > xyz.length) {
            xyz = Arrays.copyOf(xyz, xyz.length * 2);
        }
        xyz[3 * vertices] = x;
        xyz[3 * vertices + 1] = y;
        xyz[3 * vertices + 2] = z;
        vertices++;
    }

    /** Begins a polygon; its corners follow. */
    void begin(int place) {
        open = used;
        put(place);
        put(0);
    }

    void corner(int vertex) {
        if (faces[open + 1] >= MOST_CORNERS) {
            throw new MeshFault("The polygon at " + faces[open] + " has more than " + MOST_CORNERS + " corners.");
        }
        faces[open + 1]++;
        put(vertex);
    }

    private void put(int value) {
        if (used == faces.length) {
            if (used > 8L * limits.triangles()) {
                throw new MeshFault(
                        "The mesh has more than " + limits.triangles() + " triangles, which is the most accepted.");
            }
            faces = Arrays.copyOf(faces, used * 2);
        }
        faces[used++] = value;
    }

    /**
     * Hands all over as triangles.
     *
     * @param vertexWord how to name a vertex in a fault
     * @param faceWord   how to name the place of a polygon in a fault, such as line
     */
    void into(Soup soup, String vertexWord, String faceWord) {
        int[] welded = new int[vertices];
        for (int v = 0; v < vertices; v++) {
            welded[v] = soup.vertex(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2], new Place(vertexWord, v + 1L));
        }
        int at = 0;
        while (at < used) {
            int corners = faces[at + 1];
            for (int i = 0; i < corners; i++) {
                int vertex = faces[at + 2 + i];
                if (vertex < 0 || vertex >= vertices) {
                    throw new MeshFault("The polygon at " + faceWord + " " + faces[at] + " asks for vertex " + vertex
                            + " (counted from 0), but there are " + vertices + ".");
                }
            }
            if (corners < 3) {
                shortFaces++;
            } else {
                cut(at + 2, corners, welded, soup);
            }
            at += 2 + corners;
        }
        if (shortFaces > 0) {
            soup.notes.add(shortFaces + " faces with fewer than three corners were left out.");
        }
        if (soup.triangleCount() == 0) {
            throw new MeshFault("The file holds no face; a closed part needs at least 4 triangles.");
        }
    }

    private void cut(int from, int corners, int[] welded, Soup soup) {
        if (corners == 3) {
            soup.triangle(welded[faces[from]], welded[faces[from + 1]], welded[faces[from + 2]]);
            return;
        }
        int[] ring = Arrays.copyOfRange(faces, from, from + corners);
        int[] cut = EarClipper.triangles(xyz, ring);
        for (int i = 0; i < cut.length; i += 3) {
            soup.triangle(welded[cut[i]], welded[cut[i + 1]], welded[cut[i + 2]]);
        }
    }
}
