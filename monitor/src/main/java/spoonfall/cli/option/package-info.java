/** What commands share: options, where they print, how they complain and log. */
@NullMarked
package spoonfall.cli.option;

import org.jspecify.annotations.NullMarked;
