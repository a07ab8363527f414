/**
 * Recorded cooks: CSV (RFC 4180) described by CSV on the Web metadata (W3C CSVW), and a probe that plays
 * one. A replay is just another probe.
 */
@NullMarked
package spoonfall.probe.trace;

import org.jspecify.annotations.NullMarked;
