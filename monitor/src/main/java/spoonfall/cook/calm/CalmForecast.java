package spoonfall.cook.calm;

import spoonfall.cook.Forecast;

/**
 * A forecast as it is told: the moments of the test window and of the gel point, each of which stays put while the news merely
 * wobbles.
 *
 * <p>Not safe for use by several threads.
 */
public final class CalmForecast {
    private final CalmTime window = new CalmTime();
    private final CalmTime gel = new CalmTime();

    /**
     * What to show of a forecast, in the seconds of whoever asks.
     *
     * @param window when set tests are worth doing
     * @param gel when it sets
     */
    public record Shown(CalmTime.Shown window, CalmTime.Shown gel) {}

    /**
     * Takes the newest forecast of {@code t}. The interval of the window is that part of the gel point's that the window is of the
     * way there: nothing of it is left where the window is due now, as it is wherever the gel point is.
     */
    public Shown settle(double t, Forecast forecast) {
        double share = forecast.etaS() > 0 ? forecast.windowS() / forecast.etaS() : 0;
        return new Shown(
                window.settle(t, forecast.windowS(), share * forecast.lowS(), share * forecast.highS()),
                gel.settle(t, forecast.etaS(), forecast.lowS(), forecast.highS()));
    }

    /** There is no forecast now. */
    public void forget() {
        window.forget();
        gel.forget();
    }
}
