package spoonfall.cook.calm;

import java.util.OptionalDouble;

/** Comes once, so long before a moment that is only forecast, and again when that moment moves far. */
public final class Due {
    /** A moment that moves by more than this is another one. */
    private static final double MOVES_S = 600;

    /** The forecast must have said so for so long. */
    private static final double SETTLES_S = 20;

    private final double beforeS;
    private OptionalDouble saidForT = OptionalDouble.empty();
    private double sinceT = Double.NaN;

    /** Comes {@code beforeS} seconds before the moment. */
    public Due(double beforeS) {
        this.beforeS = beforeS;
    }

    /** Whether it is to be said at {@code t}, when the moment is {@code leftS} seconds ahead; to be asked in order. */
    public boolean comes(double t, double leftS) {
        double forT = t + leftS;
        boolean said = saidForT.isPresent() && Math.abs(forT - saidForT.getAsDouble()) <= MOVES_S;
        if (said || leftS > beforeS || leftS <= 0) {
            sinceT = Double.NaN;
            return false;
        }
        if (Double.isNaN(sinceT)) {
            sinceT = t;
        }
        if (t - sinceT < SETTLES_S) {
            return false;
        }
        saidForT = OptionalDouble.of(forT);
        sinceT = Double.NaN;
        return true;
    }
}
