/**
 * The afternoon of a pan, with the diary that outlasts a kill. Depends on {@code cook}, {@code plan} and {@code told}.
 */
@NullMarked
package spoonfall.kitchen.afternoon;

import org.jspecify.annotations.NullMarked;
