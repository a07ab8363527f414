package spoonfall.estimate.filter;

/**
 * Interacting multiple models (Blom and Bar-Shalom 1988): the same filter three times, for heat that is steady, that
 * drifts and that is being changed. Each reading tells which of them holds, and the three share what they know.
 */
public final class FilterBank {
    static final int MODES = 3;

    /** What v wanders by in a minute where the heat is steady, drifts or is being changed: a standard deviation, as a part of v. */
    private static final double[] SLOPE_WANDER = {0.005, 0.03, 0.12};

    /** The variance that the offset gains a minute, in °C², for weather and probe. */
    private static final double OFFSET_WANDER = 1e-5;

    /** The variance that the scale gains a minute, for what no inversion explains. */
    private static final double SCALE_WANDER = 1e-5;

    /** What hardly loses water wanders as if u fell by that a minute. */
    private static final double LEAST_V = 0.01;

    /** How likely each mode is at first: most hobs are left as they are. */
    private static final double[] AT_FIRST = {0.6, 0.3, 0.1};

    /** And where the pan begins again: what happened to it may have been its heat. */
    private static final double[] AFRESH = {0.4, 0.3, 0.3};

    /** No mode is ever given up. */
    private static final double LEAST_WEIGHT = 1e-6;

    /** Over so long the steepening of the curve is taken. */
    private static final double STEEPENS_OVER_MIN = 3;

    /** A reading that is further above what was expected than so many standard deviations counts for less, and so does one below. */
    private static final double TOO_HIGH = 2.5;

    private static final double TOO_LOW = 1.6;

    /** Of what the pan would have lost while it rests such a part is in doubt. */
    private static final double REST_DOUBT = 0.3;

    private final PanFilter[] filters = new PanFilter[MODES];
    private final PanFilter[] mixed = new PanFilter[MODES];
    private final double[] weights = new double[MODES];
    private final double[] misses = new double[MODES];
    private final Switching switching = new Switching();
    private final SyrupCurve curve;
    private final Inverting inverting;
    private boolean stale = true;
    private double riseC;
    private double climbPerMinC;

    /** Of a pan of which nothing is known yet, seen through {@code curve}. */
    public FilterBank(SyrupCurve curve) {
        this.curve = curve;
        inverting = new Inverting(curve);
        for (int i = 0; i < MODES; i++) {
            filters[i] = new PanFilter(curve);
            mixed[i] = new PanFilter(curve);
        }
    }

    /** Begins with guesses and their doubts, as {@link PanFilter#begin} does, where v grows by {@code vPerU} with u. */
    public void begin(double[] guesses, double[] doubts, double vPerU) {
        stale = true;
        for (PanFilter filter : filters) {
            filter.begin(guesses, doubts);
            filter.tie(vPerU);
        }
        System.arraycopy(AT_FIRST, 0, weights, 0, MODES);
        inverting.begin();
    }

    /** Knows what another one knows. */
    public void copyFrom(FilterBank other) {
        stale = true;
        for (int i = 0; i < MODES; i++) {
            filters[i].copyFrom(other.filters[i]);
            weights[i] = other.weights[i];
        }
        inverting.copyFrom(other.inverting);
    }

    /** How far its sugar is inverted. */
    Inverting inverting() {
        return inverting;
    }

    /** The filter for one of the modes. */
    PanFilter filter(int mode) {
        return filters[mode];
    }

    /** How likely that mode holds. */
    double weight(int mode) {
        return weights[mode];
    }

    /** Lets time pass. */
    public void predict(double minutes) {
        stale = true;
        mix(minutes);
        double v = Math.max(LEAST_V, v());
        double growth = inverting.growth(u());
        inverting.pass(minutes, u(), mean(PanFilter.PACE));
        for (int j = 0; j < MODES; j++) {
            double wander = SLOPE_WANDER[j] * v;
            filters[j].predict(minutes, wander * wander, OFFSET_WANDER, SCALE_WANDER, growth);
        }
    }

    /** Lets time pass while nothing leaves the pan. */
    public void rest(double minutes) {
        for (PanFilter filter : filters) {
            double v = Math.max(LEAST_V, Math.abs(filter.v()));
            filter.doubtU(REST_DOUBT * v * minutes);
        }
    }

    /** Takes a reading of that variance; one that is far off counts for less, above all below: a stir cools the tip. */
    public void update(double readC, double variance) {
        stale = true;
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < MODES; j++) {
            PanFilter filter = filters[j];
            filter.look(readC, variance);
            double off = filter.innovationC() / Math.sqrt(filter.innovationVariance());
            double limit = off > 0 ? TOO_HIGH : TOO_LOW;
            if (Math.abs(off) > limit) {
                filter.look(readC, variance * off * off / (limit * limit));
            }
            filter.believe();
            misses[j] = filter.innovationC() * filter.innovationC() / filter.innovationVariance();
            least = Math.min(least, misses[j]);
        }
        for (int j = 0; j < MODES; j++) {
            weights[j] *= Math.exp((least - misses[j]) / 2) / Math.sqrt(filters[j].innovationVariance());
        }
        weigh();
    }

    /**
     * Takes a reading that says only between which marks of a scale the rise was: {@code halfC} to either side. A far one
     * counts as a number instead, for less.
     */
    public void updateWithin(double readC, double halfC, double variance) {
        stale = true;
        for (PanFilter filter : filters) {
            filter.look(readC, variance);
            if (Math.abs(filter.innovationC()) > halfC + TOO_LOW * Math.sqrt(filter.innovationVariance())) {
                update(readC, variance + halfC * halfC / 3);
                return;
            }
        }
        for (int j = 0; j < MODES; j++) {
            weights[j] *= filters[j].believeWithin(halfC);
        }
        weigh();
    }

    /** Makes the weights a whole again. */
    private void weigh() {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        for (int j = 0; j < MODES; j++) {
            weights[j] = Math.max(LEAST_WEIGHT, weights[j] / sum);
        }
    }

    /** How sure the bank is of the rise that it expects: the variance, in °C². */
    public double riseVariance() {
        double mean = riseC();
        double sum = 0;
        for (int j = 0; j < MODES; j++) {
            filters[j].look(mean, 0);
            double off = filters[j].riseC() - mean;
            sum += weights[j] * (filters[j].innovationVariance() + off * off);
        }
        return sum;
    }

    /** Begins again at another rise with the same heat, as after water was added. */
    public void reanchor(double atC, double variance) {
        stale = true;
        for (PanFilter filter : filters) {
            filter.reanchor(atC, variance);
        }
        System.arraycopy(AFRESH, 0, weights, 0, MODES);
    }

    /** Goes on after a standstill at another rise, climbing again as it did before. */
    public void goOn(double atC, double variance, double climbsPerMinC) {
        reanchor(atC, variance);
        for (PanFilter filter : filters) {
            filter.climbAt(climbsPerMinC);
        }
    }

    /** Believes that u falls by {@code v} a minute; all else stays as it is. */
    public void paceIs(double v) {
        stale = true;
        double more = v - v();
        for (PanFilter filter : filters) {
            filter.loseMore(more);
        }
    }

    /** All mass / solids mass, by all filters. */
    public double u() {
        return mean(PanFilter.U);
    }

    /** How fast u falls, per minute. */
    public double v() {
        return mean(PanFilter.V);
    }

    /** How unsure it is of how fast water leaves, as a part of that. */
    public double paceDoubt() {
        double mean = v();
        double sum = 0;
        for (int j = 0; j < MODES; j++) {
            double off = filters[j].v() - mean;
            sum += weights[j] * (filters[j].vVariance() + off * off);
        }
        return Math.sqrt(sum) / Math.max(LEAST_V, Math.abs(mean));
    }

    /** The rise that a reading should show. */
    public double riseC() {
        if (stale) {
            refresh();
        }
        return riseC;
    }

    /** How fast that climbs, in °C a minute. */
    public double climbPerMinC() {
        if (stale) {
            refresh();
        }
        return climbPerMinC;
    }

    /** How fast it would climb if u fell by {@code v} a minute, in °C a minute. */
    public double climbPerMinC(double v) {
        return -mean(PanFilter.SCALE) * curve.riseSlopeC(u()) * v;
    }

    /** How fast the rise climbs besides, in °C a minute, for the sugar that acid inverts. */
    public double inversionPerMinC() {
        return inverting.growth(u()) * Math.max(0, mean(PanFilter.PACE)) * riseC() / mean(PanFilter.SCALE);
    }

    /** By what part of itself its climb grows in a minute: syrup's curve steepens. */
    public double steepensPerMin() {
        double u = u();
        double laterU = u - Math.max(0, v()) * STEEPENS_OVER_MIN;
        return (curve.riseSlopeC(laterU) / curve.riseSlopeC(u) - 1) / STEEPENS_OVER_MIN;
    }

    /** Makes one filter of the three, with the same mean and covariance. */
    void collapseInto(PanFilter one) {
        one.blend(filters, weights);
    }

    private void refresh() {
        riseC = 0;
        climbPerMinC = 0;
        for (int i = 0; i < MODES; i++) {
            riseC += weights[i] * filters[i].riseC();
            climbPerMinC += weights[i] * filters[i].climbPerMinC();
        }
        stale = false;
    }

    /** The mean of a part of the filters' state. */
    private double mean(int part) {
        double sum = 0;
        for (int i = 0; i < MODES; i++) {
            sum += weights[i] * filters[i].state[part];
        }
        return sum;
    }

    private void mix(double minutes) {
        switching.pass(minutes, weights);
        for (int j = 0; j < MODES; j++) {
            mixed[j].blend(filters, switching.cameFrom(j));
        }
        for (int j = 0; j < MODES; j++) {
            PanFilter before = filters[j];
            filters[j] = mixed[j];
            mixed[j] = before;
        }
    }
}
