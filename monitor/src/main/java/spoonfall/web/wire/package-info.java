/** What every call has in common: which pan it asks for, what was sent with it, how it is answered, and JSON. */
@NullMarked
package spoonfall.web.wire;

import org.jspecify.annotations.NullMarked;
