/**
 * Who is let in by HTTP and how: the door before every call, what listens, and the calls that pair devices. Depends on the
 * door, and on {@code book} and {@code plan} for what they let through.
 */
@NullMarked
package spoonfall.web.door;

import org.jspecify.annotations.NullMarked;
