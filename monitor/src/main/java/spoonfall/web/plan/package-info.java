/** The calls on the plan of a batch, and what a page is shown of it. Depends on {@code wire}. */
@NullMarked
package spoonfall.web.plan;

import org.jspecify.annotations.NullMarked;
