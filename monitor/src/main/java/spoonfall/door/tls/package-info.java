/** The key and certificate by which pages from the network are served: given as PEM, or made here. Loaded only when they are used. */
@NullMarked
package spoonfall.door.tls;

import org.jspecify.annotations.NullMarked;
