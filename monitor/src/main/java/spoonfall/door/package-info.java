/**
 * Who may come in from the network: devices and their tokens, pairing codes, limits on guessing and asking. Knows neither HTTP nor
 * kitchens; time is an argument.
 */
@NullMarked
package spoonfall.door;

import org.jspecify.annotations.NullMarked;
