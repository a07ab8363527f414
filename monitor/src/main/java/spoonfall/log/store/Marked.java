package spoonfall.log.store;

/**
 * How far a cook was watched, and when that was.
 *
 * @param aliveMillis milliseconds of the cook
 * @param at by our own clocks
 */
record Marked(long aliveMillis, Moment at) {}
