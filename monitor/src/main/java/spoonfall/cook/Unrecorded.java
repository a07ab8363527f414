package spoonfall.cook;

/**
 * Why a cook is not being written down.
 *
 * @param why what is so, as the second half of a sentence, such as "the disk is full"
 * @param act one sentence: what to do
 */
public record Unrecorded(String why, String act) {}
