package spoonfall.estimate.warming;

import java.util.Arrays;
import spoonfall.series.LineSums;
import spoonfall.series.MiddleHalf;

/**
 * How late the thermometer is, learnt when the pan comes to the boil. A pan that warms steadily and then boils turns a
 * sharp corner; a thermometer rounds it off, and the rounding tells its time constant {@code tau}: the readings go on along
 * the warming's line until they are {@code slope * tau} below the boil, and close that gap by e in every tau. (First-order
 * lag after a ramp that ends; elementary, no source.) One value of tau fixes the whole curve, so that a list of them is
 * weighed against the readings and what thermometers are usually like.
 */
public final class Lateness {
    /** What thermometers are usually like, and its standard deviation: judgements, no source. */
    private static final double USUAL_S = 6.5;

    private static final double USUAL_DOUBT_S = 3.5;

    /** So many values of tau are weighed, so far apart. */
    private static final int CANDIDATES = 36;

    private static final double EVERY_S = 0.5;

    /** So many seconds are kept: the corner, and what is before and after it. */
    private static final int KEPT = 256;

    /** So long after the boil was seen the corner lies behind. */
    private static final double JUDGED_AFTER_S = 75;

    /** The ramp is the line of so long, until the reading is so far below the boil: the lag does not round it there yet. */
    private static final double RAMP_BELOW_C = 3;

    private static final double RAMP_S = 25;

    /** A corner that is flatter tells nothing. */
    private static final double LEAST_SLOPE_PER_S_C = 0.06;

    /** Nor do fewer readings of a stretch. */
    private static final int LEAST_POINTS = 4;

    /** The level is that of so long, from so long on after the ramp would have come to the boil. */
    private static final double LEVELS_AFTER_S = 25;

    private static final double LEVEL_S = 50;

    /** It is none where its halves are further apart. */
    private static final double LEVEL_C = 0.2;

    /** No reading of it says more of the noise than that, in °C². */
    private static final double MOST_SQUARE = 0.2;

    /** Corners are not quite sharp: steam rises before the pan boils. */
    private static final double MODEL_C = 0.07;

    /** Readings of so many seconds are alike, and tell as much as one. */
    private static final double ALIKE_S = 4;

    /** No reading speaks against a value by more than that, in variances. */
    private static final double WILD = 9;

    private final double[] times = new double[KEPT];
    private final double[] heights = new double[KEPT];
    private final double[] bucket = new double[KEPT];
    private final double[] weights = new double[CANDIDATES];
    private int taken;
    private int inSecond;
    private double sum;
    private double second = Double.NaN;
    private double boilsSinceT = Double.NaN;
    private boolean judged;
    private double s = USUAL_S;

    /** Of a thermometer that was not heard yet. */
    public Lateness() {
        for (int i = 0; i < CANDIDATES; i++) {
            double off = (candidateS(i) - USUAL_S) / USUAL_DOUBT_S;
            weights[i] = -off * off / 2;
        }
    }

    /** By how many seconds it is late. */
    public double s() {
        return s;
    }

    /** Takes a reading. */
    public void accept(double t, double riseC) {
        if (Math.floor(t) != second && inSecond > 0) {
            times[taken % KEPT] = second + 0.5;
            heights[taken % KEPT] = sum / inSecond;
            taken++;
            inSecond = 0;
            sum = 0;
        }
        second = Math.floor(t);
        sum += riseC;
        inSecond++;
    }

    /** Ends a second in which the pan boils, or not. */
    public void endSecond(double t, boolean boils) {
        if (!boils) {
            boilsSinceT = Double.NaN;
            judged = false;
            return;
        }
        if (Double.isNaN(boilsSinceT)) {
            boilsSinceT = t;
        }
        if (!judged && t - boilsSinceT >= JUDGED_AFTER_S) {
            judged = true;
            judge();
        }
    }

    private void judge() {
        double boilC = middle(boilsSinceT, boilsSinceT + LEVEL_S);
        int end = -1;
        for (int i = oldest(); i < taken && time(i) < boilsSinceT; i++) {
            end = height(i) < boilC - RAMP_BELOW_C ? i : end;
        }
        if (end < 0) {
            return;
        }
        Ramp ramp = ramp(time(end) - RAMP_S, time(end));
        if (!(ramp.perS() >= LEAST_SLOPE_PER_S_C)) {
            return;
        }
        double levelFromT = ramp.reaches(boilC) + LEVELS_AFTER_S;
        double levelC = middle(levelFromT, levelFromT + LEVEL_S);
        double before = middle(levelFromT, levelFromT + LEVEL_S / 2);
        double after = middle(levelFromT + LEVEL_S / 2, levelFromT + LEVEL_S);
        if (Math.abs(after - before) < LEVEL_C) {
            weigh(ramp, levelC, time(end), levelFromT);
        }
    }

    private void weigh(Ramp ramp, double boilC, double fromT, double toT) {
        double squares = 0;
        int level = 0;
        int corner = 0;
        for (int i = oldest(); i < taken; i++) {
            if (time(i) > toT && time(i) < toT + LEVEL_S) {
                double off = height(i) - boilC;
                squares += Math.min(MOST_SQUARE, off * off);
                level++;
            }
            corner += time(i) > fromT && time(i) < toT ? 1 : 0;
        }
        if (level < LEAST_POINTS || corner < LEAST_POINTS) {
            return;
        }
        double variance = squares / level + MODEL_C * MODEL_C;
        double alike = Math.max(1, ALIKE_S * level / LEVEL_S);
        for (int j = 0; j < CANDIDATES; j++) {
            double tau = candidateS(j);
            double boilsT = ramp.reaches(boilC - ramp.perS() * tau);
            for (int i = oldest(); i < taken; i++) {
                double t = time(i);
                if (t > fromT && t < toT) {
                    double gapC = ramp.perS() * tau * Math.exp(-Math.max(0, t - boilsT) / tau);
                    double off = height(i) - (t < boilsT ? ramp.at(t) : boilC - gapC);
                    weights[j] -= Math.min(WILD, off * off / variance) / alike / 2;
                }
            }
        }
        settle();
    }

    private void settle() {
        double best = Arrays.stream(weights).max().orElseThrow();
        double all = 0;
        double mean = 0;
        for (int j = 0; j < CANDIDATES; j++) {
            double weight = Math.exp(weights[j] - best);
            all += weight;
            mean += weight * candidateS(j);
        }
        s = mean / all;
    }

    private Ramp ramp(double fromT, double toT) {
        LineSums line = new LineSums();
        for (int i = oldest(); i < taken; i++) {
            if (time(i) >= fromT && time(i) <= toT) {
                line.add(time(i) - toT, height(i));
            }
        }
        boolean known = line.count() >= LEAST_POINTS && line.spreadX() > 0;
        return new Ramp(toT, line.atZero(), known ? line.slope() : 0);
    }

    private double middle(double fromT, double toT) {
        int n = 0;
        for (int i = oldest(); i < taken; i++) {
            if (time(i) > fromT && time(i) < toT) {
                bucket[n++] = height(i);
            }
        }
        return n == 0 ? Double.NaN : MiddleHalf.mean(bucket, n);
    }

    private int oldest() {
        return Math.max(0, taken - KEPT);
    }

    private double time(int i) {
        return times[i % KEPT];
    }

    private double height(int i) {
        return heights[i % KEPT];
    }

    private static double candidateS(int i) {
        return EVERY_S * (i + 1);
    }

    /** A line through readings of the warming pan. */
    private record Ramp(double endT, double endC, double perS) {
        double at(double t) {
            return endC + perS * (t - endT);
        }

        double reaches(double heightC) {
            return endT + (heightC - endC) / perS;
        }
    }
}
