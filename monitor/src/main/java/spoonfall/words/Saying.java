package spoonfall.words;

/**
 * What is said now. Marks such as <code>{temp:98.2}</code>, <code>{diff:2.1}</code> and <code>{clock:1230}</code>
 * stand for what is shown in the cook's own units and by the cook's clock.
 *
 * @param state what the pan is doing, one sentence
 * @param act what to do and when, one sentence; may be empty
 * @param note a quiet line below; may be empty
 */
public record Saying(String state, String act, String note) {
    /** A saying without a quiet line. */
    static Saying of(String state, String act) {
        return new Saying(state, act, "");
    }
}
