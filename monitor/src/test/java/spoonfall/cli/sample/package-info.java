@NullMarked
package spoonfall.cli.sample;

import org.jspecify.annotations.NullMarked;
