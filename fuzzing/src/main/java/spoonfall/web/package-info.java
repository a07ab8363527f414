/** What the service must hold, whatever is sent to it. */
@NullMarked
package spoonfall.web;

import org.jspecify.annotations.NullMarked;
