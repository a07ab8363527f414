@NullMarked
package spoonfall.estimate.burner;

import org.jspecify.annotations.NullMarked;
