package spoonfall.cook.calm;

/** Whether something is so, and has been for a while. */
final class Stays {
    private final double afterS;
    private double sinceT = Double.NaN;

    /** Being so counts after {@code afterS} seconds. */
    Stays(double afterS) {
        this.afterS = afterS;
    }

    /** Whether it has been so for long enough at {@code t}, at which it is so or not; to be asked in order. */
    boolean at(double t, boolean so) {
        if (!so) {
            sinceT = Double.NaN;
            return false;
        }
        if (Double.isNaN(sinceT)) {
            sinceT = t;
        }
        return t - sinceT >= afterS;
    }

    /** It begins anew. */
    void forget() {
        sinceT = Double.NaN;
    }
}
