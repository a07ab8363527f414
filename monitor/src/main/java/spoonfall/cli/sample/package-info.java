/** The cooks that the demo shows: an invented kitchen's batch and its earlier ones. */
@NullMarked
package spoonfall.cli.sample;

import org.jspecify.annotations.NullMarked;
