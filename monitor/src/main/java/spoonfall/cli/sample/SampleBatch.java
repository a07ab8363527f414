package spoonfall.cli.sample;

import java.util.List;
import java.util.Optional;
import spoonfall.food.Foods;
import spoonfall.food.Ingredient;
import spoonfall.food.IngredientLine;
import spoonfall.kitchen.file.PlanFile;
import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.plan.TypedSetup;

/**
 * The invented batch of the Hollin Bank kitchen that the sample cook shows: 2.1 kg at about 40 % on 1.35 kW, as its trace says. Kept as a
 * file in sample-notes too, for reading.
 */
public final class SampleBatch {
    /** What it is called. */
    public static final String NAME = "Seville orange and ginger, batch 14";

    private static final List<String> LINES =
            List.of("600 g seville orange", "60 mL lemon juice", "40 g ginger", "660 mL water", "740 g sugar");

    private SampleBatch() {}

    /** Its notes. */
    public static PlanFile notes() {
        Foods foods = FoodBook.usual();
        List<Ingredient> ingredients =
                LINES.stream().map(line -> IngredientLine.read(line, foods)).toList();
        TypedSetup setup = new TypedSetup(
                Optional.of("9L"), Optional.empty(), Optional.of("4min"), Optional.empty(), Optional.of("half-pint"));
        return new PlanFile(Optional.of(NAME), ingredients, setup, Optional.empty());
    }
}
