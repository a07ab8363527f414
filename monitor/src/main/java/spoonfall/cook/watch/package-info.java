/**
 * What may go wrong in the pan: standing, cooling, catching, climbing faster than water could leave
 * (docs/decisions/014-stalls.md, 016-probe-and-base.md). Depends on {@code forecast}, {@code stage} and {@code
 * alarm}.
 */
@NullMarked
package spoonfall.cook.watch;

import org.jspecify.annotations.NullMarked;
