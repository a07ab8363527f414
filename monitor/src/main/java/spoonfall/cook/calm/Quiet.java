package spoonfall.cook.calm;

import java.util.Optional;
import spoonfall.cook.Forecast;
import spoonfall.cook.Stage;

/**
 * Whether a reminder can wait a little: the cook is about to be called to the set tests, or just was, or was reminded of something
 * else. The numbers are a judgement, no source.
 *
 * <p>Not safe for use by several threads.
 */
public final class Quiet {
    private static final double LASTS_S = 60;

    /** A forecast that says so for longer does not come true. */
    private static final double LONGEST_S = 150;

    private double toldT = Double.NEGATIVE_INFINITY;
    private double soonSinceT = Double.NaN;
    private boolean inWindow;

    /** Takes note of the pan; to be told in order. */
    public void follow(double t, Stage stage, Optional<Forecast> forecast) {
        boolean open = stage == Stage.TEST_WINDOW;
        if (open && !inWindow) {
            told(t);
        }
        inWindow = open;
        boolean soon = stage == Stage.ROLLING_BOIL
                && forecast.filter(ahead -> ahead.windowS() < LASTS_S).isPresent();
        if (!soon) {
            soonSinceT = Double.NaN;
        } else if (Double.isNaN(soonSinceT)) {
            soonSinceT = t;
        }
    }

    /** Something was said at {@code t}. */
    public void told(double t) {
        toldT = t;
    }

    /** Whether what can wait waits at {@code t}. */
    public boolean isAt(double t) {
        return t - toldT < LASTS_S || t - soonSinceT < LONGEST_S;
    }
}
