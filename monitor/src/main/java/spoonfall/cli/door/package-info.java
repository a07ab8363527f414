/** Devices from the command line: pairing, listing, shutting out, and the options of the network. Depends on {@code option}. */
@NullMarked
package spoonfall.cli.door;

import org.jspecify.annotations.NullMarked;
