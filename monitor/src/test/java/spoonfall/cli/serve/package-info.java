@NullMarked
package spoonfall.cli.serve;

import org.jspecify.annotations.NullMarked;
