package spoonfall.log;

import java.util.Optional;
import java.util.function.Function;

/**
 * What the record says of something that an earlier run may have left: what that is, that there is nothing, or that it does not know
 * yet. Whoever is told the last asks again; nothing may be taken for gone by it.
 *
 * @param known whether the record could say
 * @param found what was left; empty if nothing was, or if that is not known
 */
public record Recalled<T>(boolean known, Optional<T> found) {
    /** Refuses to have found what is not known. */
    public Recalled {
        if (!known && found.isPresent()) {
            throw new IllegalArgumentException("what was found is known: " + found.get());
        }
    }

    /** That was left, or nothing. */
    public static <T> Recalled<T> of(Optional<T> found) {
        return new Recalled<>(true, found);
    }

    /** Nothing was left. */
    public static <T> Recalled<T> nothing() {
        return of(Optional.empty());
    }

    /** The record does not know yet. */
    public static <T> Recalled<T> notKnown() {
        return new Recalled<>(false, Optional.empty());
    }

    /** What somebody makes of what was left, if anything. */
    public <R> Recalled<R> flatMap(Function<T, Optional<R>> made) {
        return new Recalled<>(known, found.flatMap(made));
    }
}
