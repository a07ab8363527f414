@NullMarked
package spoonfall.web;

import org.jspecify.annotations.NullMarked;
