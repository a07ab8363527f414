package spoonfall.cook;

import java.util.OptionalDouble;

/**
 * A moment ahead that stays put while the forecast of it merely wobbles, so that the minutes shown count
 * down by the clock and jump only when the news does.
 */
public final class CalmTime {
    private static final double LEAST_NEWS_S = 45;
    private static final double NEWS_SHARE = 0.12;
    private static final double LAST_WORD_S = 120;

    private OptionalDouble shownT = OptionalDouble.empty();

    /** Takes the newest forecast, {@code etaS} seconds after {@code t}, and returns the moment to show. */
    public double settle(double t, double etaS) {
        double newsT = t + etaS;
        if (shownT.isPresent()) {
            double shown = shownT.getAsDouble();
            double newsS = Math.max(LEAST_NEWS_S, NEWS_SHARE * etaS);
            boolean nearTheEnd = etaS < LAST_WORD_S;
            if (Math.abs(newsT - shown) < (nearTheEnd ? LEAST_NEWS_S / 3 : newsS)) {
                return shown;
            }
        }
        shownT = OptionalDouble.of(newsT);
        return newsT;
    }

    /** There is no forecast now. */
    public void forget() {
        shownT = OptionalDouble.empty();
    }
}
