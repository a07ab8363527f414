/**
 * What goes into the pan: foods with what they are made of, each by its source, and amounts as cooks measure them. Pure: no
 * clock, no threads, no input or output. Depends on units only.
 */
@NullMarked
package spoonfall.food;

import org.jspecify.annotations.NullMarked;
