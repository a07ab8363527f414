/**
 * The set tests of one cook: when one is called for, its course, and what it teaches of where this preserve
 * sets. Depends on {@code alarm}.
 */
@NullMarked
package spoonfall.cook.settest;

import org.jspecify.annotations.NullMarked;
