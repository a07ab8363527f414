package spoonfall.words;

/**
 * The moments that a forecast names, calmed, in seconds of the cook.
 *
 * @param windowT when set tests are worth doing
 * @param gelT when it sets, middle estimate
 * @param lowT early end of the 90 % interval
 * @param highT late end of it
 */
record Expected(double windowT, double gelT, double lowT, double highT) {}
