package spoonfall.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.food.Amount;
import spoonfall.food.Foods;
import spoonfall.food.Ingredient;
import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.physics.Air;
import spoonfall.physics.GelPoint;
import spoonfall.physics.Water;

/** Batches to plan. */
final class Batches {
    static final Foods FOODS = FoodBook.usual();

    private Batches() {}

    /** Ingredients from pairs of an amount and a food. */
    static List<Ingredient> of(String... amountsAndFoods) {
        List<Ingredient> batch = new ArrayList<>();
        for (int i = 0; i < amountsAndFoods.length; i += 2) {
            batch.add(new Ingredient(Amount.of(amountsAndFoods[i]), FOODS.named(amountsAndFoods[i + 1])));
        }
        return batch;
    }

    /** NCHFP's citrus marmalade, whose peel is simmered in water that is drained (docs/science.md). */
    static List<Ingredient> marmalade() {
        return of(
                "3/4 cup", "grapefruit peel",
                "3/4 cup", "orange peel",
                "1/3 cup", "lemon peel",
                "1", "grapefruit",
                "4", "orange",
                "2 cups", "water",
                "3 cups", "sugar");
    }

    static PlanSetup at(double elevationM, Optional<HobPower> hob) {
        double pressurePa = Air.pressurePa(elevationM);
        return new PlanSetup(
                pressurePa,
                Water.boilingPointC(pressurePa),
                GelPoint.DEFAULT_RISE_C,
                hob,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Jar.HALF_PINT);
    }
}
