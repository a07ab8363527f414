@NullMarked
package spoonfall.log.store.file;

import org.jspecify.annotations.NullMarked;
