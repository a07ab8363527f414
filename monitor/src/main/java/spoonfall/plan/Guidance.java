package spoonfall.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import spoonfall.food.Food;
import spoonfall.food.FoodKind;
import spoonfall.food.Ingredient;
import spoonfall.food.SettingClass;

/** What published guidance says of a batch. Where a limit has no published source, the advice says so. */
final class Guidance {
    private static final String EASY = "So Easy to Preserve, University of Georgia Cooperative Extension";
    private static final String USDA = "USDA, Agriculture Information Bulletin 539 (Complete Guide to Home Canning)";

    /** More is not to be recooked at one time: 8 cups of 236.6 mL. */
    private static final double LARGE_L = 8 * 0.2366;

    private static final double LONG_MIN = 30;

    /** Three quarters of a cup of sugar, 150 g, to a cup of juice, 244 g. */
    private static final double LITTLE_SUGAR = 150.0 / 244;

    private static final double MUCH_SUGAR = 55.0 / 45;
    private static final double HIGHEST_PH = 3.4;
    private static final double LOWEST_PH = 2.8;
    private static final double ACID_PH = 4.6;

    private final BatchPlan plan;
    private final List<Advice> said = new ArrayList<>();

    private Guidance(BatchPlan plan) {
        this.plan = plan;
    }

    /** All that is to be said, warnings first. */
    static List<Advice> on(BatchPlan plan) {
        Guidance guidance = new Guidance(plan);
        guidance.water();
        guidance.size();
        guidance.setting();
        guidance.sugar();
        guidance.acid();
        guidance.always();
        return guidance.said.stream()
                .sorted(Comparator.comparing(Advice::warns).reversed())
                .toList();
    }

    private void water() {
        if (plan.waterOffKg().middle() == 0) {
            said.add(Advice.warning(
                    "nothing-to-drive-off",
                    "It is as thick as at its setting point before it boils, so there is nothing to boil down. Check the amounts, or "
                            + "whether water is missing.",
                    "the plan's own mass balance"));
        }
    }

    private void size() {
        double panL = plan.setup().panL().orElse(Double.NaN);
        if (panL < plan.panL()) {
            said.add(Advice.warning(
                    "pan-too-small",
                    String.format(
                            Locale.ROOT,
                            "The foam climbs: this wants a pan of %.1f L, four times what goes in, and yours holds %.1f L. Make it in %d batches.",
                            plan.panL(),
                            panL,
                            (int) Math.ceil(plan.panL() / panL)),
                    "University of Wisconsin Extension"));
        }
        double finishedL = plan.jars().middle() * plan.setup().jar().litres();
        if (finishedL > LARGE_L) {
            said.add(Advice.warning(
                    "batch-too-big",
                    String.format(
                            Locale.ROOT,
                            "This makes %.1f L at once. Make one batch at a time: larger ones boil longer, and often stay soft. A fit size is up to "
                                    + "8 cups (1.9 L).",
                            finishedL),
                    USDA + "; 8 cups is its limit for recooking"));
        }
        plan.boilMinutes()
                .filter(minutes -> minutes.middle() > LONG_MIN)
                .ifPresent(minutes -> said.add(Advice.warning(
                        "long-boil",
                        String.format(
                                Locale.ROOT,
                                "It boils for about %.0f minutes. Long boiling breaks pectin down and darkens the preserve: take a smaller batch, a wider pan or less water.",
                                minutes.middle()),
                        USDA + "; that half an hour is long is common practice, no source")));
        if (plan.setup().hob().isEmpty()) {
            said.add(Advice.note(
                    "power-unknown",
                    "How long it boils depends on the hob. Time a litre of cold water to the boil in this pan, and give the minutes.",
                    "the plan's own arithmetic"));
        }
    }

    private void setting() {
        if (grams(food -> food.name().contains("pectin")) > 0) {
            said.add(Advice.warning(
                    "added-pectin",
                    "With added pectin a preserve sets by its recipe's boiling time, not by its temperature. Follow the leaflet of the pectin; this plan is for "
                            + "boiling without it.",
                    USDA));
            return;
        }
        double fruitG = grams(food -> food.kind().fromFruit());
        if (fruitG == 0) {
            return;
        }
        double needsG = grams(food -> food.setting() == SettingClass.NEEDS);
        double enoughG = grams(food -> food.setting() == SettingClass.ENOUGH);
        double unknownG = grams(food -> food.kind().fromFruit() && food.setting() == SettingClass.NOT_LISTED);
        if (needsG > fruitG / 2) {
            said.add(Advice.warning(
                    "sets-badly",
                    "Most of this fruit does not set by itself: it always needs acid, pectin or both. Use a tested recipe that adds them.",
                    EASY));
        } else if (unknownG > fruitG / 2) {
            said.add(Advice.note(
                    "setting-unknown",
                    "Nobody published whether this fruit sets by itself. Use a tested recipe, and trust the set test.",
                    EASY + " does not list it"));
        } else if (enoughG < fruitG / 2) {
            said.add(Advice.note(
                    "sets-perhaps",
                    "Most of this fruit is often low in acid or pectin. A tested recipe says what to add; about a quarter of the fruit underripe helps.",
                    EASY + "; the quarter is from memory"));
        }
    }

    private void sugar() {
        double fruitG = grams(food -> food.kind().fromFruit());
        double sugarG = grams(food -> food.kind() == FoodKind.SUGAR);
        if (fruitG == 0) {
            return;
        }
        double ratio = sugarG / fruitG;
        if (ratio < LITTLE_SUGAR * 0.95) {
            said.add(
                    Advice.warning(
                            "sugar-low",
                            String.format(
                                    Locale.ROOT,
                                    "There are %.0f g of sugar to 100 g of fruit. Usual are 60 g or more: with less it boils longer, and keeps less well once opened. Never cut the "
                                            + "sugar of a tested recipe.",
                                    100 * ratio),
                            USDA
                                    + " and Michigan State University Extension; the ratio (3/4 to 1 cup to a cup of juice) is from memory"));
        } else if (ratio > MUCH_SUGAR) {
            said.add(Advice.note(
                    "sugar-high",
                    String.format(
                            Locale.ROOT,
                            "There are %.0f g of sugar to 100 g of fruit, more than the 122 g of a jam that is sold in the United States. It may crystallise.",
                            100 * ratio),
                    "21 CFR 150.160 (45 parts of fruit to 55 of sugar; from memory)"));
        }
    }

    private void acid() {
        if (plan.setup().ph().isEmpty()) {
            said.add(Advice.note(
                    "ph-unknown",
                    "Its pH is not known. A set wants 2.8 to 3.4; where it is in doubt, use a tested recipe, which says how much acid to add.",
                    EASY));
            return;
        }
        double ph = plan.setup().ph().getAsDouble();
        if (ph > ACID_PH) {
            said.add(Advice.warning(
                    "not-acid",
                    String.format(
                            Locale.ROOT,
                            "At pH %.1f this is no acid food: it is not safe to can like jam. Ask your local food-safety authority or extension service.",
                            ph),
                    USDA));
        } else if (ph > HIGHEST_PH) {
            said.add(Advice.warning(
                    "ph-high",
                    String.format(
                            Locale.ROOT,
                            "At pH %.1f it sets badly: a set wants 2.8 to 3.4. Use a tested recipe, which says how much acid to add.",
                            ph),
                    EASY));
        } else if (ph < LOWEST_PH) {
            said.add(Advice.warning(
                    "ph-low",
                    String.format(Locale.ROOT, "At pH %.1f the set may weep: it wants 2.8 to 3.4.", ph),
                    EASY));
        }
    }

    private void always() {
        said.add(Advice.note(
                "processing",
                "A plan knows no processing time. Your tested recipe and the published tables do: spoonfall jars, or the jars on the page.",
                USDA));
        said.add(Advice.note(
                "hot-sugar",
                "Boiling sugar sticks and burns: long sleeves, a deep pan, nobody leaning over it.",
                "common practice, no source"));
    }

    private double grams(Predicate<Food> which) {
        return plan.ingredients().stream()
                .filter(one -> which.test(one.food()))
                .mapToDouble(Ingredient::grams)
                .sum();
    }
}
