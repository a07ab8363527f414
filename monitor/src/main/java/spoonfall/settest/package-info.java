/**
 * Set tests and what they teach: what was seen on a spoon or a plate moves the belief of how far above boiling water this
 * preserve sets. Pure; depends on nothing of ours.
 */
@NullMarked
package spoonfall.settest;

import org.jspecify.annotations.NullMarked;
