@NullMarked
package spoonfall.probe.hand;

import org.jspecify.annotations.NullMarked;
