package pourwright.kitfit;

/**
 * Weighted least squares of y = level + slope t + swing exp(-rate t), with or without the slope.
 *
 * <p>All but the rate are linear, so they are solved exactly for each rate, and only the rate is searched (variable
 * projection, Golub and Pereyra, SIAM J. Numer. Anal. 10:413, 1973). One number can be searched over its whole range,
 * so there is no start to choose and no wrong valley to fall into. Errors come from the whole Jacobian at the best fit.
 */
final class ExponentialFit {

    private static final int LEVEL = 0;
    private static final int SWING = 1;
    private static final int SLOPE = 2;

    /** Rates searched, in units of one over the time that the readings span: nearly straight to gone at once. */
    private static final double LEAST_RATE = 0.02;

    private static final double MOST_RATE = 200;
    private static final int GRID = 90;
    private static final int GOLDEN_STEPS = 60;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final double[] parameters;
    private final double ratePerS;
    private final double[][] covariance;
    private final double chiSquare;

    private ExponentialFit(double[] parameters, double ratePerS, double[][] covariance, double chiSquare) {
        this.parameters = parameters;
        this.ratePerS = ratePerS;
        this.covariance = covariance;
        this.chiSquare = chiSquare;
    }

    /**
     * The best fit, or null when the readings cannot tell the parameters apart.
     *
     * @param times       times from the first reading, s, in order
     * @param withSlope   whether a straight part is fitted too
     * @param levelAtLeast the level is held at this when the fit would go below it
     */
    static ExponentialFit of(double[] times, double[] values, double[] sigmas, boolean withSlope, double levelAtLeast) {
        double spanS = times[times.length - 1] - times[0];
        Trial trial = new Trial(times, values, sigmas, withSlope, levelAtLeast);
        double step = Math.log(MOST_RATE / LEAST_RATE) / GRID;
        double first = Math.log(LEAST_RATE / spanS);
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= GRID; i++) {
            double chi = trial.chiSquare(Math.exp(first + i * step));
            if (chi < least) {
                least = chi;
                best = i;
            }
        }
        if (least == Double.POSITIVE_INFINITY) {
            return null;
        }
        double low = first + (best - 1) * step;
        double high = first + (best + 1) * step;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double chiLeft = trial.chiSquare(Math.exp(left));
        double chiRight = trial.chiSquare(Math.exp(right));
        for (int i = 0; i < GOLDEN_STEPS; i++) {
            if (chiLeft < chiRight) {
                high = right;
                right = left;
                chiRight = chiLeft;
                left = high - GOLDEN * (high - low);
                chiLeft = trial.chiSquare(Math.exp(left));
            } else {
                low = left;
                left = right;
                chiLeft = chiRight;
                right = low + GOLDEN * (high - low);
                chiRight = trial.chiSquare(Math.exp(right));
            }
        }
        return trial.at(Math.exp((low + high) / 2));
    }

    double level() {
        return parameters[LEVEL];
    }

    double swing() {
        return parameters[SWING];
    }

    double slope() {
        return parameters.length > SLOPE ? parameters[SLOPE] : 0;
    }

    double ratePerS() {
        return ratePerS;
    }

    double chiSquare() {
        return chiSquare;
    }

    double valueAt(double timeS) {
        return level() + slope() * timeS + swing() * Math.exp(-ratePerS * timeS);
    }

    /** Variance of the level for sigmas as given; infinite when it is not told. */
    double levelVariance() {
        return variance(LEVEL);
    }

    double slopeVariance() {
        return variance(SLOPE);
    }

    /** Variance of the natural logarithm of the rate. */
    double logRateVariance() {
        return variance(parameters.length);
    }

    /** Variance of level times rate over that product's square: what the two make together. */
    double levelTimesRateVariance() {
        if (covariance == null) {
            return Double.POSITIVE_INFINITY;
        }
        int rate = parameters.length;
        double perLevel = 1 / level();
        return covariance[LEVEL][LEVEL] * perLevel * perLevel
                + 2 * covariance[LEVEL][rate] * perLevel
                + covariance[rate][rate];
    }

    private double variance(int j) {
        return covariance == null ? Double.POSITIVE_INFINITY : covariance[j][j];
    }

    /** One set of readings, asked at many rates. */
    private static final class Trial {
        private final double[] times;
        private final double[] values;
        private final double[] sigmas;
        private final double levelAtLeast;
        private final double[][] columns;

        Trial(double[] times, double[] values, double[] sigmas, boolean withSlope, double levelAtLeast) {
            this.times = times;
            this.values = values;
            this.sigmas = sigmas;
            this.levelAtLeast = levelAtLeast;
            this.columns = new double[withSlope ? SLOPE + 1 : SWING + 1][times.length];
            for (int i = 0; i < times.length; i++) {
                columns[LEVEL][i] = 1;
                if (withSlope) {
                    columns[SLOPE][i] = times[i];
                }
            }
        }

        double chiSquare(double ratePerS) {
            ExponentialFit fit = solved(ratePerS);
            return fit == null ? Double.POSITIVE_INFINITY : fit.chiSquare;
        }

        private ExponentialFit solved(double ratePerS) {
            for (int i = 0; i < times.length; i++) {
                columns[SWING][i] = Math.exp(-ratePerS * times[i]);
            }
            LinearFit all = LinearFit.of(columns, values, sigmas);
            if (all == null) {
                return null;
            }
            if (all.parameter(LEVEL) >= levelAtLeast) {
                double[] found = new double[columns.length];
                for (int j = 0; j < found.length; j++) {
                    found[j] = all.parameter(j);
                }
                return new ExponentialFit(found, ratePerS, null, all.chiSquare());
            }
            double[][] others = new double[columns.length - 1][];
            double[] above = new double[values.length];
            System.arraycopy(columns, 1, others, 0, others.length);
            for (int i = 0; i < values.length; i++) {
                above[i] = values[i] - levelAtLeast;
            }
            LinearFit rest = LinearFit.of(others, above, sigmas);
            if (rest == null) {
                return null;
            }
            double[] found = new double[columns.length];
            found[LEVEL] = levelAtLeast;
            for (int j = 1; j < found.length; j++) {
                found[j] = rest.parameter(j - 1);
            }
            return new ExponentialFit(found, ratePerS, null, rest.chiSquare());
        }

        /** The fit at the best rate, with its errors. */
        ExponentialFit at(double ratePerS) {
            ExponentialFit fit = solved(ratePerS);
            if (fit == null) {
                return null;
            }
            int size = columns.length + 1;
            double[][] normal = new double[size][size];
            double[] row = new double[size];
            for (int i = 0; i < times.length; i++) {
                double decay = Math.exp(-ratePerS * times[i]);
                row[LEVEL] = 1;
                row[SWING] = decay;
                if (size > SLOPE + 1) {
                    row[SLOPE] = times[i];
                }
                row[size - 1] = -fit.swing() * ratePerS * times[i] * decay;
                double weight = 1 / (sigmas[i] * sigmas[i]);
                for (int j = 0; j < size; j++) {
                    for (int k = 0; k <= j; k++) {
                        normal[j][k] += weight * row[j] * row[k];
                    }
                }
            }
            return new ExponentialFit(fit.parameters, ratePerS, LinearFit.inverse(normal), fit.chiSquare);
        }
    }
}
