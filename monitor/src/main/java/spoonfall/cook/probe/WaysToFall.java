package spoonfall.cook.probe;

import java.util.Arrays;
import spoonfall.series.Track;

/**
 * Weighs two ways to fall against each other. A probe that is taken out of the pan cools by Newton's law: fastest at once, then
 * ever slower towards something colder. A pan into which something cold goes, at once or by and by, is seen through the
 * thermometer's lag: the fall quickens for as long as that takes, and is over soon after the pouring is, where the two have
 * mixed. Every likely curve of either kind is fitted to the readings, and how well those of one kind fit on the whole is
 * compared with how well the others do. The ranges are judgements without a source.
 */
final class WaysToFall {
    /** Time constants in the air and in steam, in seconds. */
    private static final double[] AIR_S = {4, 5.8, 8.5, 12.3, 17.9, 26, 37.8, 55, 80};

    /** What the air is colder by than a pan. */
    private static final double AIR_LEAST_C = 25;

    private static final double AIR_MOST_C = 90;

    /** Steam is less cold; a fall that slow is none of a thermometer in the pan. */
    private static final double STEAM_LEAST_C = 10;

    private static final double SLOW_S = 15;

    /** How late a thermometer is in a pan, and how long something takes to be poured into it, in seconds. */
    private static final double[] LAG_S = {1.2, 2.5, 5, 8, 12};

    private static final double[] POUR_S = {0.5, 1.5, 3, 5, 8, 12, 17, 23, 31, 42};

    /** What goes in at first cools more than what goes in at last. */
    private static final double POUR_BENDS = 0.1;

    private static final double COLD_MOST_C = 30;

    /** A fall began so long before it was seen to be a degree deep at most; beginnings are tried from then on. */
    private static final double BEGINS_BEFORE_S = 6;

    private static final double EVERY_S = 0.5;
    private static final int BEGINNINGS = 17;

    /** That it had not fallen yet tells where it began. */
    private static final double READ_BEFORE_S = 8;

    /** Two or three readings of a steep fall tell nothing yet. */
    private static final double LEAST_S = 6;

    /** Later readings tell nothing more: the pan warms again. */
    private static final double LONGEST_S = 40;

    /** Readings closer together than that tell the same. */
    private static final double APART_S = 0.75;

    private static final double NOISE_C = 0.15;
    private static final double PART_OF_FALL = 0.015;

    /** When a reading was taken is known to so much. */
    private static final double UNSURE_S = 0.2;

    private static final double TINY = 1e-9;

    private static final int SHAPES = AIR_S.length + LAG_S.length * POUR_S.length;
    private static final int FIRST_SLOW =
            (int) Arrays.stream(AIR_S).filter(s -> s < SLOW_S).count() * BEGINNINGS;
    private static final int FIRST_COLD = AIR_S.length * BEGINNINGS;
    private static final double[][] CURVES = curves();

    private final double[] square = new double[SHAPES * BEGINNINGS];
    private final double[] product = new double[SHAPES * BEGINNINGS];
    private final double[] misfit = new double[SHAPES * BEGINNINGS];
    private double begunT;
    private double readT;
    private double lastDownC;

    private static double[][] curves() {
        double[][] curves = new double[SHAPES][(int) ((LONGEST_S + BEGINS_BEFORE_S) / EVERY_S) + 2];
        for (int i = 0; i < curves[0].length; i++) {
            double s = i * EVERY_S;
            int shape = 0;
            for (double airS : AIR_S) {
                curves[shape++][i] = -Math.expm1(-s / airS);
            }
            for (double lagS : LAG_S) {
                for (double pourS : POUR_S) {
                    curves[shape++][i] = poured(s, lagS, pourS);
                }
            }
        }
        return curves;
    }

    private static double poured(double s, double lagS, double pourS) {
        double afterS = Math.max(0, s - pourS);
        double bend = POUR_BENDS / pourS / pourS;
        double begins = (1 + POUR_BENDS) / pourS * ramp(s, lagS) - bend * parabola(s, lagS);
        double ends = (1 - POUR_BENDS) / pourS * ramp(afterS, lagS) - bend * parabola(afterS, lagS);
        return begins - ends;
    }

    private static double ramp(double s, double lagS) {
        return s + lagS * Math.expm1(-s / lagS);
    }

    private static double parabola(double s, double lagS) {
        return s * s - 2 * lagS * ramp(s, lagS);
    }

    /** Begins anew with a fall that was a degree deep at {@code t}. */
    void begin(double t) {
        Arrays.fill(square, 0);
        Arrays.fill(product, 0);
        begunT = t;
        readT = t - READ_BEFORE_S;
        lastDownC = 0;
    }

    /** Takes the readings since the last ones, down from {@code fromC}; {@code stepC} is the thermometer's step. */
    void read(Track values, double fromC, double stepC) {
        double stepVariance = NOISE_C * NOISE_C + Math.min(1, stepC * stepC) / 12;
        double t = values.nextAfter(readT + APART_S);
        while (t <= begunT + LONGEST_S) {
            double downC = fromC - values.valueAt(t).orElse(fromC);
            double unsureC = UNSURE_S * (downC - lastDownC) / Math.max(1, t - readT);
            double partC = PART_OF_FALL * downC;
            take(t - begunT + BEGINS_BEFORE_S, downC, 1 / (stepVariance + partC * partC + unsureC * unsureC));
            lastDownC = downC;
            readT = t;
            t = values.nextAfter(t + APART_S);
        }
    }

    private void take(double s, double downC, double weight) {
        int latest = (int) Math.floor(s / EVERY_S);
        double part = s / EVERY_S - latest;
        for (int shape = 0; shape < SHAPES; shape++) {
            double[] curve = CURVES[shape];
            int at = shape * BEGINNINGS;
            for (int i = latest; i >= 0 && i > latest - BEGINNINGS; i--) {
                double height = curve[i] + part * (curve[i + 1] - curve[i]);
                square[at] += weight * height * height;
                product[at] += weight * height * downC;
                at++;
            }
        }
    }

    /** Whether the fall is young enough to be told by its way. */
    boolean tells(double t) {
        return t - begunT >= LEAST_S && t - begunT <= LONGEST_S;
    }

    /**
     * The logarithm of how much likelier the air is than something cold in the pan.
     *
     * @param colderC by how much colder than usual the air must be
     */
    double airOverCold(double colderC) {
        double best = Math.min(
                fit(0, FIRST_SLOW, AIR_LEAST_C + colderC, AIR_MOST_C),
                fit(FIRST_SLOW, FIRST_COLD, STEAM_LEAST_C + colderC, AIR_MOST_C));
        double bestCold = fit(FIRST_COLD, misfit.length, 0, COLD_MOST_C);
        return likelihood(0, FIRST_COLD, best) - likelihood(FIRST_COLD, misfit.length, bestCold);
    }

    /** Fits the curves, each as deep as suits it best but no less and no more than so; returns the least misfit. */
    private double fit(int from, int to, double leastC, double mostC) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = from; i < to; i++) {
            double deepC = Math.max(leastC, Math.min(mostC, product[i] / Math.max(TINY, square[i])));
            misfit[i] = deepC * (deepC * square[i] - 2 * product[i]);
            best = Math.min(best, misfit[i]);
        }
        return best;
    }

    /** The logarithm of how likely the curves are in the mean. */
    private double likelihood(int from, int to, double best) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += Math.exp((best - misfit[i]) / 2);
        }
        return Math.log(sum / (to - from)) - best / 2;
    }
}
