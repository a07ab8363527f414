@NullMarked
package spoonfall.estimate.warming;

import org.jspecify.annotations.NullMarked;
