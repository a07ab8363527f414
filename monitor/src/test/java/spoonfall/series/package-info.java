@NullMarked
package spoonfall.series;

import org.jspecify.annotations.NullMarked;
