@NullMarked
package spoonfall.web.live;

import org.jspecify.annotations.NullMarked;
