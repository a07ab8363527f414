package spoonfall.cook.signal;

/** The smallest step that a thermometer has shown. */
public final class ThermometerStep {
    /** What a conversion of units leaves behind is no step. */
    private static final double LEAST_C = 0.004;

    /** What differs by no more than that is the same reading. */
    private static final double SAME_C = 1e-6;

    private double lastC = Double.NaN;
    private double stepC = Signals.NOT_SHOWN_C;

    /** Whether a reading that differs from the one before by {@code byC} has moved. */
    public static boolean moves(double byC) {
        return Math.abs(byC) > SAME_C;
    }

    /** Takes a good reading. */
    public void accept(double temperatureC) {
        double changeC = Math.abs(temperatureC - lastC);
        lastC = temperatureC;
        if (changeC > LEAST_C) {
            stepC = Math.min(stepC, changeC);
        }
    }

    /** In °C; {@link Signals#NOT_SHOWN_C} while it has shown none. */
    public double c() {
        return stepC;
    }
}
