/** What the files that a cook writes by hand must hold, whatever comes. */
@NullMarked
package spoonfall.kitchen.file;

import org.jspecify.annotations.NullMarked;
