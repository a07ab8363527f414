/**
 * What everybody is told of a pan, and how they hear it: where everything stands, each change, the picture of the climb and what was
 * counted. Depends on {@code plan}, {@code thermometer} and {@code typed}.
 */
@NullMarked
package spoonfall.kitchen.told;

import org.jspecify.annotations.NullMarked;
