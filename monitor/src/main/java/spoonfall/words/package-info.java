/**
 * What the page and the terminal say: a sentence for the state, one for the act, and what comes next. Pure;
 * depends on the cook and the afternoon.
 */
@NullMarked
package spoonfall.words;

import org.jspecify.annotations.NullMarked;
