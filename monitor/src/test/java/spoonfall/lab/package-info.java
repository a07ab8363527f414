@NullMarked
package spoonfall.lab;

import org.jspecify.annotations.NullMarked;
