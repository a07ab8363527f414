@NullMarked
package spoonfall.cook.monitor;

import org.jspecify.annotations.NullMarked;
