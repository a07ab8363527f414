package spoonfall.plan;

/**
 * Something that published guidance says of a batch.
 *
 * @param id what it is about, such as {@code batch-too-big}
 * @param warns whether it says that something may go wrong, rather than what to keep in mind
 * @param text one or two sentences for the cook
 * @param source who says so
 */
public record Advice(String id, boolean warns, String text, String source) {
    static Advice warning(String id, String text, String source) {
        return new Advice(id, true, text, source);
    }

    static Advice note(String id, String text, String source) {
        return new Advice(id, false, text, source);
    }
}
