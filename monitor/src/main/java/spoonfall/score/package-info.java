/**
 * Scores the monitor on labelled traces, through what it tells everybody: statuses and alarms. Knows nothing of
 * how the traces came about. What each figure means: docs/evaluation.md.
 */
@NullMarked
package spoonfall.score;

import org.jspecify.annotations.NullMarked;
