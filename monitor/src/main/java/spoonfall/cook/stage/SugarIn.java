package spoonfall.cook.stage;

import spoonfall.cook.Stage;
import spoonfall.cook.signal.Signals;
import spoonfall.series.Slots;

/**
 * Tells when sugar goes into a pan that simmered without: it falls by many degrees within a minute, or boils higher within minutes
 * than any water that leaves could make it. Until that is over nothing is known of the pan, for it becomes another one. What
 * stood just below or above the boil of water, and hardly moved, has no sugar in it yet. The numbers are judgements, no source.
 */
public final class SugarIn {
    /** Fruit and water that are kept hot stand between these two, in °C above the water boil. */
    private static final double SIMMERS_ABOVE_C = -6;

    private static final double NO_SUGAR_C = 0.8;

    /** Fruit and water boil no higher, and syrup of any jam does. */
    private static final double THIN_C = 0.6;

    /** What was that thin still is up to here: a noisy reading would go to and fro. */
    private static final double STILL_THIN_C = 0.75;

    /** What moves by less within half a minute stands. */
    private static final double STANDS_C = 0.15;

    /** No water that leaves makes so thin a pan boil so much higher within that time. */
    private static final double CLIMBS_C = 0.45;

    private static final double CLIMBS_FAR_C = 1;
    private static final double WITHIN_S = 240;
    private static final double AGAIN_WITHIN_S = 150;

    /** What it falls by within a minute when sugar goes in, and not when the heat goes off. */
    private static final double FALLS_C = 4;

    private static final double FALLS_WITHIN_S = 75;

    private static final double STEPS = 1.2;

    /** It is in when the pan boils and climbs no faster than water may make it, or by that part of its fastest. */
    private static final double BOILS_C = 0.3;

    private static final double SETTLED_C = 0.1;
    private static final double SETTLED_PART = 0.3;
    private static final double AT_MOST_C = 0.25;
    private static final int SETTLED_SLOTS = 4;
    private static final double LEAST_S = 60;

    /** A stream of sugar is not poured for longer; where the pan was taken off the heat to dissolve it, the way back takes a while. */
    private static final double LONGEST_POURED_S = 600;

    private static final double LONGEST_S = 1500;

    /** What has boiled higher than that for three minutes in all is sweet, and nobody puts its sugar in once more. */
    private static final double SWEET_C = 1.1;

    private static final int SWEET_SLOTS = 36;

    private static final int MINUTE = 12;
    private static final int HALF = 6;

    /** So many slots of a minute say where it is: the others may be stirs. */
    private static final int MOST = 9;

    private static final int SOME = 4;

    private final double waterBoilC;
    private final Slots slots = new Slots();

    /** How high it was in each slot of the last minute, the oldest at {@code next}. */
    private final double[] minuteC = new double[MINUTE];

    private int next;
    private int seen;
    private int settled;
    private int sweet;
    private double stoodT = Double.NEGATIVE_INFINITY;
    private double stoodC;
    private boolean thin;
    private double beganT = Double.NaN;
    private boolean fell;

    /** It climbs no more, but the next portion may follow: where it stood last it has sugar. */
    private boolean someIsIn;

    private double fastestC;

    /** {@code waterBoilC} is where plain water boils. */
    public SugarIn(double waterBoilC) {
        this.waterBoilC = waterBoilC;
    }

    /** Whether it goes in, or the pan is not yet back at the boil since. */
    public boolean going() {
        return !Double.isNaN(beganT);
    }

    /** Whether it stood without sugar until just now, or it goes in: what climbs now may be that. */
    public boolean mayGo(double t) {
        return going() || (!someIsIn && t - stoodT < WITHIN_S);
    }

    /**
     * What to call {@code stage}, at which the pan is by its signals: fruit and water that boil without sugar simmer, and while the
     * sugar goes in and melts it is on its way to the boil, also where it stands off the heat for that.
     */
    public Stage told(Stage stage, double t) {
        if (going()) {
            return switch (stage) {
                case ROLLING_BOIL -> Stage.COMING_TO_THE_BOIL;
                case OFF_THE_HEAT -> Stage.WARMING;
                default -> stage;
            };
        }
        boolean boils = stage == Stage.ROLLING_BOIL || stage == Stage.COMING_TO_THE_BOIL;
        return boils && mayGo(t) && thin ? Stage.SIMMERING : stage;
    }

    /** Forgets the way here. */
    public void restart() {
        seen = 0;
        end();
    }

    /** Takes note of where the pan is; to be told once a second. */
    public void endSecond(Signals now) {
        if (!slots.begins(now.t()) || sweet >= SWEET_SLOTS) {
            return;
        }
        double riseC = now.levelC() - waterBoilC;
        minuteC[next] = riseC;
        next = (next + 1) % MINUTE;
        seen++;
        double stepsC = STEPS * now.knownStepC();
        if (going()) {
            follow(now.t(), riseC, stepsC);
            return;
        }
        boolean falls = now.t() - stoodT < FALLS_WITHIN_S && stoodC - riseC > FALLS_C;
        if (falls) {
            begin(now.t(), true);
        } else if (seen >= MINUTE) {
            look(now.t(), stepsC);
        }
    }

    private void look(double t, double stepsC) {
        double earlyC = sumC(next) / HALF;
        double lateC = sumC(next + HALF) / HALF;
        if (above(NO_SUGAR_C) <= MINUTE - MOST && above(SIMMERS_ABOVE_C) == MINUTE) {
            if (Math.abs(lateC - earlyC) < STANDS_C + stepsC) {
                stoodT = t;
                stoodC = (earlyC + lateC) / 2;
                thin = stoodC < (thin ? STILL_THIN_C : THIN_C);
                someIsIn = false;
            }
        } else if (climbed(t, stepsC)) {
            begin(t, false);
        } else if (above(SWEET_C) >= MOST) {
            sweet++;
        }
    }

    private boolean climbed(double t, double stepsC) {
        if (someIsIn) { // by then water makes it climb as well
            return t - stoodT < AGAIN_WITHIN_S && above(stoodC + CLIMBS_FAR_C + stepsC) >= SOME;
        }
        return t - stoodT < WITHIN_S
                && (above(Math.max(NO_SUGAR_C, stoodC + CLIMBS_C + stepsC)) >= MOST
                        || above(Math.max(NO_SUGAR_C, stoodC + CLIMBS_FAR_C + stepsC)) >= SOME);
    }

    private void begin(double t, boolean falls) {
        beganT = t;
        fell = falls;
        fastestC = 0;
        settled = 0;
    }

    private void end() {
        beganT = Double.NaN;
        stoodT = Double.NEGATIVE_INFINITY;
        thin = false;
        someIsIn = false;
    }

    private void follow(double t, double riseC, double stepsC) {
        // Where it is stirred in readings dip again and again: how high they come says where the pan is.
        double climbsC = highestC(next + HALF) - highestC(next);
        fastestC = Math.max(fastestC, climbsC);
        double settledC = Math.max(SETTLED_C, Math.min(AT_MOST_C, SETTLED_PART * fastestC)) + stepsC;
        settled = riseC > BOILS_C && Math.abs(climbsC) < settledC ? settled + 1 : 0;
        boolean in = settled >= SETTLED_SLOTS && t - beganT >= LEAST_S;
        if (in || t - beganT > (fell ? LONGEST_S : LONGEST_POURED_S)) {
            end();
            if (in) { // or so it seems
                stoodT = t;
                stoodC = riseC;
                someIsIn = true;
            }
        }
    }

    private double highestC(int from) {
        double highestC = Double.NEGATIVE_INFINITY;
        for (int i = from; i < from + HALF; i++) {
            highestC = Math.max(highestC, minuteC[i % MINUTE]);
        }
        return highestC;
    }

    private double sumC(int from) {
        double sumC = 0;
        for (int i = from; i < from + HALF; i++) {
            sumC += minuteC[i % MINUTE];
        }
        return sumC;
    }

    private int above(double limitC) {
        int above = 0;
        for (double riseC : minuteC) {
            above += riseC > limitC ? 1 : 0;
        }
        return above;
    }
}
