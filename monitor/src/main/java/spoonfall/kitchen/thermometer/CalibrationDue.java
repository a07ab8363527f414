package spoonfall.kitchen.thermometer;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import spoonfall.cook.WaterBoil;
import spoonfall.log.CalibrationBook;

/** Whether a thermometer ought to be checked, and why. Pure: the time is an argument. Texts carry marks for units. */
final class CalibrationDue {
    /** Half a year; common practice, no source. */
    static final Duration OLD = Duration.ofDays(180);

    private CalibrationDue() {}

    /** The reason by age; empty if it was checked lately. */
    static Optional<String> byAge(Optional<CalibrationBook.Entry> calibration, double doubtC, Instant now) {
        if (calibration.isEmpty()) {
            return Optional.of(String.format(
                    Locale.ROOT, "Never checked in boiling water: it may be off by ±{diff:%.2f}. Check it.", doubtC));
        }
        long days = Duration.between(calibration.get().at(), now).toDays();
        return days > OLD.toDays()
                ? Optional.of("Last checked " + days + " days ago. Check it in boiling water again.")
                : Optional.empty();
    }

    /**
     * The reason by contradiction: boiling water shows something else than it should here.
     *
     * @param measured the water boil by the thermometer
     * @param declared the water boil by what was said of the kitchen
     * @param probeDoubtC how far the thermometer may be off, in °C
     */
    static Optional<String> byContradiction(WaterBoil measured, WaterBoil declared, double probeDoubtC) {
        double apartC = Math.abs(measured.temperatureC() - declared.temperatureC());
        double doubtsC = measured.doubtC() + declared.doubtC() + probeDoubtC;
        if (apartC <= doubtsC) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "Today's boiling water was {temp:%.2f}, and by %s it boils at {temp:%.2f}: {diff:%.2f} apart, more than"
                        + " the {diff:%.2f} that both may be off together. Check the thermometer, and what was said"
                        + " of the kitchen.",
                measured.temperatureC(),
                declared.detail(),
                declared.temperatureC(),
                apartC,
                doubtsC));
    }
}
