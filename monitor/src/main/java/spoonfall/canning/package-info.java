/**
 * How long filled jars are processed, by the published tables, and what they do not cover. Pure: no clock, no threads,
 * no input or output. Depends on units only.
 */
@NullMarked
package spoonfall.canning;

import org.jspecify.annotations.NullMarked;
