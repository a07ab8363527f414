/** What the record must hold when it is read back, whatever is in its file. */
@NullMarked
package spoonfall.log;

import org.jspecify.annotations.NullMarked;
