package spoonfall.estimate.warming;

import java.util.Locale;

/**
 * What a plan of the batch says of the pan before it boils. It sharpens the first forecasts; what is read soon counts for
 * more, and a plan that the first readings contradict is left aside.
 *
 * @param totalKg all that is in the pan at the boil, in kg
 * @param solidsKg the dissolved solids in it, in kg
 * @param waterKgPerMin how much water the burner drives off, in kg per minute
 * @param relativeDoubt standard deviation of each of the three as a part of it, above 0 and at most 1
 */
public record PanPrior(double totalKg, double solidsKg, double waterKgPerMin, double relativeDoubt) {
    private static final double MOST_KG = 1000;

    /**
     * People weigh well, but nobody knows how wet the fruit was and how hot the burner is: a plan is believed so far and no
     * further, whatever it says of itself. With less, one that is wrong by a fifth still tells half way up.
     */
    private static final double LEAST_DOUBT = 0.2;

    /** Rejects what is no pan. */
    public PanPrior {
        if (!(totalKg > 0 && totalKg <= MOST_KG)) {
            throw new IllegalArgumentException("the pan must hold between 0 and 1,000 kg, not " + totalKg);
        }
        if (!(solidsKg > 0 && solidsKg < totalKg)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "solids must be above 0 and less than all %s kg, not %s", totalKg, solidsKg));
        }
        if (!(waterKgPerMin > 0 && waterKgPerMin < totalKg)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a minute must drive off some water and less than all %s kg, not %s",
                    totalKg,
                    waterKgPerMin));
        }
        if (!(relativeDoubt > 0 && relativeDoubt <= 1)) {
            throw new IllegalArgumentException("the doubt must be above 0 and at most 1, not " + relativeDoubt);
        }
    }

    /** All mass / solids mass at the boil. */
    double u() {
        return totalKg / solidsKg;
    }

    /** Its standard deviation. */
    double uDoubt() {
        return Math.sqrt(2) * doubt() * u();
    }

    /** How fast u should fall, per minute. */
    double v() {
        return waterKgPerMin / solidsKg;
    }

    /** Its standard deviation. */
    double vDoubt() {
        return Math.sqrt(2) * doubt() * v();
    }

    private double doubt() {
        return Math.max(LEAST_DOUBT, relativeDoubt);
    }
}
