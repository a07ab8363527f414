package spoonfall.canner;

/**
 * Something that a tap can say now.
 *
 * @param tap what
 * @param label what stands on the button
 * @param main whether it is the one big act
 */
public record CannerOffer(CannerTap tap, String label, boolean main) {}
