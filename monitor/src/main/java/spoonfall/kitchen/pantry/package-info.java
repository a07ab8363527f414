/**
 * What batches are planned with: foods, the batch notes and what earlier cooks showed of the hob. Depends on
 * {@code kitchen.file}, foods and plans.
 */
@NullMarked
package spoonfall.kitchen.pantry;

import org.jspecify.annotations.NullMarked;
