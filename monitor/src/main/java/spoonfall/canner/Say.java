package spoonfall.canner;

/**
 * What is said of the jars; texts carry the marks of the live channel for temperatures and clocks.
 *
 * @param state one sentence: what is so
 * @param act one sentence: what to do; may be empty
 * @param note a quiet line; may be empty
 */
public record Say(String state, String act, String note) {
    static final Say NOTHING = new Say("", "", "");
}
