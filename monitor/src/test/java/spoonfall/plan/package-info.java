@NullMarked
package spoonfall.plan;

import org.jspecify.annotations.NullMarked;
