package spoonfall.kitchen.pantry;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import spoonfall.food.FoodCsv;
import spoonfall.food.Foods;

/** Where the foods come from: the table that travels with the program, and a file of the cook's own. */
public final class FoodBook {
    private static final String TABLE = "/spoonfall/food/foods.csv";
    private static final long LARGEST_BYTES = 256 * 1024;

    private FoodBook() {}

    /** The table that travels with the program. */
    public static Foods usual() {
        try (InputStream table = FoodBook.class.getResourceAsStream(TABLE)) {
            if (table == null) {
                throw new IllegalStateException("the program lacks its table of foods; build it again");
            }
            return new Foods(FoodCsv.read(new String(table.readAllBytes(), StandardCharsets.UTF_8), "foods.csv"));
        } catch (IOException e) {
            throw new UncheckedIOException("the table of foods cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * The usual foods and those of a file that was named.
     *
     * @throws IllegalArgumentException with one line naming file and line, and the way out
     */
    public static Foods with(Path file) {
        return own(file).orElseThrow(() -> new IllegalArgumentException("there is no table of foods " + file));
    }

    /** The usual foods and those of a file, if there is one. */
    public static Foods withAny(Path file) {
        return own(file).orElseGet(FoodBook::usual);
    }

    private static Optional<Foods> own(Path file) {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new IllegalArgumentException(file + " is larger than 256 KiB; a table of foods never is");
            }
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            return Optional.of(usual().and(FoodCsv.read(text, file.toString())));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new IllegalArgumentException(file + " cannot be read: " + e.getMessage(), e);
        }
    }
}
