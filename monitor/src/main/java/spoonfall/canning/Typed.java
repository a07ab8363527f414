package spoonfall.canning;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import spoonfall.units.Quantities;

/**
 * A batch of jars as somebody typed it. Every text that is not understood ends in an {@link IllegalArgumentException}
 * with one line that names it and gives a good one.
 *
 * @param food such as {@code marmalade}
 * @param elevation such as {@code 1240m}
 * @param jar such as {@code half-pint} or {@code 250mL}
 * @param sterilised {@code yes} or {@code no}
 * @param canner {@code boiling-water} or {@code steam}
 * @param recipeTime such as {@code 10min}
 * @param recipeElevation what the recipe's time is for, such as {@code 0m}
 * @param headspace such as {@code 1/4in} or {@code 6mm}
 * @param acidity a pH, such as {@code 3.2}
 * @param tested whether the recipe was tested for boiling water: {@code yes} or {@code no}
 */
public record Typed(
        Optional<String> food,
        Optional<String> elevation,
        Optional<String> jar,
        Optional<String> sterilised,
        Optional<String> canner,
        Optional<String> recipeTime,
        Optional<String> recipeElevation,
        Optional<String> headspace,
        Optional<String> acidity,
        Optional<String> tested) {
    private static final Pattern MILLILITRES =
            Pattern.compile("(\\d{1,5}(?:\\.\\d{1,3})?)\\s*ml", Pattern.CASE_INSENSITIVE);
    private static final Pattern MINUTES =
            Pattern.compile("(\\d{1,4}(?:\\.\\d{1,3})?)\\s*(?:min|minutes)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern LENGTH = Pattern.compile(
            "(?:(?<over>\\d{1,3})/(?<under>\\d{1,3})|(?<number>\\d{1,3}(?:\\.\\d{1,4})?|\\.\\d{1,4}))\\s*(?<unit>in|inch|\"|mm|cm)",
            Pattern.CASE_INSENSITIVE);
    private static final double MM_PER_INCH = 25.4;

    /** The batch that was meant. Marmalade unless another food is named. */
    public JarBatch batch() {
        return new JarBatch(
                food.map(Typed::food).orElse(Food.MARMALADE),
                Quantities.elevationM(needed(elevation, "the kitchen's elevation", "1240m or 4068ft")),
                jarSize(needed(jar, "the jar's size", "half-pint, pint or 250mL")),
                yes("sterilised", needed(sterilised, "whether the empty jars were sterilised", "yes or no")),
                canner(needed(canner, "the kind of canner", "boiling-water or steam")),
                recipe(),
                headspace.map(text -> OptionalDouble.of(lengthMm(text))).orElse(OptionalDouble.empty()),
                acidity.map(text -> OptionalDouble.of(number(text))).orElse(OptionalDouble.empty()),
                tested.map(text -> yes("tested", text)).orElse(false));
    }

    private Optional<RecipeTime> recipe() {
        if (recipeTime.isEmpty() && recipeElevation.isPresent()) {
            throw new IllegalArgumentException("give the recipe's time too, such as 10min");
        }
        return recipeTime.map(text -> {
            Matcher matcher = matcher(MINUTES, text, "recipe time", "10min");
            OptionalDouble forM = recipeElevation
                    .map(place -> OptionalDouble.of(Quantities.elevationM(place)))
                    .orElse(OptionalDouble.empty());
            return new RecipeTime(Double.parseDouble(matcher.group(1)), forM);
        });
    }

    private static String needed(Optional<String> text, String what, String example) {
        return text.orElseThrow(() -> new IllegalArgumentException("say " + what + ", such as " + example));
    }

    private static Food food(String text) {
        return named("food", text, Food.values(), Food::wireName);
    }

    private static CannerKind canner(String text) {
        return named("canner", text, CannerKind.values(), CannerKind::wireName);
    }

    private static JarSize jarSize(String text) {
        Matcher matcher = MILLILITRES.matcher(text.strip());
        if (matcher.matches()) {
            return JarSize.holding(Double.parseDouble(matcher.group(1)));
        }
        if (text.equalsIgnoreCase("quart")) {
            return JarSize.LARGER;
        }
        return named("jar", text, JarSize.values(), JarSize::wireName);
    }

    private static <T> T named(String what, String text, T[] values, Function<T, String> wireName) {
        return Arrays.stream(values)
                .filter(value -> wireName.apply(value).equals(text.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown " + what + " \"" + text + "\"; it can be "
                        + Arrays.stream(values).map(wireName).collect(Collectors.joining(", "))));
    }

    private static boolean yes(String what, String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw new IllegalArgumentException(what + " must be yes or no, not \"" + text + "\"");
        };
    }

    private static double number(String text) {
        return Double.parseDouble(matcher(Pattern.compile("(\\d{1,2}(?:\\.\\d{1,3})?)"), text, "pH", "3.2")
                .group(1));
    }

    private static double lengthMm(String text) {
        Matcher matcher = matcher(LENGTH, text, "headspace", "1/4in or 6mm");
        double number = matcher.group("over") == null
                ? Double.parseDouble(matcher.group("number"))
                : Double.parseDouble(matcher.group("over")) / Double.parseDouble(matcher.group("under"));
        return switch (matcher.group("unit").toLowerCase(Locale.ROOT)) {
            case "mm" -> number;
            case "cm" -> number * 10;
            default -> number * MM_PER_INCH;
        };
    }

    private static Matcher matcher(Pattern form, String text, String what, String example) {
        Matcher matcher = form.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException(what + " \"" + text + "\" is not understood; write it like " + example);
        }
        return matcher;
    }
}
