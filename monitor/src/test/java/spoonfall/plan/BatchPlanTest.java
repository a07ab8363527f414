package spoonfall.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.food.Amount;
import spoonfall.food.CookUnit;
import spoonfall.food.Food;
import spoonfall.food.FoodKind;
import spoonfall.food.Ingredient;

final class BatchPlanTest {
    /** Net power at which NCHFP's marmalade loses its water in 20 minutes (docs/science.md, computed). */
    private static final double SCIENCE_KW = 1.75;

    private static BatchPlan marmalade() {
        return BatchPlan.of(Batches.marmalade(), Batches.at(0, Optional.of(HobPower.given(SCIENCE_KW))));
    }

    @Test
    void theWorkedMarmalade_fillsThreeToFourHalfPintsInAboutTwentyMinutes() {
        // NCHFP, citrus marmalade: "about 20 minutes", "about 3 or 4 half-pints" (docs/science.md).
        BatchPlan plan = marmalade();
        assertThat(plan.balance().totalKg()).isCloseTo(2.02, within(0.03));
        assertThat(plan.balance().solids()).isCloseTo(0.35, within(0.01));
        assertThat(plan.finishedKg().middle()).isCloseTo(1.09, within(0.06));
        assertThat(plan.jars().middle()).isBetween(3.0, 4.0);
        assertThat(plan.jars().low()).isBetween(3.0, 3.9);
        assertThat(plan.jars().high()).isLessThan(4.5);
        assertThat(plan.boilMinutes().orElseThrow().middle()).isCloseTo(20, within(2.0));
        assertThat(plan.advice()).filteredOn(Advice::warns).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {20261126, 1, 2, 3, 4})
    void theMassBalance_closesToAGram_onAnyBatch(long seed) {
        System.out.println("BatchPlanTest seed " + seed);
        Random random = new Random(seed);
        for (int batch = 0; batch < 200; batch++) {
            List<Ingredient> ingredients = batch(random);
            BatchPlan plan = BatchPlan.of(ingredients, Batches.at(random.nextDouble() * 2500, Optional.empty()));
            double weighedG =
                    ingredients.stream().mapToDouble(Ingredient::grams).sum();
            MassBalance in = plan.balance();
            assertThat(in.totalKg() * 1000).isCloseTo(weighedG, within(1.0));
            if (plan.waterOffKg().middle() > 0) {
                double outG =
                        1000 * (plan.finishedKg().middle() + plan.waterOffKg().middle());
                assertThat(outG).isCloseTo(weighedG, within(1.0));
                double endWaterKg = in.waterKg() - plan.waterOffKg().middle();
                assertThat(in.solubleKg() / (in.solubleKg() + endWaterKg)).isCloseTo(plan.finishSolids(), within(1e-6));
            }
        }
    }

    private static List<Ingredient> batch(Random random) {
        List<Ingredient> ingredients = new ArrayList<>(Batches.of("1 kg", "sugar", "500 g", "water"));
        for (int i = random.nextInt(8); i >= 0; i--) {
            Food food =
                    Batches.FOODS.all().get(random.nextInt(Batches.FOODS.all().size()));
            CookUnit unit =
                    food.cupG().isPresent() ? CookUnit.CUP : food.pieceG().isPresent() ? CookUnit.PIECE : CookUnit.GRAM;
            ingredients.add(new Ingredient(new Amount(1 + random.nextInt(12) / 2.0, unit), food));
        }
        return ingredients;
    }

    @Test
    void thePath_endsAtTheSettingPoint_andNeverTurnsBack() {
        BatchPlan plan = marmalade();
        PathPoint last = plan.path().get(plan.path().size() - 1);
        assertThat(last.temperatureC()).isCloseTo(plan.setup().gelPointC(), within(0.01));
        assertThat(last.solids()).isCloseTo(plan.finishSolids(), within(1e-6));
        assertThat(last.minutes().orElseThrow())
                .isCloseTo(plan.boilMinutes().orElseThrow().middle(), within(1e-6));
        assertThat(plan.path()).isSortedAccordingTo(java.util.Comparator.comparingDouble(PathPoint::temperatureC));
        assertThat(plan.path()).isSortedAccordingTo(java.util.Comparator.comparingDouble(PathPoint::solids));
    }

    @Test
    void ranges_areWiderForCountedFruitThanForWeighedFruit() {
        PlanSetup setup = Batches.at(0, Optional.empty());
        Range counted = BatchPlan.of(Batches.of("12", "orange", "600 g", "sugar"), setup)
                .jars();
        Range weighed = BatchPlan.of(Batches.of("1572 g", "orange", "600 g", "sugar"), setup)
                .jars();
        assertThat(counted.middle()).isCloseTo(weighed.middle(), within(1e-6));
        assertThat(counted.high() - counted.low()).isGreaterThan(weighed.high() - weighed.low());
    }

    @Test
    void higherUp_theSamePanBoilsColder_butIsAsThick() {
        PlanSetup up = Batches.at(1240, Optional.empty());
        BatchPlan high = BatchPlan.of(Batches.marmalade(), up);
        BatchPlan low = BatchPlan.of(Batches.marmalade(), Batches.at(0, Optional.empty()));
        assertThat(up.gelPointC()).isLessThan(low.setup().gelPointC() - 3);
        assertThat(high.finishSolids()).isCloseTo(low.finishSolids(), within(0.01));
        assertThat(high.boilMinutes()).isEmpty();
        assertThat(high.path().get(3).minutes()).isEmpty();
        assertThat(high.pan()).isEmpty();
    }

    @Test
    void theForecastIsTold_theSyrupOnly() {
        BatchPlan plan = marmalade();
        PlannedPan pan = plan.pan().orElseThrow();
        assertThat(pan.totalKg())
                .isCloseTo(plan.balance().totalKg() - plan.balance().restKg(), within(1e-9));
        assertThat(pan.solidsKg()).isEqualTo(plan.balance().solubleKg());
        assertThat(pan.waterKgPerMin()).isCloseTo(0.0465, within(0.0005));
        assertThat(pan.relativeDoubt()).isEqualTo(0.15);
    }

    @Test
    void thePan_holdsFourTimesWhatGoesIn() {
        BatchPlan plan = marmalade();
        assertThat(plan.contentsL()).isCloseTo(2.03 / 1.15, within(0.05));
        assertThat(plan.panL()).isCloseTo(4 * plan.contentsL(), within(1e-9));
    }

    @Test
    void aBatchThatCannotSet_isRefused_withTheWayOut() {
        PlanSetup setup = Batches.at(0, Optional.empty());
        assertThatThrownBy(() -> BatchPlan.of(List.of(), setup)).hasMessageContaining("1 to 40 ingredients");
        assertThatThrownBy(() -> BatchPlan.of(Batches.of("1 L", "water"), setup))
                .hasMessageContaining("neither sugar nor fruit");
        Food dry = Batches.FOODS.named("sugar");
        Food driest = new Food(
                "dry",
                List.of(),
                FoodKind.SUGAR,
                dry.setting(),
                dry.cupG(),
                "",
                dry.pieceG(),
                "",
                0,
                dry.solubles(),
                "a test");
        assertThatThrownBy(() -> BatchPlan.of(List.of(new Ingredient(Amount.of("1 kg"), driest)), setup))
                .hasMessageContaining("no water");
    }

    @Test
    void scaling_saysWhatDoesNotScale() {
        Scaling twice = Scaling.of(marmalade(), 2);
        assertThat(twice.scaled().jars().middle())
                .isCloseTo(2 * twice.once().jars().middle(), within(1e-6));
        assertThat(twice.scaled().boilMinutes().orElseThrow().middle())
                .isCloseTo(2 * twice.once().boilMinutes().orElseThrow().middle(), within(1e-6));
        assertThat(twice.scaled().finishSolids()).isEqualTo(twice.once().finishSolids());
        assertThat(String.join(" ", twice.notes()))
                .contains("instead of 19 minutes", "The pan does not grow", "one batch at a time", "processing time");
        assertThatThrownBy(() -> Scaling.of(marmalade(), 0)).hasMessageContaining("0.05 to 50");
    }
}
