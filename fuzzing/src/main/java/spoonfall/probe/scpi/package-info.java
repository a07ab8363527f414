/** What the answers of SCPI instruments must hold, whatever comes. */
@NullMarked
package spoonfall.probe.scpi;

import org.jspecify.annotations.NullMarked;
