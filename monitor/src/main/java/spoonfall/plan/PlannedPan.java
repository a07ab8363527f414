package spoonfall.plan;

/**
 * What a plan tells the forecast of a pan, before a thermometer was in it. Only the syrup counts, water and what it dissolves: fibre is in
 * the pan, but the boiling point does not see it.
 *
 * @param totalKg the syrup, before any of its water leaves
 * @param solidsKg solids dissolved in it
 * @param waterKgPerMin water that leaves in a minute of boiling
 * @param relativeDoubt how far that rate may be off, as a share; one standard deviation
 */
public record PlannedPan(double totalKg, double solidsKg, double waterKgPerMin, double relativeDoubt) {
    /** Refuses what is no pan. */
    public PlannedPan {
        if (!(solidsKg > 0 && totalKg > solidsKg && totalKg < 1000)) {
            throw new IllegalArgumentException(
                    "a pan holds solids and more, not " + solidsKg + " of " + totalKg + " kg");
        }
        if (!(waterKgPerMin > 0 && waterKgPerMin < 10 && relativeDoubt >= 0 && relativeDoubt <= 2)) {
            throw new IllegalArgumentException(
                    "water leaves at above 0 and up to 10 kg a minute, not " + waterKgPerMin + " ± " + relativeDoubt);
        }
    }
}
