/**
 * What the record remembers of batches that are over, as facts to learn from: where each stopped, how long it boiled, what its
 * set tests said, what its thermometer was found to be. Reads the record and the calibrations; depends on what is learnt.
 */
@NullMarked
package spoonfall.log.memory;

import org.jspecify.annotations.NullMarked;
