package spoonfall.plan;

import java.util.List;
import java.util.function.ToDoubleFunction;
import spoonfall.food.Ingredient;

/**
 * What the ingredients bring, in kilograms; together they are all that goes into the pan. Doubts are one standard deviation, and
 * ingredients are measured independently of each other.
 *
 * @param waterKg water
 * @param solubleKg what dissolves: sugar, and the fruit's own sugars, acids and salts
 * @param restKg what does neither, such as fibre
 * @param waterDoubtKg how far the water may be off
 * @param solubleDoubtKg how far what dissolves may be off
 */
public record MassBalance(double waterKg, double solubleKg, double restKg, double waterDoubtKg, double solubleDoubtKg) {
    private static final double G_PER_KG = 1000;

    /** The balance of some ingredients. */
    static MassBalance of(List<Ingredient> ingredients) {
        return new MassBalance(
                sum(ingredients, Ingredient::waterG),
                sum(ingredients, Ingredient::solubleG),
                sum(ingredients, Ingredient::restG),
                quadrature(ingredients, one -> one.doubtG() * one.food().waterPercent() / 100),
                quadrature(ingredients, Ingredient::solubleDoubtG));
    }

    private static double sum(List<Ingredient> ingredients, ToDoubleFunction<Ingredient> part) {
        return ingredients.stream().mapToDouble(part).sum() / G_PER_KG;
    }

    private static double quadrature(List<Ingredient> ingredients, ToDoubleFunction<Ingredient> doubt) {
        return Math.sqrt(ingredients.stream()
                        .mapToDouble(one -> Math.pow(doubt.applyAsDouble(one), 2))
                        .sum())
                / G_PER_KG;
    }

    /** All that goes in. */
    public double totalKg() {
        return waterKg + solubleKg + restKg;
    }

    /** Water and what it dissolves: what boils, and what the thermometer sees. */
    public double syrupKg() {
        return waterKg + solubleKg;
    }

    /** The fraction of the syrup that is solids, before any of the water leaves. */
    public double solids() {
        return solubleKg / syrupKg();
    }
}
