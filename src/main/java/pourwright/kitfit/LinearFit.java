package pourwright.kitfit;

/**
 * Weighted least squares for a model that is linear in its parameters, by the normal equations.
 * With at most four parameters, scaled columns and a Cholesky factor this keeps ten digits; a library is not needed.
 */
final class LinearFit {

    /** A pivot below this share of its start means columns that cannot be told apart. */
    private static final double SINGULAR = 1e-12;

    private final double[] parameters;
    private final double[][] covariance;
    private final double chiSquare;

    private LinearFit(double[] parameters, double[][] covariance, double chiSquare) {
        this.parameters = parameters;
        this.covariance = covariance;
        this.chiSquare = chiSquare;
    }

    /** The fit of the columns to the values, or null when the columns cannot be told apart. */
    static LinearFit of(double[][] columns, double[] values, double[] sigmas) {
        int size = columns.length;
        double[][] normal = new double[size][size];
        double[] right = new double[size];
        for (int i = 0; i < values.length; i++) {
            double weight = 1 / (sigmas[i] * sigmas[i]);
            for (int j = 0; j < size; j++) {
                right[j] += weight * columns[j][i] * values[i];
                for (int k = 0; k <= j; k++) {
                    normal[j][k] += weight * columns[j][i] * columns[k][i];
                }
            }
        }
        double[][] inverse = inverse(normal);
        if (inverse == null) {
            return null;
        }
        double[] parameters = new double[size];
        for (int j = 0; j < size; j++) {
            for (int k = 0; k < size; k++) {
                parameters[j] += inverse[j][k] * right[k];
            }
        }
        double chiSquare = 0;
        for (int i = 0; i < values.length; i++) {
            double off = values[i];
            for (int j = 0; j < size; j++) {
                off -= parameters[j] * columns[j][i];
            }
            chiSquare += off * off / (sigmas[i] * sigmas[i]);
        }
        return new LinearFit(parameters, inverse, chiSquare);
    }

    double parameter(int j) {
        return parameters[j];
    }

    /** Covariance of two parameters, taking the sigmas as they were given. */
    double covariance(int j, int k) {
        return covariance[j][k];
    }

    double chiSquare() {
        return chiSquare;
    }

    /** The inverse of a symmetric positive matrix given by its lower half, or null when it has none. */
    static double[][] inverse(double[][] lower) {
        int size = lower.length;
        double[] scale = new double[size];
        for (int j = 0; j < size; j++) {
            if (!(lower[j][j] > 0)) {
                return null;
            }
            scale[j] = 1 / Math.sqrt(lower[j][j]);
        }
        double[][] factor = new double[size][size];
        for (int j = 0; j < size; j++) {
            for (int k = 0; k <= j; k++) {
                double sum = lower[j][k] * scale[j] * scale[k];
                for (int m = 0; m < k; m++) {
                    sum -= factor[j][m] * factor[k][m];
                }
                if (k < j) {
                    factor[j][k] = sum / factor[k][k];
                } else if (sum > SINGULAR) {
                    factor[j][j] = Math.sqrt(sum);
                } else {
                    return null;
                }
            }
        }
        double[][] half = new double[size][size];
        for (int j = 0; j < size; j++) {
            half[j][j] = 1 / factor[j][j];
            for (int k = 0; k < j; k++) {
                double sum = 0;
                for (int m = k; m < j; m++) {
                    sum -= factor[j][m] * half[m][k];
                }
                half[j][k] = sum / factor[j][j];
            }
        }
        double[][] inverse = new double[size][size];
        for (int j = 0; j < size; j++) {
            for (int k = 0; k < size; k++) {
                for (int m = Math.max(j, k); m < size; m++) {
                    inverse[j][k] += half[m][j] * half[m][k] * scale[j] * scale[k];
                }
            }
        }
        return inverse;
    }
}
