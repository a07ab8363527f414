@NullMarked
package spoonfall.alarm;

import org.jspecify.annotations.NullMarked;
