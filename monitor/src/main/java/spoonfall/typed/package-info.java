/** What somebody typed of a thermometer, and whether it can be so. Pure; depends on the units of probes only. */
@NullMarked
package spoonfall.typed;

import org.jspecify.annotations.NullMarked;
