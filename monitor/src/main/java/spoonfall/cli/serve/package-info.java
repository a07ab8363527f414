/**
 * The commands that watch a pan: serve, demo and replay, and how the service is wired. Depends on {@code option}, {@code
 * door}, {@code sample} and, for the lines of a replay, {@code log}.
 */
@NullMarked
package spoonfall.cli.serve;

import org.jspecify.annotations.NullMarked;
