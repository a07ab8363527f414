/**
 * The running kitchen: the thread that owns each pan, its probes, and the pans and the canner by name. Puts together the
 * packages below; depends on the cook, its words, its record and on probes; knows nothing of the web.
 */
@NullMarked
package spoonfall.kitchen;

import org.jspecify.annotations.NullMarked;
