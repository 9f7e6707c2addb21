package pourwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Sees to it that a surface is closed: turns over triangles that their neighbours contradict, and splits edges at vertices
 * that lie on them. A true hole is a fault.
 */
final class Closing {
    /** More open edges than this are not searched for vertices lying on them: that is a hole, not a seam. */
    private static final int MOST_SEAM_EDGES = 5000;

    private static final int MOST_ROUNDS = 8;

    final List<String> notes = new ArrayList<>();
    int[] triangles;
    Edges closed;
    int flipped;
    int split;

    private final double[] xyz;
    private final Vec3 origin;
    private final double tolerance;

    Closing(double[] xyz, int[] triangles, Vec3 origin, double tolerance) {
        this.xyz = xyz;
        this.triangles = triangles;
        this.origin = origin;
        this.tolerance = tolerance;
        Edges edges = edges();
        int openAtFirst = edges.open;
        if (edges.sameWay > 0) {
            turnOver(edges);
            edges = edges();
            if (edges.sameWay > 0) {
                throw new MeshFault(
                        "Some triangles are turned over, and their neighbours do not settle which; the first is near "
                                + place(edges, true) + ".");
            }
        }
        for (int round = 0; round < MOST_ROUNDS && edges.open > 0 && edges.open <= MOST_SEAM_EDGES; round++) {
            int before = split;
            splitSeams(edges);
            if (split == before) {
                break;
            }
            edges = edges();
        }
        if (edges.open > 0) {
            throw new MeshFault("The surface is not closed: " + Math.max(openAtFirst, edges.open)
                    + " open edges, one near " + place(edges, false) + ". Only a closed surface has an inside.");
        }
        closed = edges;
        if (flipped > 0) {
            notes.add(flipped + " triangles that faced the wrong way were turned over.");
        }
        if (split > 0) {
            notes.add(split + " edges were split at vertices that lie on them.");
        }
    }

    private Edges edges() {
        return new Edges(xyz.length / 3, triangles, triangles.length / 3);
    }

    private String place(Edges edges, boolean sameWay) {
        for (int v = 0; v + 1 < edges.firstHalf.length; v++) {
            int end = edges.firstHalf[v + 1];
            for (int at = edges.firstHalf[v]; at < end; at = edges.groupEnd(at, end)) {
                int to = edges.groupEnd(at, end);
                if (edges.balance(at, to) != 0 && (!sameWay || to - at == 2)) {
                    Vec3 p = new Vec3(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]).plus(origin);
                    return String.format(
                            java.util.Locale.ROOT, "(%.6g, %.6g, %.6g) mm", p.x() * 1000, p.y() * 1000, p.z() * 1000);
                }
            }
        }
        return "an unknown place";
    }

    /** Walks over edges of exactly two triangles and makes all agree; in each piece the fewer are turned. */
    private void turnOver(Edges edges) {
        int[] partner = new int[triangles.length];
        boolean[] contrary = new boolean[triangles.length];
        Arrays.fill(partner, -1);
        for (int v = 0; v + 1 < edges.firstHalf.length; v++) {
            int end = edges.firstHalf[v + 1];
            for (int at = edges.firstHalf[v]; at < end; at = edges.groupEnd(at, end)) {
                if (edges.groupEnd(at, end) - at == 2) {
                    int p = edges.corner(at);
                    int q = edges.corner(at + 1);
                    partner[p] = q;
                    partner[q] = p;
                    contrary[p] = edges.down(at) == edges.down(at + 1);
                    contrary[q] = contrary[p];
                }
            }
        }
        int count = triangles.length / 3;
        byte[] state = new byte[count];
        int[] queue = new int[count];
        for (int seed = 0; seed < count; seed++) {
            if (state[seed] != 0) {
                continue;
            }
            int used = 0;
            int turned = 0;
            state[seed] = 1;
            queue[used++] = seed;
            for (int i = 0; i < used; i++) {
                int t = queue[i];
                turned += state[t] == 2 ? 1 : 0;
                for (int corner = 3 * t; corner < 3 * t + 3; corner++) {
                    int other = partner[corner] < 0 ? t : partner[corner] / 3;
                    if (state[other] == 0) {
                        state[other] = (byte) (contrary[corner] ? 3 - state[t] : state[t]);
                        queue[used++] = other;
                    }
                }
            }
            int turn = 2 * turned > used ? 1 : 2;
            for (int i = 0; i < used; i++) {
                if (state[queue[i]] == turn) {
                    int t = 3 * queue[i];
                    int swap = triangles[t + 1];
                    triangles[t + 1] = triangles[t + 2];
                    triangles[t + 2] = swap;
                    flipped++;
                }
            }
        }
    }

    private void splitSeams(Edges edges) {
        List<int[]> open = new ArrayList<>();
        boolean[] onRim = new boolean[xyz.length / 3];
        for (int v = 0; v + 1 < edges.firstHalf.length; v++) {
            int end = edges.firstHalf[v + 1];
            for (int at = edges.firstHalf[v]; at < end; at = edges.groupEnd(at, end)) {
                if (edges.balance(at, edges.groupEnd(at, end)) != 0) {
                    open.add(new int[] {edges.corner(at), v, edges.other(at)});
                    onRim[v] = true;
                    onRim[edges.other(at)] = true;
                }
            }
        }
        int[] rim = java.util.stream.IntStream.range(0, onRim.length)
                .filter(v -> onRim[v])
                .toArray();
        boolean[] touched = new boolean[triangles.length / 3];
        List<int[]> fans = new ArrayList<>();
        for (int[] edge : open) {
            int t = edge[0] / 3;
            List<Integer> on = touched[t] ? List.of() : between(edge[1], edge[2], rim);
            if (!on.isEmpty()) {
                touched[t] = true;
                split++;
                fans.add(fan(edge[0], on));
            }
        }
        rebuild(touched, fans);
    }

    private void rebuild(boolean[] touched, List<int[]> fans) {
        int size = fans.stream().mapToInt(fan -> fan.length).sum();
        int[] out = new int[triangles.length + size];
        int used = 0;
        for (int t = 0; t < touched.length; t++) {
            if (!touched[t]) {
                System.arraycopy(triangles, 3 * t, out, used, 3);
                used += 3;
            }
        }
        for (int[] fan : fans) {
            System.arraycopy(fan, 0, out, used, fan.length);
            used += fan.length;
        }
        triangles = Arrays.copyOf(out, used);
    }

    /** Vertices of the rim that lie on an edge, in order from its first end. */
    private List<Integer> between(int p, int q, int[] rim) {
        Vec3 start = at(p);
        Vec3 along = at(q).minus(start);
        double length = along.length();
        List<Integer> on = new ArrayList<>();
        for (int v : rim) {
            if (v == p || v == q) {
                continue;
            }
            Vec3 offset = at(v).minus(start);
            double share = offset.dot(along) / (length * length);
            if (share > 0 && share < 1 && offset.minus(along.times(share)).length() <= tolerance) {
                on.add(v);
            }
        }
        on.sort(java.util.Comparator.comparingDouble(
                (Integer v) -> at(v).minus(start).dot(along)));
        return on;
    }

    private Vec3 at(int v) {
        return new Vec3(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
    }

    private int[] fan(int corner, List<Integer> on) {
        int from = triangles[corner];
        int to = triangles[Edges.next(corner)];
        int apex = triangles[Edges.next(Edges.next(corner))];
        List<Integer> path = new ArrayList<>(on);
        if (from > to) {
            java.util.Collections.reverse(path);
        }
        path.add(0, from);
        path.add(to);
        int[] out = new int[3 * (path.size() - 1)];
        for (int i = 0; i + 1 < path.size(); i++) {
            out[3 * i] = path.get(i);
            out[3 * i + 1] = path.get(i + 1);
            out[3 * i + 2] = apex;
        }
        return out;
    }
}
