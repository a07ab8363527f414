/** The calls on the jars and the canner, and what a page is shown of them. Depends on {@code wire}. */
@NullMarked
package spoonfall.web.jars;

import org.jspecify.annotations.NullMarked;
