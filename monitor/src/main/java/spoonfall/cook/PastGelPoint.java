package spoonfall.cook;

/** How far past the gel point a preserve may go before it is spoilt. */
public final class PastGelPoint {
    /** Margin in °C above the gel point; 1 °C is about 3 % solids. Common practice, no source. */
    public static final double MARGIN_C = 1;

    private PastGelPoint() {}
}
