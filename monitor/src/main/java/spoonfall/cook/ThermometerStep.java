package spoonfall.cook;

/** The smallest step that a thermometer has shown. */
final class ThermometerStep {
    /** What a conversion of units leaves behind is no step. */
    private static final double LEAST_C = 0.004;

    private double lastC = Double.NaN;
    private double stepC = Signals.NOT_SHOWN_C;

    /** Takes a good reading. */
    void accept(double temperatureC) {
        double changeC = Math.abs(temperatureC - lastC);
        lastC = temperatureC;
        if (changeC > LEAST_C) {
            stepC = Math.min(stepC, changeC);
        }
    }

    /** In °C; {@link Signals#NOT_SHOWN_C} while it has shown none. */
    double c() {
        return stepC;
    }
}
