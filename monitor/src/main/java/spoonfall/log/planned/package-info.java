/** The plan of a batch as its cook's record keeps it, for whoever reads the record. Depends on foods, plans and the record's JSON. */
@NullMarked
package spoonfall.log.planned;

import org.jspecify.annotations.NullMarked;
