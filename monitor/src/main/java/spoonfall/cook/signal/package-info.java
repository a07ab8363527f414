/**
 * Readings at any pace made into one set of signals a second: level, slope, steps, noise. Depends on {@code
 * series} and the words of {@code cook}.
 */
@NullMarked
package spoonfall.cook.signal;

import org.jspecify.annotations.NullMarked;
