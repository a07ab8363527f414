package spoonfall.estimate.warming;

import spoonfall.series.LineSums;

/**
 * How much heat a warming pan takes: a line by least squares through the readings themselves, with what vapour took on the
 * way put back, less what the sides will take once it boils. They are less noisy than slopes of a moment, and a switching burner averages out.
 *
 * <p>Where a knob was turned the line has one bend, and only what came after it counts. A switching burner bends it again and
 * again: no single bend makes it much straighter.
 */
public final class WarmingLine {
    /** Warming from there on tells of the heat, in °C above the water boil: not so far below that cook or burner were others. */
    public static final double FROM_C = -40;

    /** So many degrees lie from there to where the boil slows the pan. */
    private static final int DEGREES = 36;

    /** What leaves as vapour just below the boil, in °C a minute, whatever the heat: common practice, no source. */
    private static final double VAPOUR_PER_MIN_C = 1.4;

    /** Water's vapour pressure grows by e in about so many °C there. */
    private static final double VAPOUR_GROWS_C = 27;

    /** What the sides lose less for each °C below the boil, in °C a minute: common practice, no source. */
    private static final double SIDES_PER_MIN = 0.025;

    /** No burner's pauses let a pan fall so far. */
    private static final double FALLS_C = 3;

    private static final double LONGEST_GAP_S = 60;

    /** What is shorter shows only one side of a burner that switches. */
    private static final int LEAST_SECONDS = 30;

    /** A burner that switches has rested and burnt again after so long. */
    private static final int LONGEST_REST_S = 90;

    /** By what a bend must make the squares of the misses smaller. */
    private static final double STRAIGHTER = 3;

    /** What a burner drifts by is no turned knob: so much, as a logarithm, is. */
    private static final double LEAST_TURN = 0.2;

    private static final double NOISE_C = 0.1;
    private static final double LEAST_PER_MIN_C = 0.5;

    /** A way so long tells of the heat also when it is long past. */
    private static final double LONG_WAY_C = 10;

    /** Sooner than that only a cold probe gets there, which is put into a hot pan. */
    private static final int LONG_WAY_SECONDS = 60;

    /** For so long readings miss the line alike, where a slow burner switches. */
    private static final double ALIKE_S = 60;

    private final LineSums[] degrees = new LineSums[DEGREES];
    private final double[] fastestPerMinC = new double[DEGREES];
    private double firstT;
    private double firstC;
    private double lastT;
    private double highestC;
    private double lostC;
    private double beforePerMinC;

    /**
     * What the line says.
     *
     * @param perMinC how fast the pan would warm at the boil if no vapour left it
     * @param doubt the standard deviation of that by the line's own misses, as a part of it
     * @param turned the logarithm of how many times as much it is as before the knob was turned; 0 where it was not
     * @param fastestPerMinC the fastest pace of a moment since then
     */
    record Heat(double perMinC, double doubt, double turned, double fastestPerMinC) {}

    WarmingLine() {
        begin(0, 0);
    }

    /** Takes note of where it stood at the end of a second, and how fast it warmed at that moment. */
    void observe(double t, double riseC, double perMinC) {
        if (t - lastT > LONGEST_GAP_S || riseC < firstC || riseC < highestC - FALLS_C) {
            beforePerMinC = longAgoPerMinC();
            begin(t, riseC);
        }
        double losesPerMinC = VAPOUR_PER_MIN_C * Math.exp(riseC / VAPOUR_GROWS_C) + SIDES_PER_MIN * riseC;
        lostC += losesPerMinC * (t - lastT) / 60;
        lastT = t;
        highestC = Math.max(highestC, riseC);
        int degree = (int) Math.max(0, Math.min(DEGREES - 1.0, highestC - FROM_C));
        degrees[degree].add((t - firstT) / 60, riseC + lostC);
        fastestPerMinC[degree] = Math.max(fastestPerMinC[degree], perMinC);
    }

    /** How many seconds it saw. */
    int seconds() {
        return since(0).count();
    }

    /** What it says; to be asked once it has seen some seconds. */
    Heat heat() {
        LineSums all = since(0);
        LineSums before = new LineSums();
        double straight = (all.misses() + chance(all)) / STRAIGHTER;
        int bend = 0;
        double turned = 0;
        for (int i = 1; i < DEGREES; i++) {
            before.add(degrees[i - 1]);
            LineSums after = since(i);
            if (before.count() < LEAST_SECONDS || after.count() < LEAST_SECONDS) {
                continue;
            }
            double misses = before.misses() + after.misses() + chance(all);
            double turn = Math.log(perMinC(after) / perMinC(before));
            boolean rests = turn < 0 && after.count() < LONGEST_REST_S;
            if (misses < straight && Math.abs(turn) > LEAST_TURN && !rests) {
                straight = misses;
                bend = i;
                turned = turn;
            }
        }
        LineSums line = since(bend);
        double variance = (line.misses() + chance(line)) / line.count() * ALIKE_S;
        double perMinC = perMinC(line);
        return new Heat(perMinC, Math.sqrt(variance / line.spreadX()) / perMinC, turned, fastestPerMinC(bend));
    }

    /** How fast the pan warmed on its latest long way, be it an earlier one than the latest; 0 where there was none. */
    double longAgoPerMinC() {
        boolean longWay = highestC - firstC >= LONG_WAY_C && seconds() >= LONG_WAY_SECONDS;
        return longWay ? heat().perMinC() : beforePerMinC;
    }

    /** How much of a long way the latest was short of, as a part of one; 0 for a long one. */
    double shortOfLong() {
        return Math.max(0, 1 - (highestC - firstC) / LONG_WAY_C);
    }

    private void begin(double t, double riseC) {
        for (int i = 0; i < DEGREES; i++) {
            degrees[i] = new LineSums();
            fastestPerMinC[i] = 0;
        }
        firstT = t;
        lastT = t;
        firstC = riseC;
        highestC = riseC;
        lostC = 0;
    }

    private LineSums since(int degree) {
        LineSums sums = new LineSums();
        for (int i = degree; i < DEGREES; i++) {
            sums.add(degrees[i]);
        }
        return sums;
    }

    private double fastestPerMinC(int sinceDegree) {
        double fastest = 0;
        for (int i = sinceDegree; i < DEGREES; i++) {
            fastest = Math.max(fastest, fastestPerMinC[i]);
        }
        return fastest;
    }

    /** What noise alone makes the squares of the misses, at the least. */
    private static double chance(LineSums sums) {
        return sums.count() * NOISE_C * NOISE_C;
    }

    private static double perMinC(LineSums sums) {
        return Math.max(LEAST_PER_MIN_C, sums.slope());
    }
}
