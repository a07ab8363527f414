/**
 * The calls on a pan: how it stands, alarms, trust, set tests, readings by hand, notes, the afternoon. Depends on {@code
 * wire}, on {@code view}, and on {@code live} for the snapshot that answers many of them.
 */
@NullMarked
package spoonfall.web.pan;

import org.jspecify.annotations.NullMarked;
