package spoonfall.cook.calm;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.Forecast;

/**
 * A forecast as it is told: the moments of the test window, of the gel point and of the next set test, each of which stays put while
 * the news merely wobbles.
 *
 * <p>Not safe for use by several threads.
 */
public final class CalmForecast {
    private final CalmTime window = new CalmTime();
    private final CalmTime gel = new CalmTime();
    private final CalmTime nextTest = new CalmTime();

    /**
     * What to show of a forecast, in the seconds of whoever asks.
     *
     * @param window when set tests are worth doing
     * @param gel when it sets
     * @param nextTest when to test next by what the tests taught; empty when that is not known
     */
    public record Shown(CalmTime.Shown window, CalmTime.Shown gel, Optional<CalmTime.Shown> nextTest) {
        /** The same in the seconds of somebody who began to count so many seconds earlier. */
        public Shown later(double s) {
            return new Shown(window.later(s), gel.later(s), nextTest.map(test -> test.later(s)));
        }
    }

    /**
     * Takes what is forecast at {@code t}, which may be nothing, and returns what to show of it.
     *
     * @param nextTestInS seconds until the next set test; empty when that is not known
     */
    public Optional<Shown> settle(double t, Optional<Forecast> forecast, OptionalDouble nextTestInS) {
        if (forecast.isEmpty()) {
            window.forget();
            gel.forget();
        }
        if (nextTestInS.isEmpty()) {
            nextTest.forget();
        }
        return forecast.map(now -> settle(t, now, nextTestInS));
    }

    /**
     * The interval of the window is that part of the gel point's that the window is of the way there: nothing of it is left where
     * the window is due now, as it is wherever the gel point is.
     */
    private Shown settle(double t, Forecast forecast, OptionalDouble nextTestInS) {
        double share = forecast.etaS() > 0 ? forecast.windowS() / forecast.etaS() : 0;
        return new Shown(
                window.settle(t, forecast.windowS(), share * forecast.lowS(), share * forecast.highS()),
                gel.settle(t, forecast.etaS(), forecast.lowS(), forecast.highS()),
                nextTestInS.stream().mapToObj(s -> nextTest.settle(t, s, s, s)).findFirst());
    }
}
