package pourwright.geometry;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Air spaces found on the surface alone, exactly. It holds for a closed surface whose parts neither cross nor touch.
 *
 * <p>Why the surface is enough: pieces of the domain above a falling level can appear or join only at a vertex. Where two
 * pieces join at a vertex, so do the pieces of surface that bound them. A piece of surface that appears at a top with more
 * of the domain above it, such as the top of a core, belongs to the space of the surface straight above it, which one ray
 * finds. So the edges of the mesh and one ray for each such top give the joins of the solid spaces, with exact heights.
 */
final class SurfaceAir implements Air {
    private final Mesh mesh;
    private final Frame frame;
    private final Domain domain;
    private final JoinTree tree;
    private final Outlets outlets;
    private final double[] volume;
    private final double[] waterline;
    private final double[] rim;
    private final double lowestH;
    private final double sign;
    private double flatCeiling;
    private final double[] flatArea;
    private final int[] flatTriangle;

    private SurfaceAir(Mesh mesh, Frame frame, Domain domain, Outlets outlets, JoinTree tree, double lowestH) {
        this.mesh = mesh;
        this.frame = frame;
        this.domain = domain;
        this.tree = tree;
        this.outlets = outlets;
        this.lowestH = lowestH;
        this.sign = domain == Domain.CAVITY ? 1 : -1;
        volume = new double[tree.pieces];
        waterline = new double[tree.pieces];
        rim = new double[tree.pieces];
        flatArea = new double[tree.pieces];
        flatTriangle = new int[tree.pieces];
        Arrays.fill(flatTriangle, -1);
        measure();
    }

    static SurfaceAir find(Mesh mesh, Frame frame, Domain domain, Outlets outlets) {
        double tie = mesh.noiseM();
        double[] height = frame.h.clone();
        double lowest = Double.POSITIVE_INFINITY;
        for (int v = 0; v < height.length; v++) {
            if (mesh.firstNeighbour[v] == mesh.firstNeighbour[v + 1]) {
                height[v] = Double.NEGATIVE_INFINITY;
            } else {
                lowest = Math.min(lowest, height[v]);
            }
        }
        int[][] links = new int[outlets.count()][];
        double[] outletH = new double[outlets.count()];
        for (int i = 0; i < links.length; i++) {
            int top = highest(mesh, frame, outlets.triangle(i));
            links[i] = new int[] {top};
            outletH[i] = Math.min(outlets.place(i).dot(frame.up), frame.h[top]);
        }
        JoinGraph graph = new JoinGraph(height, mesh.firstNeighbour, mesh.neighbours, outletH, links);
        UpRay ray = new UpRay(mesh.triangles, mesh.boxes, frame, tie);
        boolean cavity = domain == Domain.CAVITY;
        JoinTree.Tops tops = v -> {
            if (v >= height.length) {
                return JoinTree.PEAK;
            }
            ray.cast(mesh.xyz, v, null);
            if (cavity != (ray.winding != 0)) {
                return JoinTree.PEAK;
            }
            return ray.nearest < 0 ? graph.openAir() : highest(mesh, frame, ray.nearest);
        };
        double stop = domain == Domain.AROUND_ON_FLOOR ? lowest + tie : Double.NEGATIVE_INFINITY;
        return new SurfaceAir(mesh, frame, domain, outlets, JoinTree.build(graph, tops, tie, stop), lowest);
    }

    private static int highest(Mesh mesh, Frame frame, int t) {
        int best = mesh.triangles[3 * t];
        for (int i = 1; i < 3; i++) {
            int v = mesh.triangles[3 * t + i];
            if (frame.h[v] > frame.h[best]) {
                best = v;
            }
        }
        return best;
    }

    /**
     * Adds every triangle to the pieces it bounds, from its top down the tree. Where a triangle lies wholly above a sealing
     * height it lies wholly in all larger pieces too, so it is added once and handed on in sums.
     */
    private void measure() {
        double[] wholeArea = new double[tree.pieces];
        double[] wholeMoment = new double[tree.pieces];
        TriangleAbove above = new TriangleAbove(frame);
        int[] corners = mesh.triangles;
        for (int t = 0; t < corners.length; t += 3) {
            int p = corners[t];
            int q = corners[t + 1];
            int r = corners[t + 2];
            double low = Math.min(frame.h[p], Math.min(frame.h[q], frame.h[r]));
            double high = Math.max(frame.h[p], Math.max(frame.h[q], frame.h[r]));
            int piece = tree.label[frame.h[p] == high ? p : frame.h[q] == high ? q : r];
            if (high - low <= tree.tie()) {
                flat(t, piece, high);
            }
            while (piece >= 0) {
                double level = sealOrLowest(piece);
                if (low > level) {
                    double area = frame.twiceArea(p, q, r) / 2;
                    wholeArea[piece] += area;
                    wholeMoment[piece] += area * (frame.h[p] + frame.h[q] + frame.h[r]) / 3;
                    break;
                }
                above.cut(p, q, r, level);
                volume[piece] += sign * above.moment;
                waterline[piece] += sign * above.area;
                rim[piece] += above.rim;
                piece = tree.parent[piece];
            }
        }
        for (int piece = 0; piece < tree.pieces; piece++) {
            int parent = tree.parent[piece];
            if (parent >= 0) {
                wholeArea[parent] += wholeArea[piece];
                wholeMoment[parent] += wholeMoment[piece];
            }
            volume[piece] += sign * (wholeMoment[piece] - sealOrLowest(piece) * wholeArea[piece]);
            waterline[piece] += sign * wholeArea[piece];
        }
    }

    private double sealOrLowest(int piece) {
        double level = tree.sealHeight[piece];
        return level == Double.NEGATIVE_INFINITY ? lowestH : level;
    }

    private void flat(int t, int piece, double high) {
        double area = sign * frame.twiceArea(mesh.triangles[t], mesh.triangles[t + 1], mesh.triangles[t + 2]) / 2;
        if (area <= 0) {
            return;
        }
        if (piece == JoinTree.VENTED) {
            flatCeiling += area;
        } else if (piece >= 0 && high >= tree.peakHeight[piece] - tree.tie() && area > flatArea[piece]) {
            flatArea[piece] = area;
            flatTriangle[piece] = t;
        }
    }

    @Override
    public JoinTree tree() {
        return tree;
    }

    @Override
    public Frame frame() {
        return frame;
    }

    @Override
    public double volumeM3(int piece) {
        return volume[piece];
    }

    @Override
    public double sealH(int piece) {
        return tree.sealHeight[piece];
    }

    @Override
    public double waterlineM2(int piece) {
        return Math.max(0, waterline[piece]);
    }

    @Override
    public double mouthWidthM(int piece) {
        return rim[piece] > 0 ? 4 * waterlineM2(piece) / rim[piece] : 0;
    }

    @Override
    public Vec3 peak(int piece) {
        int t = flatTriangle[tree.label[tree.peak[piece]]];
        if (t < 0) {
            return mesh.local(tree.peak[piece]);
        }
        Vec3 sum = mesh.local(mesh.triangles[t])
                .plus(mesh.local(mesh.triangles[t + 1]))
                .plus(mesh.local(mesh.triangles[t + 2]));
        return sum.times(1.0 / 3);
    }

    @Override
    public Vec3 sealedAt(int piece) {
        int node = tree.seal[piece];
        if (node < 0) {
            return null;
        }
        return node < mesh.vertexCount() ? mesh.local(node) : outlets.place(node - mesh.vertexCount());
    }

    @Override
    public boolean sealedAtOutlet(int piece) {
        return tree.seal[piece] >= mesh.vertexCount();
    }

    @Override
    public double flatCeilingM2() {
        return flatCeiling;
    }

    @Override
    public BitSet touched(int piece) {
        double level = sealOrLowest(piece);
        BitSet touched = new BitSet(mesh.triangleCount());
        for (int t = 0; t < mesh.triangleCount(); t++) {
            int top = highest(mesh, frame, t);
            if (frame.h[top] > level && within(tree.label[top], piece)) {
                touched.set(t);
            }
        }
        return touched;
    }

    private boolean within(int label, int piece) {
        int at = label;
        while (at >= 0 && at != piece) {
            at = tree.parent[at];
        }
        return at == piece;
    }

    @Override
    public void show(int piece, Painter painter) {
        double level = sealOrLowest(piece);
        ClippedTriangle clipped = new ClippedTriangle(mesh, frame);
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (within(tree.label[highest(mesh, frame, t)], piece) && clipped.above(t, level)) {
                painter.shape(clipped.corners, clipped.count);
            }
        }
    }

    @Override
    public String toString() {
        return domain + " with " + tree.pieces + " pieces of air";
    }
}
