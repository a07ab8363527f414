package spoonfall.alarm;

/**
 * How long a condition must last before it counts (ISA-18.2 on-delay and off-delay).
 *
 * @param onS seconds it must be present without a break before the alarm is raised
 * @param offS seconds it must be absent without a break before the alarm is cleared
 */
public record Delays(double onS, double offS) {
    /** Validates that neither is negative. */
    public Delays {
        if (!(onS >= 0) || !(offS >= 0)) {
            throw new IllegalArgumentException("delays must not be negative: on " + onS + " s, off " + offS + " s");
        }
    }
}
