package spoonfall.estimate.filter;

/** How the heat of a pan goes from one mode of {@link FilterBank} to another as time passes. */
final class Switching {
    /** How often it leaves each of the modes for each of the others, per minute. */
    private static final double[][] LEAVES_PER_MIN = {{0, 0.08, 0.04}, {0.25, 0, 0.04}, {0.2, 0.4, 0}};

    /** Of each mode that holds, how likely each holds after the minutes that passed last. */
    private final double[][] likely = new double[FilterBank.MODES][FilterBank.MODES];

    private final double[][] cameFrom = new double[FilterBank.MODES][FilterBank.MODES];
    private final double[] after = new double[FilterBank.MODES];
    private double passedMinutes = Double.NaN;

    /** Lets time pass: {@code weights}, how likely each mode holds, become what they are afterwards. */
    void pass(double minutes, double[] weights) {
        if (minutes != passedMinutes) { // as they seldom are
            passedMinutes = minutes;
            workOut();
        }
        for (int j = 0; j < FilterBank.MODES; j++) {
            double sum = 0;
            for (int i = 0; i < FilterBank.MODES; i++) {
                cameFrom[j][i] = likely[i][j] * weights[i];
                sum += cameFrom[j][i];
            }
            for (int i = 0; i < FilterBank.MODES; i++) {
                cameFrom[j][i] /= sum;
            }
            after[j] = sum;
        }
        System.arraycopy(after, 0, weights, 0, FilterBank.MODES);
    }

    /** Of a mode that holds now, how likely each held before. */
    double[] cameFrom(int mode) {
        return cameFrom[mode];
    }

    private void workOut() {
        for (int i = 0; i < FilterBank.MODES; i++) {
            double stays = 1;
            for (int j = 0; j < FilterBank.MODES; j++) {
                if (j != i) {
                    likely[i][j] = 1 - Math.exp(-LEAVES_PER_MIN[i][j] * passedMinutes);
                    stays -= likely[i][j];
                }
            }
            likely[i][i] = Math.max(0, stays);
        }
    }
}
