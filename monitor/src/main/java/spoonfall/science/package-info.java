/**
 * Published values beside the physics' own: the figures of docs/science.md. Pure; depends on physics alone.
 * Nothing that runs at the pan depends on it.
 */
@NullMarked
package spoonfall.science;

import org.jspecify.annotations.NullMarked;
