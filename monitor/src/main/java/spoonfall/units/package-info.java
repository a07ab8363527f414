/** Quantities as a cook types them, in SI units with °C for temperatures. Pure; depends on nothing. */
@NullMarked
package spoonfall.units;

import org.jspecify.annotations.NullMarked;
