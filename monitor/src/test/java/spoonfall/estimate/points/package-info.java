@NullMarked
package spoonfall.estimate.points;

import org.jspecify.annotations.NullMarked;
