package spoonfall.cook;

/**
 * Sees that a reading that was called stuck had told the truth. A thermometer with coarse steps says the same of a pan that
 * stands as one that is stuck; but when it stirs again it flickers about where it stood, where a stuck one leaps up to where
 * the pan has gone meanwhile, and a pan that climbs slowly soon goes over to the next step. A finer one flickers all the time,
 * and is stuck if it does not. The numbers are judgements, no source.
 */
final class Unstuck {
    /** A pan that climbs by no more than one step in the time of so many does not boil as it did. */
    private static final double DUE_STEPS = 2.9;

    /** It is in the next step when that is read for so large a share of the time, looked at over so many seconds. */
    private static final double SHARE = 0.5;

    private static final double SHARE_OVER_S = 30;

    /** What leaps up so far was stuck; a pan that stands goes over to the next step at most. */
    private static final double LEAPS_STEPS = 1.4;

    /** So long at least it is looked at: a thermometer that leaps up is not there at once. */
    private static final double LOOKS_S = 25;

    /** After so long it is another matter. */
    private static final double WATCHES_S = 600;

    /** What lies so many steps lower fell. */
    private static final double FELL_STEPS = 2;

    /** The pan's pace must have been known for so long before it stood. */
    private static final double KNOWN_S = 150;

    private double stoodC = Double.NaN;
    private double sinceT;
    private double perS;
    private double freeT = Double.NEGATIVE_INFINITY;
    private double above;

    /**
     * Ends a second in which the reading is called stuck.
     *
     * @param sameForS for how long it has been the same
     * @param dueC by how many °C the pan should have climbed meanwhile
     * @param boilingForS for how long it has been boiling
     */
    void stuck(Signals now, double sameForS, double dueC, double boilingForS) {
        if (now.t() - freeT > 1) { // it has just been called so
            boolean known = boilingForS - sameForS >= KNOWN_S;
            stoodC = known && Signals.coarse(now.stepC()) ? now.levelC() : Double.NaN;
            sinceT = now.t() - sameForS;
            perS = dueC / sameForS;
        }
        freeT = now.t();
        above = 0;
    }

    /** Ends a second in which it is not; whether it has just turned out that the pan stands. */
    boolean free(Signals now) {
        if (Double.isNaN(stoodC)) {
            return false;
        }
        double higherSteps = (now.levelC() - stoodC) / now.stepC();
        above += ((higherSteps > SHARE ? 1 : 0) - above) / SHARE_OVER_S;
        double freeS = now.t() - freeT;
        boolean moved = higherSteps > LEAPS_STEPS || higherSteps < -FELL_STEPS;
        boolean due = perS * (now.t() - sinceT) >= DUE_STEPS * now.stepC();
        if (moved || freeS > WATCHES_S || (above > SHARE && !due)) {
            forget();
            return false;
        }
        boolean stands = due && freeS >= LOOKS_S;
        if (stands) {
            forget();
        }
        return stands;
    }

    /** What stood is no matter any more. */
    void forget() {
        stoodC = Double.NaN;
    }
}
