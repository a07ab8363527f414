package spoonfall.kitchen.file;

import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** TOML that somebody wrote by hand: its keys, or one complaint of the first thing that is wrong with it. */
final class TomlText {
    private static final String BROKEN =
            "is no TOML; look for a quote or a bracket that is not closed, and for a lone \\";

    private TomlText() {}

    /**
     * The keys of a text. The library mostly lists what is wrong, but its visitors trip over some of what its grammar let pass
     * with an error: a backslash before a bracket, for one.
     *
     * @param complaint makes the exception to be thrown of where it is and what it is
     */
    static TomlTable keys(String text, BiFunction<@Nullable TomlPosition, String, IllegalArgumentException> complaint) {
        TomlParseResult toml;
        try {
            toml = Toml.parse(text);
        } catch (TomlParseError e) {
            throw complaint.apply(e.position(), firstLine(e));
        } catch (RuntimeException | AssertionError e) { // an assertion where they are on, else what it guards against
            throw complaint.apply(null, BROKEN);
        }
        if (toml.hasErrors()) {
            TomlParseError first = toml.errors().get(0);
            throw complaint.apply(first.position(), firstLine(first));
        }
        return toml;
    }

    private static String firstLine(TomlParseError error) {
        return String.valueOf(error.getMessage()).lines().findFirst().orElse("");
    }
}
