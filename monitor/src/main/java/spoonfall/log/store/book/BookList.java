package spoonfall.log.store.book;

import java.util.List;

/**
 * One page of the batch book's list.
 *
 * @param cooks those on this page, the latest first
 * @param found how many there are on all pages
 * @param fruits every fruit that was named so far, in order
 */
public record BookList(List<BookLine> cooks, int found, List<String> fruits) {
    /** Keeps copies of the lists. */
    public BookList {
        cooks = List.copyOf(cooks);
        fruits = List.copyOf(fruits);
    }
}
