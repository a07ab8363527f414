@NullMarked
package spoonfall.probe.scpi;

import org.jspecify.annotations.NullMarked;
