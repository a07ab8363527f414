/** What the batches teach, from the command line. Depends on {@code option}. */
@NullMarked
package spoonfall.cli.learn;

import org.jspecify.annotations.NullMarked;
