/** What commands share: options, the memory of the data folder, where they print, how they complain and log. */
@NullMarked
package spoonfall.cli.option;

import org.jspecify.annotations.NullMarked;
