/**
 * What is said of a cook: its settings and stages, its status, events and alarms. The packages below watch the
 * pan; whoever runs a cook needs {@code monitor}. All of it is pure: no clock, no threads, no input or output,
 * so that a replay gives exactly what the live cook gave. Depends on the physics and readings.
 */
@NullMarked
package spoonfall.cook;

import org.jspecify.annotations.NullMarked;
