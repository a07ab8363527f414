package spoonfall.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class GuidanceTest {
    private static PlanSetup setup(double panL, double ph) {
        PlanSetup sea = Batches.at(0, Optional.of(HobPower.given(1.75)));
        return new PlanSetup(
                sea.pressurePa(),
                sea.waterBoilC(),
                sea.riseC(),
                sea.hob(),
                OptionalDouble.of(panL),
                OptionalDouble.of(ph),
                sea.jar());
    }

    private static List<String> warnings(PlanSetup setup, String... batch) {
        return BatchPlan.of(Batches.of(batch), setup).advice().stream()
                .filter(Advice::warns)
                .map(Advice::id)
                .toList();
    }

    @Test
    void aSoundBatch_isWarnedOfNothing() {
        BatchPlan plan = BatchPlan.of(Batches.marmalade(), setup(8, 3.1));
        assertThat(plan.advice()).filteredOn(Advice::warns).isEmpty();
        assertThat(plan.advice()).extracting(Advice::id).contains("processing", "hot-sugar");
        assertThat(plan.advice()).noneMatch(advice -> advice.text().matches(".*process\\w* (for|them) \\d+.*"));
    }

    @Test
    void everyAdvice_hasItsSource() {
        BatchPlan plan =
                BatchPlan.of(Batches.of("6 kg", "strawberry", "1 kg", "sugar", "2", "powdered pectin"), setup(4, 5));
        assertThat(plan.advice())
                .hasSizeGreaterThan(4)
                .allMatch(one -> !one.source().isBlank() && one.text().endsWith("."));
    }

    @Test
    void aPanTooSmall_andABatchTooBig_areSaid() {
        assertThat(warnings(setup(6, 3.1), "2 kg", "seville orange", "2 kg", "sugar", "2 L", "water"))
                .contains("pan-too-small", "batch-too-big", "long-boil");
    }

    @Test
    void fruitThatSetsBadly_isSaid_unlessEnoughOfAnotherDoes() {
        assertThat(warnings(setup(20, 3.1), "600 g", "strawberry", "500 g", "sugar"))
                .contains("sets-badly");
        assertThat(warnings(setup(20, 3.1), "300 g", "strawberry", "400 g", "red currant", "500 g", "sugar"))
                .doesNotContain("sets-badly");
    }

    @Test
    void littleSugar_isSaid_andNoneAtAllToo() {
        assertThat(warnings(setup(20, 3.1), "1 kg", "plum", "300 g", "sugar")).contains("sugar-low");
        assertThat(warnings(setup(20, 3.1), "1 kg", "plum")).contains("sugar-low");
        assertThat(warnings(setup(20, 3.1), "1 kg", "plum", "800 g", "sugar")).isEmpty();
    }

    @Test
    void acidity_isJudgedBySoEasyToPreserve_andByTheLimitOfAcidFoods() {
        assertThat(warnings(setup(20, 3.8), "1 kg", "plum", "800 g", "sugar")).containsExactly("ph-high");
        assertThat(warnings(setup(20, 2.5), "1 kg", "plum", "800 g", "sugar")).containsExactly("ph-low");
        assertThat(warnings(setup(20, 4.8), "1 kg", "plum", "800 g", "sugar")).containsExactly("not-acid");
    }

    @Test
    void addedPectin_setsByItsOwnRecipe() {
        assertThat(warnings(setup(20, 3.1), "1 kg", "strawberry", "1 kg", "sugar", "1", "powdered pectin"))
                .containsExactly("added-pectin");
    }

    @Test
    void sugarAlone_hasNothingToDriveOff() {
        assertThat(warnings(setup(20, 3.1), "1 kg", "sugar", "100 g", "orange")).contains("nothing-to-drive-off");
    }
}
