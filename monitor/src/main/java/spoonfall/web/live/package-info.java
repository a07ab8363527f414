/**
 * The live channel: who follows which pan, and what is told to whom, in order. Depends on {@code wire}, {@code view} and
 * {@code jars}.
 */
@NullMarked
package spoonfall.web.live;

import org.jspecify.annotations.NullMarked;
