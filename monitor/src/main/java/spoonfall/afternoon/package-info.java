/**
 * The steps of a batch from soft peel to cooled jars: what is done, what is due next and when. Follows what the probe sees
 * and what somebody taps, and never waits for either. Pure; depends on the cook.
 */
@NullMarked
package spoonfall.afternoon;

import org.jspecify.annotations.NullMarked;
