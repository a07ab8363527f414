package spoonfall.cook;

import java.util.OptionalDouble;

/**
 * What is known of a probe before it says anything.
 *
 * @param name as the kitchen calls it
 * @param checkedToC how far it may be off after its calibration, in °C, 19 times of 20; empty if it was never calibrated
 * @param pace at what pace it speaks
 */
public record ProbeTrust(String name, OptionalDouble checkedToC, Pace pace) {
    /** A probe that speaks by itself, calibrated or not. */
    public ProbeTrust(String name, OptionalDouble checkedToC) {
        this(name, checkedToC, Pace.BY_ITSELF);
    }

    /** A thermometer that somebody reads by hand. */
    public static ProbeTrust byHand(String name) {
        return new ProbeTrust(name, OptionalDouble.empty(), Pace.BY_HAND);
    }

    /** A probe that was never calibrated. */
    public static ProbeTrust unchecked(String name) {
        return new ProbeTrust(name, OptionalDouble.empty(), Pace.BY_ITSELF);
    }
}
