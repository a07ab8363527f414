package spoonfall.kitchen.thermometer;

import java.time.Instant;
import spoonfall.calibration.Point;
import spoonfall.log.CalibrationBook;

/**
 * What makes a thermometer's readings true, and how sure that is.
 *
 * @param offsetC what is added at boiling water, in °C
 * @param at when it was compared
 * @param conditions what the reference rested on, for people
 * @param points how many references it was compared with
 * @param half95C how far a corrected reading near the gel point may be off, in °C, 19 times of 20
 * @param noiseC the share of noise: a standard uncertainty in °C
 * @param driftC the share of a drift while it was compared: a standard uncertainty in °C
 * @param referenceC how far the reference may be off at most, in °C
 * @param classC the limit of the sensor's class in °C, a hundredth of which is added a degree away from a single point
 */
public record Calibrated(
        double offsetC,
        Instant at,
        String conditions,
        int points,
        double half95C,
        double noiseC,
        double driftC,
        double referenceC,
        double classC) {

    static Calibrated of(CalibrationBook.Entry entry, double half95C, double classC) {
        Point hot = entry.correction().points().get(0);
        return new Calibrated(
                entry.correction().offsetC(),
                entry.at(),
                entry.conditions(),
                entry.correction().points().size(),
                half95C,
                hot.noiseC(),
                hot.driftC(),
                hot.reference().limitC(),
                classC);
    }
}
