package spoonfall.book;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What somebody says of a batch now; whatever is empty stays as it was said before.
 *
 * @param after how long after the cook
 * @param set how it had set
 * @param taste all of how it tasted
 * @param words what else there is to say
 * @param fruit what was made
 * @param jars how many were filled
 */
public record OutcomeWords(
        After after,
        Optional<Firmness> set,
        Optional<Set<Taste>> taste,
        Optional<String> words,
        Optional<String> fruit,
        OptionalInt jars) {

    /**
     * What was typed, each by its name.
     *
     * @throws IllegalArgumentException with one line that says what cannot be, and what can
     */
    public static OutcomeWords of(
            String after,
            Optional<String> set,
            Optional<List<String>> taste,
            Optional<String> words,
            Optional<String> fruit,
            OptionalInt jars) {
        Optional<Set<Taste>> tastes = taste.map(names -> {
            Set<Taste> all = EnumSet.noneOf(Taste.class);
            names.forEach(name -> all.add(Taste.named(name)));
            return all;
        });
        return new OutcomeWords(After.named(after), set.map(Firmness::named), tastes, words, fruit, jars);
    }

    /** How the batch came out by all that was said. */
    public Outcome over(Outcome before) {
        return new Outcome(after, set.or(before::set), taste.orElse(before.taste()), words.orElse(before.words()));
    }

    /** What was made by all that was said. */
    public Made over(Made before) {
        return new Made(fruit.orElse(before.fruit()), jars.isPresent() ? jars : before.jars());
    }
}
