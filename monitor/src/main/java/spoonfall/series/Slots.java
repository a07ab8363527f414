package spoonfall.series;

/**
 * Says when to do what is done every five seconds. All who ask go by the same seconds of the cook, 0, 5, 10 and so on, so that the
 * others have little to do, and a status, which is taken in one of these, goes by what is new.
 */
public final class Slots {
    private static final double EVERY_S = 5;

    private double lastT = Double.NEGATIVE_INFINITY;

    /** Slots of which none has begun: the first begins when it is asked for. */
    public Slots() {}

    /** Whether a slot has begun by {@code t}, in seconds of the cook, that was not told of yet; told now, it is no longer new. */
    public boolean begins(double t) {
        if (t - lastT < EVERY_S) {
            return false;
        }
        lastT = EVERY_S * Math.floor(t / EVERY_S);
        return true;
    }

    /** None begins until five seconds after {@code t}. */
    public void rest(double t) {
        lastT = t;
    }
}
