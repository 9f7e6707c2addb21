package pourwright.emergency;

/** How far one word is from another in slips of the finger, and when that is near enough. */
final class Slips {
    private static final int SHORT = 4;
    private static final int LONG = 8;

    private Slips() {}

    /** True when the typed word may be the known one: one slip from four letters on, two from eight. */
    static boolean near(String typed, String known) {
        int shorter = Math.min(typed.length(), known.length());
        int longer = Math.max(typed.length(), known.length());
        if (longer < SHORT || shorter < SHORT - 1) {
            return false;
        }
        if (longer == SHORT && typed.charAt(0) != known.charAt(0)) {
            // "foam" must not become "loam": in a short word the first letter holds.
            return false;
        }
        int most = shorter >= LONG ? 2 : 1;
        return longer - shorter <= most && count(typed, known) <= most;
    }

    /** Letters put in, left out or changed, and neighbours that changed places, each counted once. */
    static int count(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
