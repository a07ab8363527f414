/**
 * The board of all alarms of a cook, and what each of them says. Depends on {@code signal} and the alarm life
 * cycle.
 */
@NullMarked
package spoonfall.cook.alarm;

import org.jspecify.annotations.NullMarked;
