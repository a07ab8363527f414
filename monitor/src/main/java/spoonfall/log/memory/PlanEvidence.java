package spoonfall.log.memory;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import spoonfall.food.Amount;
import spoonfall.food.Food;
import spoonfall.food.FoodKind;
import spoonfall.food.Foods;
import spoonfall.food.Ingredient;
import spoonfall.food.SettingClass;
import spoonfall.learn.Evidence;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.log.store.cook.StoredCook;

/**
 * What the plan in a cook's record says of its batch.
 *
 * @param sugarToFruit grams of sugar to a gram of fruit
 * @param setting how well most of the fruit sets by itself
 * @param ph how acid it was, as somebody measured it
 */
record PlanEvidence(OptionalDouble sugarToFruit, Optional<Evidence.Setting> setting, OptionalDouble ph)
        implements Evidence {
    /** What the plan that a cook had last says; empty if it had none, or one of which nothing is known any more. */
    static Optional<Evidence> of(StoredCook cook, Foods foods) {
        return PlannedBatch.last(cook.inputs()).flatMap(plan -> {
            Optional<PlanEvidence> fruit = ofFruit(plan, foods);
            Optional<PlanEvidence> acid = plan.acidity().isPresent()
                    ? Optional.of(new PlanEvidence(OptionalDouble.empty(), Optional.empty(), plan.acidity()))
                    : Optional.empty();
            return fruit.or(() -> acid);
        });
    }

    private static Optional<PlanEvidence> ofFruit(PlannedBatch plan, Foods foods) {
        List<Ingredient> ingredients = new ArrayList<>();
        for (PlannedBatch.Row row : plan.rows()) {
            Optional<Food> food = foods.find(row.food());
            if (food.isEmpty()) {
                return Optional.empty();
            }
            try {
                ingredients.add(new Ingredient(Amount.of(row.amount()), food.get()));
            } catch (IllegalArgumentException e) {
                return Optional.empty(); // a table of its own that has changed since
            }
        }
        double fruitG = grams(ingredients, food -> food.kind().fromFruit());
        if (fruitG == 0) {
            return Optional.empty();
        }
        double sugarG = grams(ingredients, food -> food.kind() == FoodKind.SUGAR);
        return Optional.of(
                new PlanEvidence(OptionalDouble.of(sugarG / fruitG), setting(ingredients, fruitG), plan.acidity()));
    }

    /** The class that more than half of the fruit is of, as the plan's own advice has it. */
    private static Optional<Setting> setting(List<Ingredient> ingredients, double fruitG) {
        if (grams(ingredients, food -> food.setting() == SettingClass.NEEDS) > fruitG / 2) {
            return Optional.of(Setting.NEEDS);
        }
        if (grams(ingredients, food -> food.kind().fromFruit() && food.setting() == SettingClass.NOT_LISTED)
                > fruitG / 2) {
            return Optional.empty();
        }
        boolean enough = grams(ingredients, food -> food.setting() == SettingClass.ENOUGH) >= fruitG / 2;
        return Optional.of(enough ? Setting.ENOUGH : Setting.PERHAPS);
    }

    private static double grams(List<Ingredient> ingredients, Predicate<Food> which) {
        return ingredients.stream()
                .filter(one -> which.test(one.food()))
                .mapToDouble(Ingredient::grams)
                .sum();
    }
}
