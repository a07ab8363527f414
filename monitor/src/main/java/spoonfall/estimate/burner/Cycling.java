package spoonfall.estimate.burner;

import java.util.Arrays;

/**
 * Sees a pan that goes off the boil and back again and again, as over a burner that switches on and off. Only its heights
 * are where the syrup boils: what lies below them is the pan's cooling, and tells nothing of the water, none of which leaves
 * meanwhile.
 *
 * <p>A pan that boils on has no reason to go up and down at a steady {@link Beat}. Once it does, the last minutes are folded
 * over it, which takes out the noise and shows in which part of it the pan stands at its height. Where there is no steady beat
 * the {@link Sawtooth} of the readings may still show dips.
 */
public final class Cycling {
    private static final int KEPT = 48;
    private static final double FOLDS_S = 300;
    private static final int PARTS = 12;
    private static final double REMEMBERS_S = 150;

    /** Where points are further apart than usual, so many are remembered. */
    private static final double REMEMBERS_POINTS = 30;

    private static final double USUAL_S = 5;
    private static final double LEARNS = 0.1;
    private static final double LONGEST_GAP_S = 60;
    private static final double LONGEST_DIP_S = 60;
    private static final double WILD_C = 6;

    /** At its height is what lies no further below the highest part: in °C, or as a part of the whole depth. */
    private static final double NEAR_C = 0.04;

    private static final double NEAR_PART = 0.06;

    /** Of the time below its height the pan boils for the rest: the thermometer is only late to show it. */
    private static final double OFF_PART = 0.6;

    /** What goes down by less may have been stirred. */
    private static final double REST_C = 0.5;

    /** Before it is known whether it comes back it may have fallen for good. */
    private static final double LASTING_S = 90;

    private final Beat beat = new Beat();
    private final Sawtooth sawtooth = new Sawtooth();
    private final double[] times = new double[KEPT];
    private final double[] offsC = new double[KEPT];
    private final double[] depthsC = new double[KEPT];
    private final double[] sums = new double[PARTS];
    private final int[] counts = new int[PARTS];
    private final double[] foldedC = new double[PARTS];
    private int taken;
    private double lastT = Double.NaN;
    private double meanC;
    private double weight;
    private double apartS = USUAL_S;
    private double topT;
    private boolean top;
    private double topPart;
    private double topC;
    private double depthC;

    /** Forgets the way here. */
    public void forget() {
        sawtooth.forget();
        breakOff();
    }

    private void breakOff() {
        beat.forget();
        taken = 0;
        weight = 0;
        lastT = Double.NaN;
    }

    /** Takes a point; {@code climbPerMinC} is how fast the pan should be climbing. Returns whether a beat is seen since that one. */
    public boolean point(double t, double riseC, double climbPerMinC) {
        sawtooth.point(t, riseC, climbPerMinC);
        boolean seenBefore = beat.seen();
        double s = t - lastT;
        double dueC = meanC + climbPerMinC * s / 60;
        if (!(s <= LONGEST_GAP_S && Math.abs(riseC - dueC) <= WILD_C)) {
            breakOff();
            s = 0;
            dueC = riseC;
        }
        lastT = t;
        apartS += s == 0 ? 0 : LEARNS * (s - apartS);
        double keeps = Math.exp(-s / Math.max(REMEMBERS_S, REMEMBERS_POINTS * apartS));
        weight = keeps * weight + 1;
        meanC = dueC + (riseC - dueC) / weight;
        times[taken % KEPT] = t;
        offsC[taken % KEPT] = riseC - meanC;
        taken++;
        beat.point(s, keeps, weight, riseC - meanC);
        top = true;
        if (beat.seen()) {
            fold();
        }
        topT = top ? t : topT;
        depthsC[(taken - 1) % KEPT] = depthC();
        return beat.seen() && !seenBefore;
    }

    /** Whether the latest point lies in a dip that will be over soon. */
    public boolean dips() {
        return beat.seen() ? belowTop() : sawtooth.dips();
    }

    private boolean belowTop() {
        return !top && lastT - topT < Math.max(LONGEST_DIP_S, beat.periodS());
    }

    /** Where it boils between the dips, as the rise in °C; to be asked when a beat is seen. */
    public double topC() {
        return topC;
    }

    /** How deep it goes, in °C; 0 where it does not. */
    public double depthC() {
        return beat.seen() ? depthC : sawtooth.depthC();
    }

    /** The least depth of the last minute and a half: one that has grown meanwhile may be a fall that does not end. */
    public double lastingDepthC() {
        double leastC = Double.POSITIVE_INFINITY;
        for (int i = Math.max(0, taken - KEPT); i < taken; i++) {
            if (lastT - times[i % KEPT] <= LASTING_S) {
                leastC = Math.min(leastC, depthsC[i % KEPT]);
            }
        }
        return taken == 0 ? 0 : leastC;
    }

    /**
     * By how many seconds what left the pan since its last height is behind what leaves on the whole: at first nothing leaves, and
     * once it boils again all the more. 0 where nothing dips.
     */
    public double restsS(double t) {
        if (!beat.seen() || !belowTop() || depthC < REST_C) {
            return 0;
        }
        double periodS = beat.periodS();
        double offS = OFF_PART * (1 - topPart) * periodS;
        double sinceS = Math.min(periodS, t - topT);
        return sinceS - Math.max(0, sinceS - offS) * periodS / (periodS - offS);
    }

    /** Lays the last minutes over one beat, the latest point at its beginning. */
    private void fold() {
        Arrays.fill(sums, 0);
        Arrays.fill(counts, 0);
        for (int i = Math.max(0, taken - KEPT); i < taken; i++) {
            double agoS = lastT - times[i % KEPT];
            if (agoS <= FOLDS_S) {
                int part = (int) Math.rint(agoS / beat.periodS() * PARTS) % PARTS;
                sums[part] += offsC[i % KEPT];
                counts[part]++;
            }
        }
        double highestC = Double.NEGATIVE_INFINITY;
        double lowestC = Double.POSITIVE_INFINITY;
        for (int part = 0; part < PARTS; part++) {
            double c = smoothed(part);
            foldedC[part] = c;
            highestC = Double.isNaN(c) ? highestC : Math.max(highestC, c);
            lowestC = Double.isNaN(c) ? lowestC : Math.min(lowestC, c);
        }
        topC = meanC + highestC;
        depthC = highestC - lowestC;
        double fromC = highestC - Math.max(NEAR_C, NEAR_PART * depthC);
        int tops = 0;
        int known = 0;
        for (double c : foldedC) {
            known += Double.isNaN(c) ? 0 : 1;
            tops += c >= fromC ? 1 : 0;
        }
        topPart = (double) tops / known;
        top = foldedC[0] >= fromC;
    }

    /** The mean of a part and, at half the weight, of those beside it; not a number where too few points lie. */
    private double smoothed(int part) {
        int before = (part + PARTS - 1) % PARTS;
        int after = (part + 1) % PARTS;
        int n = counts[before] + 2 * counts[part] + counts[after];
        return n < 2 ? Double.NaN : (sums[before] + 2 * sums[part] + sums[after]) / n;
    }
}
