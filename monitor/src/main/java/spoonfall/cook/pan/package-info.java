/**
 * All watches of one pan run together: how high it is taken to be, and which alarms mean something just now
 * (docs/decisions/015-calls.md). Depends on those beside it but {@code monitor}.
 */
@NullMarked
package spoonfall.cook.pan;

import org.jspecify.annotations.NullMarked;
