package spoonfall.cook;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.probe.Quality;

/**
 * How the pan is at one instant. What is not known is empty.
 *
 * @param t seconds of the cook
 * @param temperatureC the pan's temperature, single bad readings taken out; empty when nothing fresh is known
 * @param quality how far the latest reading can be trusted
 * @param seen the last good reading, however old
 * @param stage where the cook is
 * @param ratePerMinC climb in °C per minute
 * @param solids dissolved solids as a fraction by mass, from the boiling point; only while boiling
 * @param forecast when it will set
 * @param wentIn what went in, while the pan is on its way back to the boil
 * @param wasClose whether it was ever close enough to setting for set tests
 */
public record CookStatus(
        double t,
        OptionalDouble temperatureC,
        Quality quality,
        Optional<Seen> seen,
        Stage stage,
        OptionalDouble ratePerMinC,
        OptionalDouble solids,
        Optional<Forecast> forecast,
        WentIn wentIn,
        boolean wasClose) {

    /**
     * A good reading and when it was.
     *
     * @param t seconds of the cook
     * @param temperatureC what it said, in °C
     */
    public record Seen(double t, double temperatureC) {}

    /** The same pan when the probe is known to be gone: what was seen is kept, nothing is live. */
    public CookStatus stale() {
        return new CookStatus(
                t,
                OptionalDouble.empty(),
                Quality.SILENT,
                seen,
                stage,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                WentIn.NOTHING,
                wasClose);
    }

    /** Whether the temperature is fresh enough to be shown as live. */
    public boolean fresh() {
        return temperatureC.isPresent();
    }
}
