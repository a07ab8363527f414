/**
 * HTTP and WebSocket: the page, the state, the live channel and the metrics of a kitchen. Depends on the
 * kitchen and what it shows; what is said on the wire is in docs/live-channel.md.
 */
@NullMarked
package spoonfall.web;

import org.jspecify.annotations.NullMarked;
