@NullMarked
package spoonfall.estimate.standing;

import org.jspecify.annotations.NullMarked;
