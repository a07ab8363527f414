package spoonfall.cli.option;

import java.util.function.Function;
import java.util.function.Supplier;

/** What was typed, read. */
public final class Understood {
    private Understood() {}

    /** What {@code reading} makes of a text that was typed, as {@link #value(Supplier)}. */
    public static <T> T value(String typed, Function<String, T> reading) {
        return value(() -> reading.apply(typed));
    }

    /** What {@code reading} makes of something typed; what it refuses as an illegal argument is a {@link MisuseException}. */
    public static <T> T value(Supplier<T> reading) {
        try {
            return reading.get();
        } catch (IllegalArgumentException e) {
            throw new MisuseException(String.valueOf(e.getMessage()), e);
        }
    }
}
