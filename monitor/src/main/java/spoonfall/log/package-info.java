/** The record of a cook, and the way of a record into a trace and back. Depends on the cook. */
@NullMarked
package spoonfall.log;

import org.jspecify.annotations.NullMarked;
