/** Thermometers from the command line: finding and calibrating them. Depends on {@code option}. */
@NullMarked
package spoonfall.cli.probe;

import org.jspecify.annotations.NullMarked;
