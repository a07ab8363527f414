package spoonfall.kitchen.typed;

import spoonfall.typed.Question;

/** What came of a reading that somebody typed. */
public sealed interface HandAnswer {
    /**
     * It is a reading now, or was one already.
     *
     * @param entry the reading
     */
    record Taken(HandEntry entry) implements HandAnswer {}

    /**
     * It can hardly be so; nothing was taken.
     *
     * @param question what to ask whoever typed it
     */
    record Asked(Question question) implements HandAnswer {}

    /**
     * It was taken back before, so that it is not taken again.
     *
     * @param id its id
     */
    record TakenBack(String id) implements HandAnswer {}
}
