/**
 * What a cook writes by hand: the kitchen file, notes of batches and plans, all TOML; read with complaints that name the line, and
 * notes written back.
 */
@NullMarked
package spoonfall.kitchen.file;

import org.jspecify.annotations.NullMarked;
