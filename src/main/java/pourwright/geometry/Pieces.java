package pourwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The pieces of air that are worth telling: the tree without what is too small to be more than noise. */
final class Pieces {
    /** A piece of fewer cubes of a column's width is noise of the columns. */
    static final double CELLS = 8;

    private final Air air;
    private final double ignoreM3;
    private final double noiseM;
    private final double columnM;
    private final int[] firstChild;
    private final int[] children;

    /**
     * Prepares.
     *
     * @param noiseM  depth below which a piece is noise of the mesh, m
     * @param columnM width of the columns, m; 0 for exact spaces
     */
    Pieces(Air air, double ignoreM3, double noiseM, double columnM) {
        this.air = air;
        this.ignoreM3 = ignoreM3;
        this.noiseM = noiseM;
        this.columnM = columnM;
        JoinTree tree = air.tree();
        firstChild = new int[tree.pieces + 1];
        for (int piece = 0; piece < tree.pieces; piece++) {
            if (tree.parent[piece] >= 0) {
                firstChild[tree.parent[piece] + 1]++;
            }
        }
        for (int piece = 0; piece < tree.pieces; piece++) {
            firstChild[piece + 1] += firstChild[piece];
        }
        children = new int[firstChild[tree.pieces]];
        int[] put = Arrays.copyOf(firstChild, tree.pieces);
        for (int piece = 0; piece < tree.pieces; piece++) {
            if (tree.parent[piece] >= 0) {
                children[put[tree.parent[piece]]++] = piece;
            }
        }
    }

    /** Whether a piece counts. A sharp ridge seen by columns breaks into many small tops; those do not. */
    boolean counts(int piece) {
        double volume = air.volumeM3(piece);
        double depth = air.tree().peakHeight[piece] - air.sealH(piece);
        double cube = columnM * columnM * columnM;
        boolean grid = volume < CELLS * cube || (depth < columnM && volume < 64 * cube);
        return volume > ignoreM3 && depth > noiseM && !grid;
    }

    /** Pieces that are no part of another and hold air, in order of volume. */
    List<Integer> roots() {
        JoinTree tree = air.tree();
        List<Integer> roots = new ArrayList<>();
        for (int piece = 0; piece < tree.pieces; piece++) {
            if (tree.parent[piece] < 0) {
                roots.add(piece);
            }
        }
        sort(roots);
        return roots;
    }

    /** Parts of a piece that count: two or more, or none. A single part that counts is looked through to its own parts. */
    List<Integer> parts(int piece) {
        int at = piece;
        while (true) {
            List<Integer> parts = new ArrayList<>();
            for (int i = firstChild[at]; i < firstChild[at + 1]; i++) {
                if (counts(children[i])) {
                    parts.add(children[i]);
                }
            }
            if (parts.size() != 1) {
                sort(parts);
                return parts;
            }
            at = parts.get(0);
        }
    }

    /** Largest first; equal volumes by height and place, so that the order does not hang on the order of triangles. */
    private void sort(List<Integer> pieces) {
        JoinTree tree = air.tree();
        pieces.sort((p, q) -> {
            double vp = air.volumeM3(p);
            double vq = air.volumeM3(q);
            // Volumes that differ by rounding only count as equal.
            boolean equal = Math.abs(vp - vq) <= 1e-9 * Math.max(Math.abs(vp), Math.abs(vq));
            if (!equal) {
                return Double.compare(vq, vp);
            }
            return Integer.compare(tree.peak[p], tree.peak[q]);
        });
    }
}
