package pourwright.geometry;

import java.util.Arrays;

/**
 * Points of the domain with their heights and links. The first nodes are those of the mesh or of the columns; after them
 * come the outlets, each linked to a few nodes, and last the open air above everything.
 */
final class JoinGraph {
    final double[] height;
    final boolean[] outlet;
    private final int base;
    private final int[] first;
    private final int[] neighbours;
    private int[] extra = new int[0];
    private final int[] extraFirst;

    /**
     * A graph.
     *
     * @param baseHeight heights of the mesh's vertices or of the columns' stays, m; minus infinity for one that is not used
     * @param first      where the neighbours of each begin, with one more at the end
     * @param neighbours the neighbours
     * @param outletHeight height of each outlet, m
     * @param outletLinks  nodes of the base that each outlet opens into
     */
    JoinGraph(double[] baseHeight, int[] first, int[] neighbours, double[] outletHeight, int[][] outletLinks) {
        this.base = baseHeight.length;
        this.first = first;
        this.neighbours = neighbours;
        int outlets = outletHeight.length;
        height = Arrays.copyOf(baseHeight, base + outlets + 1);
        System.arraycopy(outletHeight, 0, height, base, outlets);
        height[base + outlets] = Double.POSITIVE_INFINITY;
        outlet = new boolean[height.length];
        Arrays.fill(outlet, base, height.length, true);
        extraFirst = new int[outlets + 2];
        for (int i = 0; i < outlets; i++) {
            extraFirst[i + 1] = extraFirst[i] + outletLinks[i].length;
            extra = Arrays.copyOf(extra, extraFirst[i + 1]);
            System.arraycopy(outletLinks[i], 0, extra, extraFirst[i], outletLinks[i].length);
        }
        extraFirst[outlets + 1] = extraFirst[outlets];
    }

    int openAir() {
        return height.length - 1;
    }

    int firstOutlet() {
        return base;
    }

    /** Range of a node's links for {@link #neighbour}; those of the outlets follow those of the base. */
    int first(int node) {
        return node < base ? first[node] : neighbours.length + extraFirst[node - base];
    }

    int end(int node) {
        return node < base ? first[node + 1] : neighbours.length + extraFirst[node - base + 1];
    }

    int neighbour(int at) {
        return at < neighbours.length ? neighbours[at] : extra[at - neighbours.length];
    }
}
