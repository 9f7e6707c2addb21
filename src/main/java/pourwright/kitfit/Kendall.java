package pourwright.kitfit;

import java.util.List;

/**
 * Kendall's count of pairs that rise minus pairs that fall, and how often chance alone makes one as large.
 * Source: Kendall, Rank Correlation Methods, 1948, with the exact distribution by its recursion, and the variance with ties.
 *
 * @param count    pairs that rise minus pairs that fall
 * @param variance variance of the count by chance
 * @param chance   two-sided probability of a count at least as far from zero
 */
record Kendall(int count, double variance, double chance) {

    /** Up to here the exact distribution is used; beyond it the normal curve is good to three digits. */
    private static final int MOST_EXACT = 30;

    static Kendall of(List<Drift.Measured> sorted) {
        int n = sorted.size();
        int count = 0;
        boolean ties = false;
        double dayTies = 0;
        double valueTies = 0;
        for (int i = 0; i < n; i++) {
            int sameDay = 0;
            int sameValue = 0;
            for (int j = 0; j < n; j++) {
                int byDay = Long.compare(sorted.get(j).day(), sorted.get(i).day());
                int byValue =
                        Double.compare(sorted.get(j).value(), sorted.get(i).value());
                count += j > i ? byDay * byValue : 0;
                sameDay += byDay == 0 ? 1 : 0;
                sameValue += byValue == 0 ? 1 : 0;
            }
            ties |= sameDay > 1 || sameValue > 1;
            // A group of g adds g times (g-1)(2g+5), once for each of its members.
            dayTies += (sameDay - 1.0) * (2 * sameDay + 5);
            valueTies += (sameValue - 1.0) * (2 * sameValue + 5);
        }
        double variance = Math.max(0, n * (n - 1.0) * (2 * n + 5) - dayTies - valueTies) / 18;
        double chance = ties || n > MOST_EXACT ? normal(count, variance) : exact(n, Math.abs(count));
        return new Kendall(count, variance, chance);
    }

    /** Inversions of n things: adding the n-th moves 0 to n-1 pairs. */
    private static double exact(int n, int size) {
        double[] shares = {1};
        for (int k = 2; k <= n; k++) {
            double[] next = new double[shares.length + k - 1];
            for (int i = 0; i < shares.length; i++) {
                for (int moved = 0; moved < k; moved++) {
                    next[i + moved] += shares[i] / k;
                }
            }
            shares = next;
        }
        int pairs = shares.length - 1;
        double chance = 0;
        for (int inversions = 0; inversions <= pairs; inversions++) {
            chance += Math.abs(pairs - 2 * inversions) >= size ? shares[inversions] : 0;
        }
        return Math.min(1, chance);
    }

    private static double normal(int count, double variance) {
        if (variance <= 0) {
            return 1;
        }
        double z = Math.max(0, Math.abs(count) - 1) / Math.sqrt(variance);
        return 1 - StudentT.inside(z, Integer.MAX_VALUE);
    }
}
