@NullMarked
package spoonfall.door.tls;

import org.jspecify.annotations.NullMarked;
