package pourwright.geometry;

import java.util.Arrays;

/**
 * The tree of air spaces: how the pieces of the domain above a falling level appear at tops, join, and reach outlets.
 *
 * <p>Points of the domain are nodes with a height; a link joins two nodes at the lower of their heights. Nodes are taken
 * from the highest to the lowest, all nodes of one height together, so equal heights never depend on an order. A piece is
 * sealed at the height where it first shares a space with an outlet, or forms a larger piece with another.
 * Source: the join tree of Carr, Snoeyink, Axen, Computational Geometry 24, 2003, with outlets added.
 */
final class JoinTree {
    /** Answer of {@link Tops}: nothing of the domain lies above. */
    static final int PEAK = -1;
    /** Label of a node whose space has an outlet. */
    static final int VENTED = -1;
    /** Label of a node that was never reached. */
    static final int NONE = -2;

    /** Says for a top of the surface whether it is a top of the domain, or which node lies straight above it. */
    interface Tops {
        /** {@link #PEAK}, or a node that is no lower. */
        int above(int node);
    }

    private final JoinGraph graph;
    private final double tie;
    private final int[] root;
    private final boolean[] seen;
    private final boolean[] vented;
    private final int[] list;
    private final int[] tail;
    private final int[] stamp;
    private final double[] lowest;
    private int batch;

    /** For each node the piece it belongs to at its own height, {@link #VENTED} or {@link #NONE}. */
    final int[] label;
    /** Pieces in the order they formed: a parent comes after its children. */
    int pieces;

    int[] parent = new int[64];
    int[] next = new int[64];
    int[] peak = new int[64];
    int[] seal = new int[64];
    double[] peakHeight = new double[64];
    /** Sealing height; minus infinity for a piece that no outlet ever reached. */
    double[] sealHeight = new double[64];

    /** Whether an outlet seals the piece, rather than a join with another piece. */
    boolean[] sealedByOutlet = new boolean[64];

    private JoinTree(JoinGraph graph, double tie) {
        int count = graph.height.length;
        this.graph = graph;
        this.tie = tie;
        root = new int[count];
        seen = new boolean[count];
        vented = new boolean[count];
        list = new int[count];
        tail = new int[count];
        stamp = new int[count];
        lowest = new double[count];
        label = new int[count];
        Arrays.fill(label, NONE);
    }

    /**
     * Builds the tree.
     *
     * @param tie  heights that differ by no more count as equal, m
     * @param stop nodes at this height or below are not taken: there the domain ends in a floor
     */
    static JoinTree build(JoinGraph graph, Tops tops, double tie, double stop) {
        JoinTree tree = new JoinTree(graph, tie);
        int[] order = HeightOrder.descending(graph.height);
        int from = 0;
        while (from < order.length && graph.height[order[from]] > stop) {
            int to = from + 1;
            double level = graph.height[order[from]];
            while (to < order.length && graph.height[order[to]] >= level - tie && graph.height[order[to]] > stop) {
                to++;
            }
            tree.take(order, from, to, level, tops);
            from = to;
        }
        return tree;
    }

    /** The root of a node in a forest of parents, shortening the way by halves. */
    static int root(int[] parent, int node) {
        int at = node;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    private void take(int[] order, int from, int to, double level, Tops tops) {
        batch++;
        for (int i = from; i < to; i++) {
            int v = order[i];
            root[v] = v;
            list[v] = -1;
            tail[v] = -1;
        }
        SealPlaces.note(this, graph, order, from, to);
        for (int i = from; i < to; i++) {
            seen[order[i]] = true;
            vented[order[i]] = graph.outlet[order[i]];
        }
        for (int i = from; i < to; i++) {
            int v = order[i];
            for (int at = graph.first(v); at < graph.end(v); at++) {
                int w = graph.neighbour(at);
                if (seen[w]) {
                    join(v, w);
                }
            }
        }
        for (int i = from; i < to; i++) {
            born(order[i], level, tops);
        }
        for (int i = from; i < to; i++) {
            int r = root(root, order[i]);
            if (stamp[r] != batch) {
                stamp[r] = batch;
                lowest[r] = level;
                settle(r, order[i], level);
            }
        }
        for (int i = from; i < to; i++) {
            int r = root(root, order[i]);
            label[order[i]] = vented[r] ? VENTED : list[r];
        }
    }

    boolean seen(int node) {
        return seen[node];
    }

    /** The piece that holds a node now, or {@link #VENTED}. */
    int pieceNow(int node) {
        int r = root(root, node);
        return vented[r] ? VENTED : list[r];
    }

    private void join(int v, int w) {
        int a = root(root, v);
        int b = root(root, w);
        if (a == b) {
            return;
        }
        // The lower index stays, so that the outcome is the same for the same mesh.
        int keep = Math.min(a, b);
        int lose = Math.max(a, b);
        root[lose] = keep;
        vented[keep] |= vented[lose];
        if (list[lose] >= 0) {
            if (list[keep] < 0) {
                list[keep] = list[lose];
            } else {
                next[tail[keep]] = list[lose];
            }
            tail[keep] = tail[lose];
        }
    }

    /** A piece without older parts is a top of the domain, unless more of the domain lies straight above it. */
    private void born(int v, double level, Tops tops) {
        int r = root(root, v);
        if (vented[r] || list[r] >= 0) {
            return;
        }
        int above = tops.above(v);
        if (above != PEAK) {
            join(v, above);
            return;
        }
        int piece = newPiece(v, level);
        list[r] = piece;
        tail[r] = piece;
    }

    private int newPiece(int node, double level) {
        if (pieces == parent.length) {
            int size = pieces * 2;
            parent = Arrays.copyOf(parent, size);
            next = Arrays.copyOf(next, size);
            peak = Arrays.copyOf(peak, size);
            seal = Arrays.copyOf(seal, size);
            peakHeight = Arrays.copyOf(peakHeight, size);
            sealHeight = Arrays.copyOf(sealHeight, size);
            sealedByOutlet = Arrays.copyOf(sealedByOutlet, size);
        }
        parent[pieces] = -1;
        next[pieces] = -1;
        peak[pieces] = node;
        peakHeight[pieces] = level;
        seal[pieces] = -1;
        sealHeight[pieces] = Double.NEGATIVE_INFINITY;
        return pieces++;
    }

    private void settle(int r, int node, double level) {
        int head = list[r];
        if (vented[r]) {
            for (int piece = head; piece >= 0; piece = next[piece]) {
                close(piece, node, level);
                sealedByOutlet[piece] = true;
            }
            list[r] = -1;
            tail[r] = -1;
        } else if (head >= 0 && next[head] >= 0) {
            int whole = newPiece(peak[head], peakHeight[head]);
            for (int piece = head; piece >= 0; piece = next[piece]) {
                close(piece, node, level);
                parent[piece] = whole;
                boolean higher = peakHeight[piece] > peakHeight[whole];
                if (higher || (peakHeight[piece] == peakHeight[whole] && peak[piece] < peak[whole])) {
                    peak[whole] = peak[piece];
                    peakHeight[whole] = peakHeight[piece];
                }
            }
            list[r] = whole;
            tail[r] = whole;
        } else if (head >= 0) {
            seal[head] = -1;
        }
    }

    private void close(int piece, int node, double level) {
        sealHeight[piece] = level;
        if (seal[piece] < 0) {
            seal[piece] = node;
        }
    }

    /** The lowest height that the space around a node reached, m. */
    double lowest(int node) {
        return lowest[root(root, node)];
    }

    double tie() {
        return tie;
    }
}
