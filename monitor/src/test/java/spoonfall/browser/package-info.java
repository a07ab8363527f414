@NullMarked
package spoonfall.browser;

import org.jspecify.annotations.NullMarked;
