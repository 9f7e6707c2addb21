package pourwright.geometry;

/** Which stays of neighbouring columns share a height, and so one space. */
final class ColumnLinks {
    final int[] first;
    final int[] neighbours;
    private final Columns columns;
    private final double thin;

    ColumnLinks(Columns columns, double thin) {
        this.columns = columns;
        this.thin = thin;
        int stays = columns.high.length;
        int[] count = new int[stays + 1];
        pairs((s, t) -> {
            count[s + 1]++;
            count[t + 1]++;
        });
        for (int s = 0; s < stays; s++) {
            count[s + 1] += count[s];
        }
        first = count;
        neighbours = new int[count[stays]];
        int[] put = java.util.Arrays.copyOf(count, stays);
        pairs((s, t) -> {
            neighbours[put[s]++] = t;
            neighbours[put[t]++] = s;
        });
    }

    private interface Pair {
        void of(int s, int t);
    }

    private void pairs(Pair pair) {
        for (int j = 0; j < columns.along; j++) {
            for (int i = 0; i < columns.across; i++) {
                int c = j * columns.across + i;
                if (i + 1 < columns.across) {
                    between(c, c + 1, pair);
                }
                if (j + 1 < columns.along) {
                    between(c, c + columns.across, pair);
                }
            }
        }
    }

    private void between(int c, int d, Pair pair) {
        int s = columns.firstStay[c];
        int t = columns.firstStay[d];
        while (s < columns.firstStay[c + 1] && t < columns.firstStay[d + 1]) {
            double roof = Math.min(columns.high[s], columns.high[t]);
            if (roof - Math.max(columns.low[s], columns.low[t]) > thin) {
                pair.of(s, t);
            }
            if (columns.high[s] < columns.high[t]) {
                s++;
            } else {
                t++;
            }
        }
    }

    /** The stay nearest to a place on the surface, among its own and the eight neighbouring columns. */
    int stayAt(Vec3 place, Frame frame) {
        double a = place.dot(frame.right);
        double b = place.dot(frame.ahead);
        double h = place.dot(frame.up);
        int centre = columns.column(a, b);
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int dj = -1; dj <= 1; dj++) {
            for (int di = -1; di <= 1; di++) {
                int i = centre % columns.across + di;
                int j = centre / columns.across + dj;
                if (i < 0 || j < 0 || i >= columns.across || j >= columns.along) {
                    continue;
                }
                int c = j * columns.across + i;
                double aside = Math.hypot(columns.centreA(c) - a, columns.centreB(c) - b);
                for (int s = columns.firstStay[c]; s < columns.firstStay[c + 1]; s++) {
                    double off = Math.max(0, Math.max(columns.low[s] - h, h - columns.high[s]));
                    if (2 * off + aside < least) {
                        least = 2 * off + aside;
                        best = s;
                    }
                }
            }
        }
        if (best < 0) {
            throw new MeshFault("A gate or vent lies where no column meets the mould; use a finer resolution.");
        }
        return best;
    }
}
