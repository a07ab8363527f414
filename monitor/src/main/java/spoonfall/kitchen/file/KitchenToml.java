package spoonfall.kitchen.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import spoonfall.units.Spelling;

/** The keys of one kitchen file; every complaint says where. */
record KitchenToml(Path file, TomlTable toml) {
    private static final long LARGEST_BYTES = 64 * 1024;
    private static final int LONGEST_COMPLAINT = 600;

    /**
     * The keys of a file.
     *
     * @param missing what to say if there is no such file, before its name
     * @param never what to say of one that is too large, as in "a kitchen file never is"
     * @throws IllegalArgumentException with one line naming file and line, and the way out
     */
    static KitchenToml read(Path file, String missing, String never) {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new IllegalArgumentException(file + " is larger than 64 KiB; " + never);
            }
            // Bytes that are no text become U+FFFD, so that the parser says on which line they are.
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            TomlTable toml = TomlText.keys(text, (at, what) -> complaint(file, at, what));
            return new KitchenToml(file, toml);
        } catch (NoSuchFileException e) {
            throw new IllegalArgumentException(missing + " " + file, e);
        } catch (IOException e) {
            throw new IllegalArgumentException(file + " cannot be read: " + e.getMessage(), e);
        }
    }

    /** The tables of that heading, in order. */
    TomlArray tables(String key) {
        Object value = toml.get(key);
        if (value == null) {
            return Toml.parse(key + " = []").getArrayOrEmpty(key);
        }
        if (!(value instanceof TomlArray tables) || !(tables.isEmpty() || tables.get(0) instanceof TomlTable)) {
            throw complaint(toml, key, "must be a table of its own, headed [[" + key + "]]");
        }
        return tables;
    }

    /** A text; empty if the key is not there. */
    Optional<String> text(TomlTable table, String key) {
        Object value = table.get(key);
        if (value == null) {
            return Optional.empty();
        }
        if (value instanceof String text && !text.isBlank() && text.length() <= 200) {
            return Optional.of(text.strip());
        }
        throw complaint(table, key, "must be a text in quotes of 1 to 200 characters");
    }

    /** A quantity with its unit; empty if the key is not there. */
    Optional<Double> quantity(TomlTable table, String key, Function<String, Double> parse) {
        try {
            return text(table, key).map(parse);
        } catch (IllegalArgumentException e) {
            String message = String.valueOf(e.getMessage());
            throw message.startsWith(file.toString()) ? e : complaint(table, key, message);
        }
    }

    /** Complains about the first key that is not known, with the nearest that is. */
    void refuseUnknown(TomlTable table, List<String> known) {
        refuseUnknown(table, known, "a kitchen file");
    }

    /** The same for a file of another kind, such as "batch notes". */
    void refuseUnknown(TomlTable table, List<String> known, String kind) {
        for (String key : table.keySet()) {
            if (!known.contains(key)) {
                String nearest = known.stream()
                        .min(Comparator.comparingInt(candidate -> Spelling.distance(key, candidate)))
                        .orElse("");
                String hint = Spelling.distance(key, nearest) <= 2
                        ? "did you mean " + nearest + "?"
                        : "it can be " + String.join(", ", known);
                throw complaint(table, key, "is not a key of " + kind + "; " + hint);
            }
        }
    }

    /** A complaint about a key, with its line. */
    IllegalArgumentException complaint(TomlTable table, String key, @Nullable String what) {
        return complaint(table.inputPositionOf(List.of(key)), key, what);
    }

    /** A complaint about what begins there. */
    IllegalArgumentException complaint(@Nullable TomlPosition at, String key, @Nullable String what) {
        return complaint(file, at, key + ": " + what);
    }

    /** A complaint about what begins there, in one line of bounded length whatever the file had in quotes. */
    static IllegalArgumentException complaint(Path file, @Nullable TomlPosition at, String what) {
        String line = at == null ? "" : ", line " + at.line();
        String shown = what.replaceAll("\\p{Cntrl}", "·");
        if (shown.length() > LONGEST_COMPLAINT) {
            shown = shown.substring(0, LONGEST_COMPLAINT - 1) + "…";
        }
        return new IllegalArgumentException(file + line + ": " + shown);
    }
}
