package spoonfall.words;

/**
 * The test window as it is forecast.
 *
 * @param windowS seconds until it opens, calmed
 * @param when the same in words, such as "in about 9 minutes"
 */
record Expected(double windowS, String when) {}
