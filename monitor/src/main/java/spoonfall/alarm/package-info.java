/**
 * The life cycle of an alarm after ISA-18.2 / IEC 62682: raised, acknowledged, returned, cleared, shelved and
 * suppressed by design, with delays and a deadband. Pure; depends on nothing.
 */
@NullMarked
package spoonfall.alarm;

import org.jspecify.annotations.NullMarked;
