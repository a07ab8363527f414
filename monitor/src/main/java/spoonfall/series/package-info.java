/**
 * What a row of readings says by itself, whatever was measured: ranks and medians, robust lines, peaks, how
 * alike neighbours are. Pure; depends on nothing.
 */
@NullMarked
package spoonfall.series;

import org.jspecify.annotations.NullMarked;
