/**
 * Comparing a thermometer with boiling water or ice: waiting for a plateau, the correction and its uncertainty.
 * Pure. Depends on nothing of ours.
 */
@NullMarked
package spoonfall.calibration;

import org.jspecify.annotations.NullMarked;
