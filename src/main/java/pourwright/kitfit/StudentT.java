package pourwright.kitfit;

/**
 * Student's t distribution for whole degrees of freedom.
 * Source: the finite sums of Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4.
 */
final class StudentT {

    /** From here on the normal distribution's values differ by less than half a percent. */
    private static final int MOST_DEGREES = 400;

    private static final int HALVINGS = 80;

    private StudentT() {}

    /** Probability that |t| is below a value, for so many degrees of freedom. */
    static double inside(double t, int degrees) {
        int n = Math.min(degrees, MOST_DEGREES);
        double angle = Math.atan(t / Math.sqrt(n));
        double cosine = Math.cos(angle);
        double square = cosine * cosine;
        boolean odd = n % 2 == 1;
        double term = odd ? cosine : 1;
        double sum = n == 1 ? 0 : term;
        for (int k = odd ? 3 : 2; k < n; k += 2) {
            term *= square * (k - 1) / k;
            sum += term;
        }
        double sine = Math.sin(angle);
        return odd ? 2 / Math.PI * (angle + sine * sum) : sine * sum;
    }

    /** The value that |t| stays below with a probability, for so many degrees of freedom. */
    static double twoSided(double probability, int degrees) {
        double low = 0;
        double high = 1;
        while (inside(high, degrees) < probability) {
            high *= 2;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (inside(middle, degrees) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
