/** The score as text, as JSON and as a page of its own with pictures. Depends on the score alone. */
@NullMarked
package spoonfall.score.report;

import org.jspecify.annotations.NullMarked;
