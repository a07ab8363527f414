package spoonfall.estimate.filter;

/**
 * When a rise will be reached, in seconds from the moment it was asked for.
 *
 * @param s middle estimate; 0 when it is reached
 * @param lowS early end of the 90 % interval
 * @param highS late end of it
 */
public record Arrival(double s, double lowS, double highS) {}
