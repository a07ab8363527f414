package spoonfall.estimate.filter;

import java.util.Optional;

/** Reads from a bank of filters when a rise will be reached. */
public final class Oracle {
    /** Nine in ten lie within so many standard deviations. */
    private static final double NINETY_PERCENT = 1.645;

    /** A filter by which u falls by less a minute tells of no arrival. */
    private static final double LEAST_V = 0.002;

    /** Filters that tell of one must be so likely together. */
    private static final double LEAST_KNOWN = 0.7;

    /** Nobody knows what a pan does in so long. */
    private static final double FARTHEST_MIN = 90;

    /** What is known worse than that, as a part of the time to go and before it is widened, is a guess. */
    private static final double MOST_DOUBT = 1.5;

    /** By such a part of the way to go curves of syrups are others. */
    private static final double CURVE_DOUBT = 0.05;

    /** However near it is, the moment is known to no less: a standard deviation. */
    private static final double TIMING_S = 1;

    /** The doubt is a part of the time to go, but of no less than that. */
    private static final double LEAST_TO_GO_S = 30;

    /** Lower than that the curve is not asked. */
    private static final double LEAST_GOAL_C = 0.2;

    private static final double LEAST_PACE = 0.1;

    /** The further it is, the more sugar is inverted until then, and the sooner it is reached: so often it is worked out again. */
    private static final int STEPS = 4;

    /** Marks read by hand are off alike for minutes, which no single reading shows. */
    private static final double BY_HAND_WIDTH = 0.8;

    private final boolean byHand;
    private final SyrupCurve curve;
    private final FilterBank bank;
    private final TrackRecord record;
    private final double[] weights = new double[PanFilter.SIZE];
    private final double[] minutes = new double[FilterBank.MODES];
    private final double[] goals = new double[FilterBank.MODES];
    private final double[] goalsC = new double[FilterBank.MODES];
    private final double[] scales = new double[FilterBank.MODES];
    private final double[] inverts = new double[FilterBank.MODES];

    /** Of what {@code bank} knows, with intervals as wide as {@code record} asks; {@code byHand} of marks that somebody types. */
    public Oracle(SyrupCurve curve, FilterBank bank, TrackRecord record, boolean byHand) {
        this.byHand = byHand;
        this.record = record;
        this.curve = curve;
        this.bank = bank;
    }

    /** When it will be reached, {@code sinceS} after the bank's own time; empty when that would be a guess. */
    public Optional<Arrival> arrival(double riseC, double sinceS) {
        reach(riseC);
        double mean = 0;
        double square = 0;
        double known = 0;
        for (int mode = 0; mode < FilterBank.MODES; mode++) {
            double weight = bank.weight(mode);
            if (bank.filter(mode).v() < LEAST_V) {
                continue;
            }
            known += weight;
            mean += weight * minutes[mode];
            square += weight * (minutes[mode] * minutes[mode] + variance(mode));
        }
        if (known < LEAST_KNOWN) {
            return Optional.empty();
        }
        mean /= known;
        double doubt = Math.sqrt(Math.max(0, square / known - mean * mean));
        double sd = (byHand ? BY_HAND_WIDTH : record.width()) * doubt;
        double s = 60 * mean - sinceS;
        if (mean > FARTHEST_MIN || doubt > MOST_DOUBT * Math.max(mean, 1)) {
            return Optional.empty();
        }
        if (s <= 0) {
            return Optional.of(new Arrival(0, 0, NINETY_PERCENT * (60 * sd + TIMING_S)));
        }
        double part = NINETY_PERCENT * 60 * sd / Math.max(s, LEAST_TO_GO_S);
        double lowS = Math.max(0, s * Math.exp(-part) - NINETY_PERCENT * TIMING_S);
        double highS = s * Math.exp(part) + NINETY_PERCENT * TIMING_S;
        return Optional.of(new Arrival(s, lowS, highS));
    }

    /** Where the pan will be in {@code minutes} that climbs by {@code climbs} °C a minute now, if water goes on leaving it. */
    public Ahead ahead(double minutes, double climbs) {
        double u = bank.u();
        double steepens = curve.riseSlopeC(u - Math.max(0, bank.v()) * minutes) / curve.riseSlopeC(u);
        return new Ahead(bank.riseC() + minutes * climbs * (1 + steepens) / 2, climbs * steepens);
    }

    /** Sets for each filter what it reaches and in how many minutes: all side by side, since each step waits for the one before it. */
    private void reach(double riseC) {
        for (int mode = 0; mode < FilterBank.MODES; mode++) {
            PanFilter filter = bank.filter(mode);
            scales[mode] = filter.scale();
            inverts[mode] = curve.inversionPerMin(filter.u());
        }
        for (int i = 0; i < STEPS; i++) {
            for (int mode = 0; mode < FilterBank.MODES; mode++) {
                PanFilter filter = bank.filter(mode);
                goalsC[mode] = Math.max(LEAST_GOAL_C, (riseC - filter.offsetC()) / scales[mode]);
                goals[mode] = curve.u(goalsC[mode]);
                minutes[mode] = Math.max(0, (filter.u() - goals[mode]) / filter.v());
                scales[mode] = filter.scale()
                        + bank.inverting().gain(minutes[mode], inverts[mode], goals[mode], filter.pace());
            }
        }
    }

    /** The variance of the minutes of one filter. */
    private double variance(int mode) {
        PanFilter filter = bank.filter(mode);
        double v = filter.v();
        double scale = scales[mode];
        double slope = curve.riseSlopeC(goals[mode]) * scale;
        weights[0] = 1;
        weights[1] = -minutes[mode];
        weights[2] = 1 / slope;
        weights[3] = goalsC[mode] / slope;
        weights[4] = goalsC[mode] / slope * (scale - filter.scale()) / Math.max(LEAST_PACE, filter.pace());
        double m3 = minutes[mode] * minutes[mode] * minutes[mode];
        double wander = v * v * PanFilter.WANDER_AHEAD * m3 / 3;
        double curveDoubt = CURVE_DOUBT * minutes[mode] * v;
        return (filter.variance(weights) + wander + curveDoubt * curveDoubt) / (v * v);
    }
}
