package spoonfall.cook;

/**
 * When the gel point will be reached, counted in seconds from the status that carries it.
 *
 * @param windowS until the test window opens; 0 when it is open
 * @param etaS until the gel point, middle estimate
 * @param lowS early end of the 90 % interval of {@code etaS}
 * @param highS late end of it
 * @param perMinute how fast the ratio of all mass to solids falls, per minute; positive
 */
public record Forecast(double windowS, double etaS, double lowS, double highS, double perMinute) {
    /** Validates that the interval holds the middle. */
    public Forecast {
        if (!(lowS <= etaS && etaS <= highS) || lowS < 0) {
            throw new IllegalArgumentException("forecast out of order: " + lowS + ", " + etaS + ", " + highS);
        }
    }
}
