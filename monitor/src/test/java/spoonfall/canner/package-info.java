@NullMarked
package spoonfall.canner;

import org.jspecify.annotations.NullMarked;
