package spoonfall.kitchen.typed;

import java.util.Optional;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;

/**
 * How the readings stand that somebody types.
 *
 * @param probe the thermometer that they are of
 * @param last the latest one; empty before the first, or when it was taken back
 * @param everyS how often to read just now, in seconds
 * @param due whether it is time to read again
 */
public record HandView(String probe, Optional<HandEntry> last, double everyS, boolean due) {
    /** Readings so far apart still tell when it will set. Common practice, no source. */
    static final double USUAL_S = 120;

    /** Near the test window a preserve can pass its setting point in two minutes. */
    static final double NEAR_S = 60;

    private static final double NEAR_BEFORE_S = 300;

    /** What was typed last of a thermometer, in the pan as it is. */
    public static HandView of(String probe, Optional<HandEntry> last, Optional<CookStatus> status) {
        double everyS = status.filter(HandView::near).isPresent() ? NEAR_S : USUAL_S;
        boolean due = status.isEmpty()
                || status.get().seen().isEmpty()
                || status.get().t() - status.get().seen().get().t() >= everyS;
        return new HandView(probe, last, everyS, due);
    }

    private static boolean near(CookStatus status) {
        return switch (status.stage()) {
            case TEST_WINDOW, AT_GEL_POINT, PAST_GEL_POINT -> true;
            case ROLLING_BOIL ->
                status.forecast()
                        .map(Forecast::windowS)
                        .filter(s -> s < NEAR_BEFORE_S)
                        .isPresent();
            case WAITING, WARMING, SIMMERING, COMING_TO_THE_BOIL, OFF_THE_HEAT -> false;
        };
    }
}
