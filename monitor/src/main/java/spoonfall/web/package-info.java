/**
 * HTTP and WebSocket: the service, its page and its metrics. Depends on the kitchen and what it shows; what is said on the
 * wire is in docs/live-channel.md, and made in the packages below.
 */
@NullMarked
package spoonfall.web;

import org.jspecify.annotations.NullMarked;
