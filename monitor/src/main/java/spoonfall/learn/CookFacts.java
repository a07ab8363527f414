package spoonfall.learn;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the record knows of a cook that is over. What is not known is empty.
 *
 * @param base what the rises are measured from
 * @param targetRiseC how far above the water boil it was to be boiled, in °C
 * @param finalRiseC the highest rise that lasted, up to the heat going off, in °C
 * @param boilMinutes how long it boiled with its sugar in
 * @param earlierMinutes how long it had boiled in the cooks that this one goes on with; 0 if it goes on with none
 * @param pastMinutes how long it boiled on after its target
 * @param tests the set tests that were told, in order
 * @param scorched whether the base was called as catching
 * @param stalled whether the climb was called as stopped
 * @param probeHighC by how much the thermometer showed too much at the boil, by its next calibration, in °C; below 0 for too
 *     little
 * @param plan what a plan of the batch knows
 */
public record CookFacts(
        Base base,
        double targetRiseC,
        OptionalDouble finalRiseC,
        OptionalDouble boilMinutes,
        double earlierMinutes,
        OptionalDouble pastMinutes,
        List<Tested> tests,
        boolean scorched,
        boolean stalled,
        OptionalDouble probeHighC,
        Optional<Evidence> plan) {
    /** Keeps a copy of the tests and validates the minutes. */
    public CookFacts {
        tests = List.copyOf(tests);
        if (!(earlierMinutes >= 0) || boilMinutes.orElse(0) < 0 || pastMinutes.orElse(0) < 0) {
            throw new IllegalArgumentException("a batch cannot boil for less than no time");
        }
    }

    /**
     * What rises are measured from.
     *
     * @param from how it is known
     * @param pressurePa the air pressure that goes with it, in pascals
     * @param doubtC how far it may be off, in °C
     * @param detail the same for people, such as "1,240 m above sea level"
     */
    public record Base(From from, double pressurePa, double doubtC, String detail) {}

    /** How the water boil is known. */
    public enum From {
        /** By boiling water and the thermometer that was in the pan: its error is in both, and cancels. */
        MEASURED,
        /** By an elevation or a pressure. */
        GIVEN,
        /** Nobody said anything: sea level. */
        ASSUMED
    }

    /**
     * A set test.
     *
     * @param riseC how far above the water boil the pan was, in °C
     * @param set what it said; empty if nobody told
     */
    public record Tested(OptionalDouble riseC, Optional<Boolean> set) {}

    /** The final rise in °C by a thermometer that is right: its known error is taken out where it does not cancel. */
    public OptionalDouble trueRiseC() {
        return finalRiseC.isEmpty() || probeErrorC() == 0
                ? finalRiseC
                : OptionalDouble.of(finalRiseC.getAsDouble() - probeErrorC());
    }

    /** By how much the thermometer's known error made the rise too large, in °C. */
    double probeErrorC() {
        return base.from() == From.MEASURED ? 0 : probeHighC.orElse(0);
    }

    /** How long it boiled with its sugar in, with the cooks before it, in minutes. */
    OptionalDouble allMinutes() {
        return boilMinutes.isPresent() ? OptionalDouble.of(boilMinutes.getAsDouble() + earlierMinutes) : boilMinutes;
    }
}
