package spoonfall.estimate.filter;

import java.util.Arrays;

/**
 * An extended Kalman filter on a boiling pan. Its state is {@code u}, the ratio of all mass to solids mass; {@code v},
 * how fast u falls, per minute; {@code offset}, by how many °C everything is off (weather, probe); and {@code scale}, what
 * the curve's rise must be multiplied by (another fruit, inversion); and {@code pace}, how fast acid inverts the sugar,
 * as a multiple of the usual, which makes the scale grow. Between readings {@code u} falls by {@code v} a minute; a
 * reading shows {@code scale * rise(u) + offset}.
 *
 * <p>Joseph's form is not needed: updates are scalar, and the covariance is kept symmetric by construction.
 */
final class PanFilter {
    static final int SIZE = 5;
    static final int U = 0;
    static final int V = 1;
    static final int OFFSET = 2;
    static final int SCALE = 3;
    static final int PACE = 4;

    /** How steady hobs and cooks are: what v may wander in a minute from here to there, as a part of v squared. */
    static final double WANDER_AHEAD = 0.0004;

    private static final double LEAST_RISE_C = 0.2;
    private static final double SLOPE_DOUBT = 0.4;

    private final SyrupCurve curve;
    final double[] state = new double[SIZE];
    final double[] covariance = new double[SIZE * SIZE];
    private final double[] gain = new double[SIZE];
    private final double[] offs = new double[SIZE];
    private double innovationC;
    private double innovationVariance;

    /** Where the curve was last looked at, and what it showed: it is asked far more often than u changes. */
    private double curveAtU = Double.NaN;

    private double curveC;
    private double curveSlopeC;

    PanFilter(SyrupCurve curve) {
        this.curve = curve;
    }

    /** Begins with independent guesses and their standard deviations, each in the order of the state. */
    void begin(double[] guesses, double[] doubts) {
        System.arraycopy(guesses, 0, state, 0, SIZE);
        Arrays.fill(covariance, 0);
        for (int i = 0; i < SIZE; i++) {
            covariance[i * SIZE + i] = doubts[i] * doubts[i];
        }
    }

    /** Lets v be known for a given u only: where u is larger by one, v is by {@code vPerU}. To be called at the beginning. */
    void tie(double vPerU) {
        double uVariance = covariance[U];
        covariance[V] = vPerU * uVariance;
        covariance[SIZE * V] = vPerU * uVariance;
        covariance[SIZE * V + V] += vPerU * vPerU * uVariance;
    }

    /** Knows what another one knows. */
    void copyFrom(PanFilter other) {
        System.arraycopy(other.state, 0, state, 0, SIZE);
        System.arraycopy(other.covariance, 0, covariance, 0, SIZE * SIZE);
    }

    /** Becomes one filter of others, of which each counts for such a part: its mean and covariance are those of all of them. */
    void blend(PanFilter[] others, double[] parts) {
        Arrays.fill(state, 0);
        Arrays.fill(covariance, 0);
        for (int i = 0; i < others.length; i++) {
            for (int k = 0; k < SIZE; k++) {
                state[k] += parts[i] * others[i].state[k];
            }
        }
        for (int i = 0; i < others.length; i++) {
            double part = parts[i];
            double[] other = others[i].covariance;
            for (int k = 0; k < SIZE; k++) {
                offs[k] = others[i].state[k] - state[k];
            }
            for (int k = 0; k < SIZE; k++) {
                for (int m = 0; m < SIZE; m++) {
                    int at = SIZE * k + m;
                    covariance[at] += part * (other[at] + offs[k] * offs[m]);
                }
            }
        }
    }

    /**
     * Lets time pass.
     *
     * @param minutes how long
     * @param slopeWander variance that v gains a minute
     * @param offsetWander variance that the offset gains a minute, in °C²
     * @param scaleWander variance that the scale gains a minute
     * @param growth what the scale gains a minute at the usual pace of inversion
     */
    void predict(double minutes, double slopeWander, double offsetWander, double scaleWander, double growth) {
        double grows = growth * minutes;
        state[U] -= state[V] * minutes;
        state[SCALE] += grows * state[PACE];
        double[] p = covariance;
        for (int j = 0; j < SIZE; j++) {
            p[j] -= minutes * p[SIZE * V + j];
            p[SIZE * SCALE + j] += grows * p[SIZE * PACE + j];
        }
        for (int i = 0; i < SIZE; i++) {
            p[SIZE * i] -= minutes * p[SIZE * i + V];
            p[SIZE * i + SCALE] += grows * p[SIZE * i + PACE];
        }
        double m2 = minutes * minutes;
        p[0] += slopeWander * minutes * m2 / 3;
        p[V] -= slopeWander * m2 / 2;
        p[SIZE * V] -= slopeWander * m2 / 2;
        p[SIZE * V + V] += slopeWander * minutes;
        p[SIZE * OFFSET + OFFSET] += offsetWander * minutes;
        p[SIZE * SCALE + SCALE] += scaleWander * minutes;
    }

    /**
     * Lets minutes pass ahead in which nobody reads, as steady as hobs and cooks are.
     *
     * @param growth what the scale gains a minute at the usual pace of inversion
     */
    void carry(double minutes, double growth) {
        predict(minutes, WANDER_AHEAD * state[V] * state[V], 0, 0, growth);
    }

    /** The rise that a reading should show. */
    double riseC() {
        lookAtCurve();
        return state[SCALE] * curveC + state[OFFSET];
    }

    /** Looks at a reading without believing it yet: sets the innovation and its variance. */
    void look(double riseC, double variance) {
        lookAtCurve();
        double sightU = state[SCALE] * curveSlopeC;
        innovationC = riseC - state[SCALE] * curveC - state[OFFSET];
        for (int i = 0; i < SIZE; i++) {
            gain[i] = covariance[SIZE * i + U] * sightU
                    + covariance[SIZE * i + OFFSET]
                    + covariance[SIZE * i + SCALE] * curveC;
        }
        innovationVariance = sightU * gain[U] + gain[OFFSET] + curveC * gain[SCALE] + variance;
    }

    /** Believes the reading that {@link #look} looked at. */
    void believe() {
        double trust = 1 / innovationVariance;
        for (int i = 0; i < SIZE; i++) {
            state[i] += gain[i] * innovationC * trust;
        }
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                covariance[SIZE * i + j] -= gain[i] * gain[j] * trust;
            }
        }
    }

    /**
     * Believes of the reading that {@link #look} looked at only that the rise lies within {@code halfC} of it: the mean
     * and variance of the normal distribution cut off there (a Gaussian sum of moments, as for a quantised measurement;
     * Curry 1970, from memory).
     *
     * @return how likely that was
     */
    double believeWithin(double halfC) {
        double sigma = Math.sqrt(innovationVariance);
        double low = (innovationC - halfC) / sigma;
        double high = (innovationC + halfC) / sigma;
        double likely = Math.max(1e-9, Normal.below(high) - Normal.below(low));
        double mean = (Normal.density(low) - Normal.density(high)) / likely;
        double left = 1 + (low * Normal.density(low) - high * Normal.density(high)) / likely - mean * mean;
        double learnt = Math.max(0, Math.min(1, 1 - left));
        for (int i = 0; i < SIZE; i++) {
            state[i] += gain[i] * mean / sigma;
        }
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                covariance[SIZE * i + j] -= learnt * gain[i] * gain[j] / innovationVariance;
            }
        }
        return likely;
    }

    /** Begins again at another rise; what is known of the slope is kept, with more doubt. */
    void reanchor(double riseC, double variance) {
        state[U] = curve.u(Math.max(LEAST_RISE_C, (riseC - state[OFFSET]) / state[SCALE]));
        double slopeVariance = Math.max(covariance[SIZE * V + V], SLOPE_DOUBT * SLOPE_DOUBT * state[V] * state[V]);
        for (int i = 0; i < SIZE; i++) {
            covariance[SIZE * i + U] = 0;
            covariance[SIZE * U + i] = 0;
            covariance[SIZE * i + V] = 0;
            covariance[SIZE * V + i] = 0;
        }
        double sight = state[SCALE] * curve.riseSlopeC(state[U]);
        covariance[U] = variance / (sight * sight);
        covariance[SIZE * V + V] = slopeVariance;
    }

    /** Believes that the rise climbs by so much a minute, to a third or so. */
    void climbAt(double climbPerMinC) {
        state[V] = climbPerMinC / (-state[SCALE] * curve.riseSlopeC(state[U]));
        for (int i = 0; i < SIZE; i++) {
            covariance[SIZE * i + V] = 0;
            covariance[SIZE * V + i] = 0;
        }
        covariance[SIZE * V + V] = SLOPE_DOUBT * SLOPE_DOUBT * state[V] * state[V];
    }

    /** Believes that u falls by so much more a minute, as surely as before. */
    void loseMore(double perMinute) {
        state[V] += perMinute;
    }

    /** Is less sure of u: by a standard deviation of so much besides. */
    void doubtU(double by) {
        covariance[U] += by * by;
    }

    /** By how much the reading lay above what was expected, in °C. */
    double innovationC() {
        return innovationC;
    }

    /** The variance that was expected of it, in °C². */
    double innovationVariance() {
        return innovationVariance;
    }

    /** All mass / solids mass. */
    double u() {
        return state[U];
    }

    /** How fast u falls, per minute. */
    double v() {
        return state[V];
    }

    /** The variance of that. */
    double vVariance() {
        return covariance[SIZE * V + V];
    }

    /** By how many °C everything is off. */
    double offsetC() {
        return state[OFFSET];
    }

    /** What the curve's rise must be multiplied by. */
    double scale() {
        return state[SCALE];
    }

    /** How fast sugar is inverted, as a multiple of the usual; never below nothing. */
    double pace() {
        return Math.max(0, state[PACE]);
    }

    /** How fast the reading climbs, in °C a minute. */
    double climbPerMinC() {
        lookAtCurve();
        return -state[SCALE] * curveSlopeC * state[V];
    }

    /** The variance of {@code weights · state}. */
    double variance(double[] weights) {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                sum += weights[i] * covariance[SIZE * i + j] * weights[j];
            }
        }
        return sum;
    }

    private void lookAtCurve() {
        if (state[U] != curveAtU) {
            curveAtU = state[U];
            curveC = curve.riseC(curveAtU);
            curveSlopeC = curve.riseSlopeC(curveAtU);
        }
    }
}
