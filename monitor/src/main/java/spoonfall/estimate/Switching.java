package spoonfall.estimate;

/** How the heat of a pan goes from one mode of {@link FilterBank} to another as time passes. */
final class Switching {
    private static final double[][] LEAVES_PER_MIN = {{0, 0.08, 0.04}, {0.25, 0, 0.04}, {0.2, 0.4, 0}};

    private final double[][] likely = new double[FilterBank.MODES][FilterBank.MODES];
    private double passedMinutes = Double.NaN;

    /** Of each mode that held, how likely each holds after {@code minutes}: worked out when other minutes pass than the last time. */
    double[][] after(double minutes) {
        if (minutes != passedMinutes) {
            passedMinutes = minutes;
            pass(minutes);
        }
        return likely;
    }

    private void pass(double minutes) {
        for (int i = 0; i < FilterBank.MODES; i++) {
            double stays = 1;
            for (int j = 0; j < FilterBank.MODES; j++) {
                if (j != i) {
                    likely[i][j] = 1 - Math.exp(-LEAVES_PER_MIN[i][j] * minutes);
                    stays -= likely[i][j];
                }
            }
            likely[i][i] = Math.max(0, stays);
        }
    }
}
