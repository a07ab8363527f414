package spoonfall.learn;

/**
 * Something that the record says of a batch.
 *
 * @param id what it is about, such as {@code stopped-short}
 * @param cause whether it explains how the batch set, rather than what to keep in mind
 * @param text one or two sentences for the cook, with marks
 * @param evidence what in the record says so, and where a rule of thumb comes from, with marks
 */
public record Finding(String id, boolean cause, String text, String evidence) {}
