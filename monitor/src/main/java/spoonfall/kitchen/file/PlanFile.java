package spoonfall.kitchen.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import spoonfall.food.Amount;
import spoonfall.food.Foods;
import spoonfall.food.Ingredient;
import spoonfall.plan.TypedSetup;

/**
 * What batch notes say of the batch itself: a table {@code [[ingredient]]} for each thing that goes into the pan, with its
 * {@code food} and {@code amount}, and {@code [plan]} with what it is cooked with. The same file's steps are read by {@link NotesFile}.
 *
 * @param name what is being made; empty if the notes do not say
 * @param ingredients what goes in, in the order of the file
 * @param setup what it is cooked with
 * @param riseC how far above boiling water it is to set, in °C; empty if the notes do not say
 */
public record PlanFile(Optional<String> name, List<Ingredient> ingredients, TypedSetup setup, Optional<Double> riseC) {
    private static final Optional<String> NONE = Optional.empty();
    private static final String KIND = "batch notes";
    private static final List<String> INGREDIENT_KEYS = List.of("food", "amount");
    private static final List<String> PLAN_KEYS = List.of("name", "pan", "power", "kettle", "ph", "jar", "rise");

    /** Keeps the list as it is. */
    public PlanFile {
        ingredients = List.copyOf(ingredients);
    }

    /**
     * Reads batch notes for their ingredients.
     *
     * @param foods what can be in them
     * @throws IllegalArgumentException with one line naming file, line and key, and the way out
     */
    public static PlanFile read(Path file, Foods foods) {
        NotesFile.read(file); // whatever else is wrong with the notes is said too
        KitchenToml keys = KitchenToml.read(file, "there are no batch notes", "batch notes never are");
        TomlTable plan = plan(keys);
        keys.refuseUnknown(plan, PLAN_KEYS, KIND);
        return new PlanFile(
                keys.text(plan, "name"),
                ingredients(keys, foods),
                setup(keys, plan),
                keys.quantity(plan, "rise", TypedSetup::riseC));
    }

    private static TypedSetup setup(KitchenToml keys, TomlTable plan) {
        TypedSetup setup = new TypedSetup(
                checked(keys, plan, "pan", pan -> new TypedSetup(pan, NONE, NONE, NONE, NONE)),
                checked(keys, plan, "power", power -> new TypedSetup(NONE, power, NONE, NONE, NONE)),
                checked(keys, plan, "kettle", kettle -> new TypedSetup(NONE, NONE, kettle, NONE, NONE)),
                checked(keys, plan, "ph", ph -> new TypedSetup(NONE, NONE, NONE, ph, NONE)),
                checked(keys, plan, "jar", jar -> new TypedSetup(NONE, NONE, NONE, NONE, jar)));
        // each is right by itself; a power and a kettle are one thing
        return saying(keys, plan, "kettle", setup::checked);
    }

    private static Optional<String> checked(
            KitchenToml keys, TomlTable plan, String key, Function<Optional<String>, TypedSetup> alone) {
        Optional<String> text = keys.text(plan, key);
        saying(keys, plan, key, () -> alone.apply(text).checked());
        return text;
    }

    private static TomlTable plan(KitchenToml keys) {
        Object plan = keys.toml().get("plan");
        if (plan == null) {
            return org.tomlj.Toml.parse("");
        }
        if (plan instanceof TomlTable table) {
            return table;
        }
        throw keys.complaint(keys.toml(), "plan", "must be a table of its own, headed [plan]");
    }

    private static List<Ingredient> ingredients(KitchenToml keys, Foods foods) {
        List<Ingredient> ingredients = new ArrayList<>();
        TomlArray tables = keys.tables("ingredient");
        for (int i = 0; i < tables.size(); i++) {
            TomlTable table = tables.getTable(i);
            keys.refuseUnknown(table, INGREDIENT_KEYS, KIND);
            String food = needed(keys, table, "food", "food = \"orange peel\"");
            String amount = needed(keys, table, "amount", "amount = \"3/4 cup\"");
            Amount measured = saying(keys, table, "amount", () -> Amount.of(amount));
            ingredients.add(saying(keys, table, "food", () -> new Ingredient(measured, foods.named(food))));
        }
        return ingredients;
    }

    private static String needed(KitchenToml keys, TomlTable table, String key, String example) {
        return keys.text(table, key)
                .orElseThrow(() -> keys.complaint(
                        table.keySet().stream()
                                .findFirst()
                                .map(one -> table.inputPositionOf(List.of(one)))
                                .orElse(null),
                        "ingredient",
                        "needs " + key + ", such as " + example));
    }

    private static <T> T saying(KitchenToml keys, TomlTable table, String key, Supplier<T> reading) {
        try {
            return reading.get();
        } catch (IllegalArgumentException e) {
            throw keys.complaint(table, key, e.getMessage());
        }
    }
}
