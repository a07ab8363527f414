@NullMarked
package spoonfall.cook.alarm;

import org.jspecify.annotations.NullMarked;
