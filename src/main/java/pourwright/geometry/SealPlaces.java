package pourwright.geometry;

/**
 * Where a piece of air is sealed: the node at which it meets another piece. Of the nodes at the sealing height an
 * outlet or one that touches two pieces is best, then one whose neighbour at the same height does not touch the piece, then any.
 */
final class SealPlaces {
    private static final int NOTHING = -2;

    private SealPlaces() {}

    /** Looks at the nodes about to be taken, before any of them is joined. */
    static void note(JoinTree tree, JoinGraph graph, int[] order, int from, int to) {
        for (int i = from; i < to; i++) {
            int v = order[i];
            int first = NOTHING;
            for (int at = graph.first(v); at < graph.end(v); at++) {
                int w = graph.neighbour(at);
                if (!tree.seen(w)) {
                    continue;
                }
                int piece = tree.pieceNow(w);
                if (first == NOTHING) {
                    first = piece;
                } else if (piece != first) {
                    set(tree, first, v);
                    set(tree, piece, v);
                }
            }
            if (graph.outlet[v]) {
                set(tree, first, v);
            }
            tree.label[v] = first;
        }
        // A plateau: the piece ends where its neighbour at the same height no longer touches it.
        for (int i = from; i < to; i++) {
            int v = order[i];
            int piece = tree.label[v];
            if (piece < 0 || tree.seal[piece] >= 0) {
                continue;
            }
            for (int at = graph.first(v); at < graph.end(v); at++) {
                int w = graph.neighbour(at);
                if (!tree.seen(w) && graph.height[w] >= graph.height[order[to - 1]] && tree.label[w] != piece) {
                    set(tree, piece, v);
                }
            }
        }
        for (int i = from; i < to; i++) {
            set(tree, tree.label[order[i]], order[i]);
        }
    }

    private static void set(JoinTree tree, int piece, int node) {
        if (piece >= 0 && tree.seal[piece] < 0) {
            tree.seal[piece] = node;
        }
    }
}
