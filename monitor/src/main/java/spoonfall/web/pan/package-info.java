/**
 * The calls on a pan: alarms, trust, set tests, readings by hand, notes, the afternoon. Depends on {@code live} for the
 * snapshot that answers most of them.
 */
@NullMarked
package spoonfall.web.pan;

import org.jspecify.annotations.NullMarked;
