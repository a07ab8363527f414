package spoonfall.cook;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.settest.TestAnswer;

/**
 * One set test. What is not known is empty.
 *
 * @param id names it
 * @param beganT seconds of the cook at which the pan came off the heat
 * @param plateS how long the plate stands, in seconds
 * @param temperatureC the pan's temperature when it came off the heat, in °C
 * @param riseC how far that is above the water boil, in °C
 * @param solids dissolved solids as a fraction by mass, from the boiling point
 * @param seen what was seen; empty while the test goes on
 */
public record SetTest(
        String id,
        double beganT,
        double plateS,
        OptionalDouble temperatureC,
        OptionalDouble riseC,
        OptionalDouble solids,
        Optional<Seen> seen) {

    /**
     * What was seen.
     *
     * @param t seconds of the cook at which it was said
     * @param answer what it was
     */
    public record Seen(double t, TestAnswer answer) {}

    /** Seconds of the cook at which the plate has stood long enough. */
    public double plateDueT() {
        return beganT + plateS;
    }

    /** Whether it found the preserve set. */
    public boolean set() {
        return seen.filter(it -> it.answer().set()).isPresent();
    }

    /** The same test, of which {@code other} was seen; nothing yet where that is empty. */
    public SetTest with(Optional<Seen> other) {
        return new SetTest(id, beganT, plateS, temperatureC, riseC, solids, other);
    }
}
