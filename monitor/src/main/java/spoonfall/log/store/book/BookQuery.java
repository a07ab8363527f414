package spoonfall.log.store.book;

import java.time.Instant;
import java.util.Optional;
import spoonfall.book.Firmness;

/**
 * What is looked for in the batch book. Whatever is empty does not matter.
 *
 * @param text a part of what the cook was called, its kitchen, its fruit, its notes or the words of its outcome
 * @param fruit the fruit, whole
 * @param set how it set, after a day or after a month
 * @param from it began then or later
 * @param before it began before that
 * @param page which page of the list, from 0
 */
public record BookQuery(
        String text, String fruit, Optional<Firmness> set, Optional<Instant> from, Optional<Instant> before, int page) {
    /** So many cooks are on a page of the list. */
    public static final int PAGE_SIZE = 20;

    private static final int LONGEST = 100;
    private static final int LAST_PAGE = 100_000;

    /** Everything. */
    public static final BookQuery ALL = new BookQuery("", "", Optional.empty(), Optional.empty(), Optional.empty(), 0);

    /** Validates lengths and the page. */
    public BookQuery {
        if (text.length() > LONGEST || fruit.length() > LONGEST) {
            throw new IllegalArgumentException("look for at most " + LONGEST + " characters");
        }
        if (page < 0 || page > LAST_PAGE) {
            throw new IllegalArgumentException("a page of the list is a whole number from 0, not " + page);
        }
    }
}
