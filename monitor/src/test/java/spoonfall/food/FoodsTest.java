package spoonfall.food;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.kitchen.pantry.FoodBook;

final class FoodsTest {
    private static final Foods FOODS = FoodBook.usual();

    @Test
    void everyRow_citesItsSource_andStaysWithinPhysicalLimits() {
        assertThat(FOODS.all()).hasSizeGreaterThan(40).allSatisfy(food -> {
            assertThat(food.source()).containsPattern("SR28 NDB \\d{5}|by definition");
            assertThat(food.waterPercent() + food.solubles().middle() + food.rest())
                    .isCloseTo(100, within(1e-6));
            assertThat(food.solubles().high()).isLessThanOrEqualTo(100 - food.waterPercent() + 1e-9);
            food.cupG().ifPresent(grams -> assertThat(grams / 236.588).isBetween(0.3, 1.45)); // honey is the heaviest
            if (food.setting() != SettingClass.NOT_LISTED) {
                assertThat(food.source()).containsAnyOf("So Easy to Preserve", "common practice, no source");
            }
        });
    }

    @ParameterizedTest
    @CsvSource({
        "orange, 12.5",
        "grapefruit, 9.1",
        "strawberry, 8.0",
        "apple, 13.3",
        "raspberry, 10.5",
        "blackberry, 10.0"
    })
    void solubleSolids_lieAroundThoseOf21Cfr150(String name, double percent) {
        // 100 / factor in 21 CFR 150.140 (docs/science.md); USDA's own figures lie below, for fibre is not juice.
        Solubles solubles = FOODS.named(name).solubles();
        assertThat(solubles.high()).isCloseTo(percent, within(0.1));
        assertThat(solubles.middle()).isBetween(0.7 * percent, percent);
    }

    @ParameterizedTest
    @CsvSource({
        "Oranges, orange",
        "STRAWBERRIES, strawberry",
        "granulated sugar, sugar",
        "red-currants, red currant",
        "peaches, peach",
        "Seville oranges, seville orange",
        "lemon  peel, lemon peel",
        "cherries, cherry"
    })
    void names_areFound_manyOrOne_inAnyCase(String asked, String found) {
        assertThat(FOODS.named(asked).name()).isEqualTo(found);
    }

    @ParameterizedTest
    @CsvSource({"oragne, orange", "strwberry, strawberry", "blood orange, orange", "demerara sugar, sugar"})
    void anUnknownFood_isAnsweredWithTheNearest(String asked, String near) {
        assertThatThrownBy(() -> FOODS.named(asked))
                .hasMessageContaining("did you mean")
                .hasMessageContaining(near);
    }

    @Test
    void anEndlessName_isCutShort() {
        assertThatThrownBy(() -> FOODS.named("x".repeat(100_000))).message().hasSizeLessThan(300);
    }

    @ParameterizedTest
    @CsvSource({
        "cup, 236.5882365",
        "tbsp, 14.78676478",
        "tsp, 4.92892159",
        "L, 1000",
        "oz, 28.349523125",
        "lb, 453.59237",
        "kg, 1000"
    })
    void units_areThoseOfNist(String unit, double size) {
        // NIST Handbook 44, Appendix C, tables of unit equivalents.
        assertThat(CookUnit.named(unit).size()).isCloseTo(size, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "3/4 cup, 0.75, CUP",
        "1 1/2 lb, 1.5, POUND",
        "1½ cups, 1.5, CUP",
        "2.5kg, 2.5, KILOGRAM",
        "4, 4, PIECE",
        "4 pieces, 4, PIECE",
        ".5 L, 0.5, LITRE",
        "⅓ tsp, 0.333333, TEASPOON",
        "12 oz., 12, OUNCE"
    })
    void amounts_areReadAsCooksWriteThem(String text, double number, CookUnit unit) {
        Amount amount = Amount.of(text);
        assertThat(amount.unit()).isEqualTo(unit);
        assertThat(amount.number()).isCloseTo(number, within(1e-5));
        assertThat(Amount.of(amount.words()).number()).isCloseTo(number, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({
        "-2 kg, must be above 0", "0 g, must be above 0", "1/0 cup, not understood", "'1,5 kg', not understood",
                "2 bushels, unknown unit",
        "1e9 kg, not understood", "some, not understood", "'', not understood", "NaN g, not understood",
                "9999999 g, not understood"
    })
    void badAmounts_areRefused_withGoodOnes(String text, String says) {
        assertThatThrownBy(() -> Amount.of(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(says);
    }

    @Test
    void ingredients_thatCannotBe_areRefused() {
        assertThatThrownBy(() -> ingredient("3", "rhubarb peel")).hasMessageContaining("did you mean");
        assertThatThrownBy(() -> ingredient("3", "orange peel")).hasMessageContaining("no weight for a piece");
        assertThatThrownBy(() -> ingredient("1 cup", "quince")).hasMessageContaining("nobody weighed a cup");
        assertThatThrownBy(() -> ingredient("900 kg", "sugar")).hasMessageContaining("no pan holds");
        assertThatThrownBy(() -> ingredient("0.001 g", "sugar")).hasMessageContaining("too little");
    }

    private static Ingredient ingredient(String amount, String food) {
        return new Ingredient(Amount.of(amount), FOODS.named(food));
    }

    @Test
    void weights_areThoseOfTheTable() {
        assertThat(ingredient("3/4 cup", "orange peel").grams()).isCloseTo(72, within(0.01));
        assertThat(ingredient("4", "oranges").grams()).isCloseTo(524, within(0.01)); // USDA: 131 g of flesh each
        assertThat(ingredient("500 mL", "water").grams()).isCloseTo(500, within(0.5));
        assertThat(ingredient("1 lb", "sugar").grams()).isCloseTo(453.6, within(0.01));
    }
}
