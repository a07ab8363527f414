package spoonfall.lab;

import java.util.Locale;

/**
 * A pan, its burner, its kitchen and its thermometer.
 *
 * @param massKg all that is in the pan at the start
 * @param solids fraction of it that is dissolved sugar
 * @param startC temperature at the start, in °C
 * @param netPowerKw heat that goes into boiling, losses taken off
 * @param elevationM metres above sea level
 * @param riseC how far above the water boil it sets
 * @param periodS seconds between two readings
 * @param lagS time constant of the thermometer
 * @param noiseC standard deviation of the reading in a boiling pan
 * @param resolutionC step in which it shows temperatures
 */
public record PanSettings(
        double massKg,
        double solids,
        double startC,
        double netPowerKw,
        double elevationM,
        double riseC,
        double periodS,
        double lagS,
        double noiseC,
        double resolutionC) {

    /** Validates that such a pan could be. */
    public PanSettings {
        range("mass in kg", massKg, 0.2, 30);
        range("solids", solids, 0.05, 0.6);
        range("start in °C", startC, 5, 90);
        range("power in kW", netPowerKw, 0.2, 10);
        range("elevation in m", elevationM, -430, 5500);
        range("rise in °C", riseC, 1, 15);
        range("period in s", periodS, 0.1, 60);
        range("lag in s", lagS, 0.1, 60);
        range("noise in °C", noiseC, 0, 2);
        range("resolution in °C", resolutionC, 0.001, 1);
    }

    /** Two kilograms of marmalade on a home hob, at 1,240 m, with a 0.1 °C thermometer read once a second. */
    public static PanSettings defaults() {
        return new PanSettings(2.1, 0.40, 60, 1.35, 1240, 8 / 1.8, 1, 5, 0.08, 0.1);
    }

    private static void range(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s must be %s to %s, not %s", what, least, most, value));
        }
    }
}
