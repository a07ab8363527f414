/** The estimator held against other people's filters, against known physics and against simulated cooks. */
@NullMarked
package spoonfall.estimate;

import org.jspecify.annotations.NullMarked;
