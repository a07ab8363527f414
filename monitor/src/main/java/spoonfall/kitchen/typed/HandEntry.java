package spoonfall.kitchen.typed;

import spoonfall.typed.Typed;

/**
 * A reading that somebody typed.
 *
 * @param id tells it from others; whoever types chooses it
 * @param typed what was typed
 * @param t seconds of the cook
 * @param atNanos the same on the readings' scale
 */
public record HandEntry(String id, Typed typed, double t, long atNanos) {}
