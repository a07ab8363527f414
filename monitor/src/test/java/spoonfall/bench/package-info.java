@NullMarked
package spoonfall.bench;

import org.jspecify.annotations.NullMarked;
