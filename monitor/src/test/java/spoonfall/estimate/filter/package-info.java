@NullMarked
package spoonfall.estimate.filter;

import org.jspecify.annotations.NullMarked;
