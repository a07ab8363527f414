/**
 * Who is let in by HTTP and how: the door before every call, what listens, and the calls that pair devices. Depends on the
 * door and on {@code wire}, and asks {@code book} and {@code plan} which calls may be larger or change nothing.
 */
@NullMarked
package spoonfall.web.door;

import org.jspecify.annotations.NullMarked;
