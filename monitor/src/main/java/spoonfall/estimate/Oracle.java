package spoonfall.estimate;

import java.util.Optional;

/** Reads from a bank of filters when a rise will be reached. */
final class Oracle {
    private static final double NINETY_PERCENT = 1.645;
    private static final double LEAST_V = 0.002;
    private static final double FARTHEST_MIN = 90;

    /** What is known worse than that, as a part of the time to go and before it is widened, is a guess. */
    private static final double MOST_DOUBT = 1.5;

    private static final double CURVE_DOUBT = 0.05;
    private static final double TIMING_S = 4;

    /** Marks read by hand are off alike for minutes, which no single reading shows. */
    private static final double BY_HAND_WIDTH = 0.8;

    private final boolean byHand;
    private final SyrupCurve curve;
    private final FilterBank bank;
    private final TrackRecord record;
    private final double[] weights = new double[PanFilter.SIZE];
    private double minutes;
    private double variance;

    Oracle(SyrupCurve curve, FilterBank bank, TrackRecord record, boolean byHand) {
        this.byHand = byHand;
        this.record = record;
        this.curve = curve;
        this.bank = bank;
    }

    /** When it will be reached, {@code sinceS} after the bank's own time; empty when that would be a guess. */
    Optional<Arrival> arrival(double riseC, double sinceS) {
        double mean = 0;
        double square = 0;
        double known = 0;
        for (int mode = 0; mode < FilterBank.MODES; mode++) {
            PanFilter filter = bank.filter(mode);
            double weight = bank.weight(mode);
            if (filter.v() < LEAST_V) {
                continue;
            }
            reach(filter, riseC);
            known += weight;
            mean += weight * minutes;
            square += weight * (minutes * minutes + variance);
        }
        if (known < 0.7) {
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
        double part = NINETY_PERCENT * 60 * sd / Math.max(s, 30);
        double lowS = Math.max(0, s * Math.exp(-part) - NINETY_PERCENT * TIMING_S);
        double highS = s * Math.exp(part) + NINETY_PERCENT * TIMING_S;
        return Optional.of(new Arrival(s, lowS, highS));
    }

    /** Where the pan will be in {@code minutes} that climbs by {@code climbs} °C a minute now, if water goes on leaving it. */
    Ahead ahead(double minutes, double climbs) {
        double u = bank.u();
        double steepens = curve.riseSlopeC(u - Math.max(0, bank.v()) * minutes) / curve.riseSlopeC(u);
        return new Ahead(bank.riseC() + minutes * climbs * (1 + steepens) / 2, climbs * steepens);
    }

    /** Sets minutes and their variance for one filter. */
    private void reach(PanFilter filter, double riseC) {
        double v = filter.v();
        double scale = filter.scale();
        double goalC = 0;
        double goal = filter.u();
        for (int i = 0; i < 4; i++) {
            goalC = Math.max(0.2, (riseC - filter.offsetC()) / scale);
            goal = curve.u(goalC);
            minutes = Math.max(0, (filter.u() - goal) / v);
            scale = filter.scale() + bank.inverting().gain(minutes, filter.u(), goal, filter.pace());
        }
        double slope = curve.riseSlopeC(goal) * scale;
        weights[0] = 1;
        weights[1] = -minutes;
        weights[2] = 1 / slope;
        weights[3] = goalC / slope;
        weights[4] = goalC / slope * (scale - filter.scale()) / Math.max(0.1, filter.pace());
        double m3 = minutes * minutes * minutes;
        double wander = v * v * PanFilter.WANDER_AHEAD * m3 / 3;
        double curveDoubt = CURVE_DOUBT * minutes * v;
        variance = (filter.variance(weights) + wander + curveDoubt * curveDoubt) / (v * v);
    }
}
