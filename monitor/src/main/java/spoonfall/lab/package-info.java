/**
 * The lab: a physical pan that makes labelled traces. Its physics is its own, on purpose: a monitor that is
 * scored on its own curve proves nothing. Depends on traces alone; must not depend on the physics or the cook.
 */
@NullMarked
package spoonfall.lab;

import org.jspecify.annotations.NullMarked;
