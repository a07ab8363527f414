package spoonfall.cook;

import java.util.OptionalDouble;

/**
 * What is known of a probe before it says anything.
 *
 * @param name as the kitchen calls it
 * @param checkedToC how far it may be off after its calibration, in °C, 19 times of 20; empty if it was never calibrated
 */
public record ProbeTrust(String name, OptionalDouble checkedToC) {
    /** A probe that was never calibrated. */
    public static ProbeTrust unchecked(String name) {
        return new ProbeTrust(name, OptionalDouble.empty());
    }
}
