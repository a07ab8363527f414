package spoonfall.paper;

/**
 * What goes into a report besides the climb and what happened; nothing of it does unless somebody chose it.
 *
 * @param notes the notes, and the words of the outcome
 * @param photos the photos
 * @param kitchen the kitchen's name
 * @param ingredients what went in, by the plan of the batch
 */
public record ReportChoice(boolean notes, boolean photos, boolean kitchen, boolean ingredients) {}
