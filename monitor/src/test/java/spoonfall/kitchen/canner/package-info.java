@NullMarked
package spoonfall.kitchen.canner;

import org.jspecify.annotations.NullMarked;
