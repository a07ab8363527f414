/** What a page is shown of a pan, as the JSON of docs/live-channel.md. Depends on {@code wire}. */
@NullMarked
package spoonfall.web.view;

import org.jspecify.annotations.NullMarked;
