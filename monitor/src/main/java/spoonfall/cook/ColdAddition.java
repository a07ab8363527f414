package spoonfall.cook;

/**
 * Tells a pan into which something cold went: its reading falls within half a minute and then warms again. A pan off the
 * heat falls more slowly and goes on falling; a set test is known by the test window. The numbers are common practice,
 * no source.
 */
final class ColdAddition {
    private static final double WITHIN_S = 30;
    private static final double LEAST_FALL_C = 2.5;

    /** The bottom must be reached so soon after the fall was seen. */
    private static final double BOTTOM_WITHIN_S = 40;

    private static final double LOOKS_FOR_S = 150;
    private static final double WARMS_C = 0.5;
    private static final double STEPS = 2;
    private static final double BACK_WITHIN_C = 0.5;
    private static final double LONGEST_S = 900;

    private final Track levels = new Track(60);

    /** No lower than any of the latest levels: they need be looked through only where this is far above the pan. */
    private double atMostC = Double.NEGATIVE_INFINITY;

    private double beforeC = Double.NaN;
    private double fellT;
    private double lowestC;
    private double lowestT;
    private boolean warms;

    /** Whether something cold went in and the pan, which warms again, is not back yet. */
    boolean seen() {
        return warms;
    }

    /** Forgets the way here. */
    void restart() {
        levels.clear();
        atMostC = Double.NEGATIVE_INFINITY;
        forget();
    }

    private void forget() {
        beforeC = Double.NaN;
        warms = false;
    }

    private void look(double t, double levelC) {
        atMostC = levels.highestSince(t - WITHIN_S).orElse(levelC);
        if (atMostC - levelC >= LEAST_FALL_C) {
            beforeC = atMostC;
            fellT = t;
            lowestC = levelC;
            lowestT = t;
        }
    }

    /** Takes note of where the pan is. */
    void endSecond(Signals now, Stages stages) {
        double t = now.t();
        double levelC = now.levelC();
        levels.add(t, levelC);
        atMostC = Math.max(atMostC, levelC);
        if (Double.isNaN(beforeC)) {
            boolean mayCome = stages.stage().boiling() && !stages.reachedWindow();
            if (mayCome && atMostC - levelC >= LEAST_FALL_C) {
                look(t, levelC);
            }
            return;
        }
        if (levelC < lowestC) {
            lowestC = levelC;
            lowestT = t;
        }
        double enoughC = Math.max(WARMS_C, STEPS * now.knownStepC());
        boolean bottomed = lowestT - fellT <= BOTTOM_WITHIN_S;
        warms = bottomed && (warms || levelC >= lowestC + enoughC);
        boolean back = levelC >= beforeC - BACK_WITHIN_C;
        if (back || t - fellT > (warms ? LONGEST_S : LOOKS_FOR_S)) {
            forget();
        }
    }
}
