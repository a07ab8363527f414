package spoonfall.food;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An ingredient in one line, as recipes write it, such as {@code 3/4 cup orange peel}, {@code 600 g of sugar} or {@code 4 oranges}. */
public final class IngredientLine {
    private static final Pattern FORM = Pattern.compile(
            "\\s*(?<number>[\\d./\\s½¼¾⅓⅔⅛⅜⅝⅞]*[\\d½¼¾⅓⅔⅛⅜⅝⅞])\\s*(?<unit>\\p{Alpha}+\\.?)(?:\\s+(?:of\\s+)?(?<food>\\S.*))?");
    private static final int LONGEST = 120;

    private IngredientLine() {}

    /**
     * Reads a line.
     *
     * @throws IllegalArgumentException in one line that says what is not understood, and the way out
     */
    public static Ingredient read(String line, Foods foods) {
        Matcher matcher = FORM.matcher(line.length() > LONGEST ? line.substring(0, LONGEST) : line);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("\"" + line.strip()
                    + "\" is not understood; write amount, unit and food, such as \"600 g sugar\" or \"4 oranges\"");
        }
        String unit = matcher.group("unit");
        String food = matcher.group("food");
        boolean measured = food != null && CookUnit.known(unit.replace(".", ""));
        if (measured) {
            return new Ingredient(Amount.of(matcher.group("number"), unit.replace(".", "")), foods.named(food));
        }
        return new Ingredient(
                Amount.of(matcher.group("number"), ""), foods.named(food == null ? unit : unit + " " + food));
    }
}
