package spoonfall.book;

import java.util.OptionalDouble;

/**
 * The moments of a cook by which it is compared with others, and what it came to.
 *
 * @param sugarS second of the cook at which the sugar went in: the last deep fall before it came near its target, or the beginning
 * @param boilS at which the rolling boil began
 * @param gelS at which it reached the rise that was wanted, to a tenth of a degree
 * @param offS at which it came off the heat
 * @param finalRiseC the highest rise that lasted, up to the heat going off, in °C
 * @param boilMinutes how long it boiled hard
 */
public record CookMarks(
        double sugarS,
        OptionalDouble boilS,
        OptionalDouble gelS,
        OptionalDouble offS,
        OptionalDouble finalRiseC,
        OptionalDouble boilMinutes) {
    /** What lasts for twice that is no splash and no stir. */
    private static final double SETTLED_S = 10;

    /** Thermometers show tenths: what is so near has been reached. */
    private static final double REACHED_C = 0.1;

    private static final double STEP_S = 5;

    /** Readings by hand come every few minutes. */
    private static final double BY_HAND_S = 150;

    /**
     * The marks of a cook.
     *
     * @param boilS when the record says that the rolling boil began
     * @param offS when it says that the pan came off the heat for good
     * @param targetRiseC the rise that was wanted, in °C
     */
    public static CookMarks of(RiseLine line, OptionalDouble boilS, OptionalDouble offS, double targetRiseC) {
        double untilS = offS.orElse(line.lastT());
        OptionalDouble best = OptionalDouble.empty();
        OptionalDouble gelS = OptionalDouble.empty();
        for (double t = 0; t <= untilS; t += STEP_S) {
            OptionalDouble level = level(line, t, untilS);
            if (level.isPresent() && level.getAsDouble() > best.orElse(Double.NEGATIVE_INFINITY)) {
                best = level;
                if (gelS.isEmpty() && level.getAsDouble() >= targetRiseC - REACHED_C) {
                    gelS = OptionalDouble.of(t);
                }
            }
        }
        OptionalDouble boilMinutes =
                boilS.isPresent() ? OptionalDouble.of(Math.max(0, untilS - boilS.getAsDouble()) / 60) : boilS;
        return new CookMarks(SugarFall.lastS(line, untilS, targetRiseC), boilS, gelS, offS, best, boilMinutes);
    }

    private static OptionalDouble level(RiseLine line, double t, double untilS) {
        OptionalDouble near = line.middle(t - SETTLED_S, Math.min(t + SETTLED_S, untilS));
        return near.isPresent() ? near : line.middle(t - BY_HAND_S, Math.min(t + BY_HAND_S, untilS));
    }
}
