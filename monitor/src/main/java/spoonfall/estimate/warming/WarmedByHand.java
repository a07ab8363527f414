package spoonfall.estimate.warming;

/**
 * Where a warming pan stands between readings that somebody types: they stay the same for a minute or two, and only the pace of
 * the lines through them goes on.
 */
public final class WarmedByHand {
    private static final double LONGEST_GAP_S = 60;

    /** Further off than that it is another pan, or something cold went in. */
    private static final double FAR_C = 12;

    private double lastT = Double.NEGATIVE_INFINITY;
    private double warmedC;

    /** The rise in °C at {@code t}, where {@code readC} was read last and the pan warms by {@code perMinC} a minute. */
    public double riseC(double t, double readC, double perMinC) {
        double onC = warmedC + perMinC * (t - lastT) / 60;
        warmedC = t - lastT <= LONGEST_GAP_S && Math.abs(onC - readC) < FAR_C ? onC : readC;
        lastT = t;
        return warmedC;
    }
}
