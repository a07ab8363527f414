/**
 * The running kitchen: one thread that owns the monitor, takes readings from the probe and tells whoever
 * listens. Depends on the cook, its words, its record and on probes; knows nothing of the web.
 */
@NullMarked
package spoonfall.kitchen;

import org.jspecify.annotations.NullMarked;
