package spoonfall.series;

/**
 * Learns how alike neighbouring points are beside the filter's way: bubbles, burners and stirs last, and so does the error of
 * a mean of readings. Of a first-order process with correlation ρ a mean is known by (1 + ρ) / (1 − ρ) less than of as many
 * independent points (any textbook of time series).
 */
public final class Colour {
    private static final double LEARNS = 0.0167;
    private static final double MOST = 0.8;

    private double last;
    private double squares;
    private double products;

    /** Takes note of how far a point was off. */
    public void observe(double offC) {
        squares += LEARNS * (offC * offC - squares);
        products += LEARNS * (offC * last - products);
        last = offC;
    }

    /** How many times larger the variance of a mean is than that of independent points; at least 1. */
    public double times() {
        double alike = squares > 0 ? Math.max(0, Math.min(MOST, products / squares)) : 0;
        return (1 + alike) / (1 - alike);
    }
}
