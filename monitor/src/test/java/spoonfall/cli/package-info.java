@NullMarked
package spoonfall.cli;

import org.jspecify.annotations.NullMarked;
