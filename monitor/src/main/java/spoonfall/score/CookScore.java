package spoonfall.score;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How the monitor did in one cook.
 *
 * @param name of the trace
 * @param title of the trace
 * @param clean whether nothing went wrong in it
 * @param forecasts at each horizon that could be judged
 * @param detections of each fault that it held
 * @param falseAlarms the alarms that were raised for nothing
 * @param watchedS for how long it could have raised any
 * @param windowErrorS when set tests were called for, less when the window truly opened; empty if they never were
 *     though it opened
 * @param hasWindow whether the window truly opened
 * @param windowSeen whether the probe was in the pan, speaking and telling the truth when it opened
 * @param gelEarlyS how long before the gel point it was called; empty if it was not called before it
 * @param gelOnAWrongReading whether a scorch, a jump or a wild value had made the reading wrong when it was called
 * @param mostCalls the most calls in any ten minutes, alarms and prompts alike
 * @param mostAlarms the same without prompts, which call to what a cook that goes as it should comes to
 */
public record CookScore(
        String name,
        String title,
        boolean clean,
        List<ForecastScore> forecasts,
        List<Detection> detections,
        List<FalseAlarm> falseAlarms,
        double watchedS,
        boolean hasWindow,
        boolean windowSeen,
        OptionalDouble windowErrorS,
        OptionalDouble gelEarlyS,
        boolean gelOnAWrongReading,
        int mostCalls,
        int mostAlarms) {
    /** How long before the gel point calling it counts as too early. */
    public static final double TOO_EARLY_S = 240;

    /** Set tests called for within that of the truth count as in time. */
    public static final double IN_TIME_S = 20;

    /**
     * A forecast and two that anybody could make. Errors are forecast less truth, in seconds; a missing forecast has none.
     *
     * @param minutesAhead how long before the gel point, about
     * @param monitorS the monitor's error
     * @param lineS that of a straight line through the last five minutes
     * @param parabolaS that of a parabola through the last ten minutes
     * @param covered whether the monitor's 90 % interval held the truth
     * @param widthS how wide that was
     */
    public record ForecastScore(
            int minutesAhead,
            OptionalDouble monitorS,
            OptionalDouble lineS,
            OptionalDouble parabolaS,
            boolean covered,
            OptionalDouble widthS) {
        /** The error of a method. */
        public OptionalDouble error(Method method) {
            return switch (method) {
                case MONITOR -> monitorS;
                case LINE -> lineS;
                case PARABOLA -> parabolaS;
            };
        }
    }

    /** Who forecasts. */
    public enum Method {
        /** The monitor. */
        MONITOR("monitor"),
        /** A straight line through the last five minutes. */
        LINE("straight line"),
        /** A parabola through the last ten minutes. */
        PARABOLA("parabola");

        private final String title;

        Method(String title) {
            this.title = title;
        }

        /** Its name in tables. */
        public String title() {
            return title;
        }

        /** Its name in JSON. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A fault, and how long the monitor took to find it.
     *
     * @param alarm the one that is for it
     * @param atT when it began
     * @param delayS empty if it was not found while it lasted
     */
    public record Detection(String alarm, double atT, OptionalDouble delayS) {}

    /**
     * An alarm for nothing.
     *
     * @param alarm its wire name
     * @param t when it was raised
     * @param besideAnotherFault whether some other fault was in effect, or had been within two minutes
     */
    public record FalseAlarm(String alarm, double t, boolean besideAnotherFault) {}

    /** Whether the gel point was called more than {@link #TOO_EARLY_S} early. */
    public boolean gelTooEarly() {
        return gelEarlyS.orElse(0) > TOO_EARLY_S;
    }

    /** Whether set tests were called for within {@link #IN_TIME_S} of the truth. */
    public boolean windowInTime() {
        return windowErrorS.isPresent() && Math.abs(windowErrorS.getAsDouble()) <= IN_TIME_S;
    }
}
