package spoonfall.kitchen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.cook.Forecast;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.food.Foods;
import spoonfall.food.Ingredient;
import spoonfall.food.IngredientLine;
import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.kitchen.pantry.Pantry;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.plan.PlanState;
import spoonfall.kitchen.plan.PlannedCook;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.lab.Scenario;
import spoonfall.log.CookInput;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.physics.Air;
import spoonfall.physics.Water;
import spoonfall.plan.BatchPlan;
import spoonfall.plan.HobPower;
import spoonfall.plan.Jar;
import spoonfall.plan.PlanSetup;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** A pan whose batch was planned. */
@Timeout(60)
final class PlannedCookTest {
    @TempDir
    private Path folder;

    private final KeptJournal journal = new KeptJournal();
    private final Trace trace = Cooks.trace(Scenario.CLEAN, 1);

    private static PlannedBatch batch() {
        Foods foods = FoodBook.usual();
        List<Ingredient> ingredients = Stream.of("600 g seville orange", "660 mL water", "740 g sugar")
                .map(line -> IngredientLine.read(line, foods))
                .toList();
        double pressurePa = Air.pressurePa(1240);
        return PlannedBatch.of(BatchPlan.of(
                ingredients,
                new PlanSetup(
                        pressurePa,
                        Water.boilingPointC(pressurePa),
                        4.44,
                        Optional.of(HobPower.given(1.4)),
                        java.util.OptionalDouble.empty(),
                        java.util.OptionalDouble.empty(),
                        Jar.HALF_PINT)));
    }

    /** A kitchen whose thermometer says what it is told. */
    private final class Run implements AutoCloseable {
        final ToldProbe probe = new ToldProbe("pan", 0);
        final Kitchen kitchen = new Kitchen(
                KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1),
                clock -> List.of(probe),
                System::nanoTime,
                Thermometry.none(),
                journal);

        Run() {
            kitchen.start();
        }

        void play(int from, int until) {
            for (int i = from; i < until && i < trace.size(); i++) {
                probe.say(trace.temperatureC(i).orElseThrow(), 1);
            }
            kitchen.state().join();
        }

        @Override
        public void close() {
            kitchen.close();
        }
    }

    private List<String> words() {
        return journal.inputs.stream()
                .flatMap(input -> input instanceof CookInput.Word word ? Stream.of(word.kind()) : Stream.empty())
                .toList();
    }

    @Test
    void aPlanMadeBeforeTheCook_isThePlanOfTheCook_andInItsRecord() {
        try (Run run = new Run()) {
            PlanState waiting = run.kitchen.plans().cook(Optional.of(batch())).join();
            assertThat(waiting.next()).isTrue();
            assertThat(words()).doesNotContain("plan");
            run.play(0, 60);
            PlanState cooking = run.kitchen.plans().state().join();
            assertThat(cooking.next()).isFalse();
            assertThat(cooking.batch()).contains(batch());
            assertThat(words()).contains("plan");
        }
    }

    @Test
    void afterAKill_thePlanAndTheYieldAreStillThere() {
        try (Run first = new Run()) {
            first.play(0, 60);
            first.kitchen.plans().cook(Optional.of(batch())).join();
            first.play(60, 120);
        }
        try (Run second = new Run()) {
            assertThat(second.kitchen.plans().state().join().batch()).contains(batch());
            assertThat(second.kitchen
                            .plans()
                            .filled(5, Pantry.usual())
                            .join()
                            .yield()
                            .orElse(""))
                    .contains("You filled 5", "as planned");
        }
        try (Run third = new Run()) {
            assertThat(third.kitchen.plans().state().join().filled()).hasValue(5);
            third.kitchen.plans().cook(Optional.empty()).join();
        }
        try (Run fourth = new Run()) {
            assertThat(fourth.kitchen.plans().state().join().batch()).isEmpty();
        }
    }

    @Test
    void aPlanForTheNextCook_outlastsAKillAndANight_andIsUsedOnce() {
        try (Run evening = new Run()) {
            evening.kitchen.plans().cook(Optional.of(batch())).join();
        }
        journal.plan.away = Duration.ofHours(14);
        try (Run morning = new Run()) {
            assertThat(morning.kitchen.plans().state().join().batch()).contains(batch());
            morning.play(0, 60);
            assertThat(words()).contains("plan");
        }
        journal.header = null; // that cook is over
        try (Run later = new Run()) {
            assertThat(later.kitchen.plans().state().join().batch()).isEmpty();
        }
    }

    @Test
    void aPlanThatNobodyCooked_isForgotten_afterTwoDays() {
        try (Run first = new Run()) {
            first.kitchen.plans().cook(Optional.of(batch())).join();
        }
        journal.plan.away = Duration.ofHours(49);
        try (Run second = new Run()) {
            assertThat(second.kitchen.plans().state().join().batch()).isEmpty();
        }
    }

    @Test
    void theFirstForecast_isSurer_whenTheBatchWasPlanned() {
        assertThat(firstForecastWidthS(Optional.of(batch()))).isLessThan(firstForecastWidthS(Optional.empty()));
    }

    private double firstForecastWidthS(Optional<PlannedBatch> batch) {
        CookMonitor monitor = new CookMonitor(Cooks.settings(trace), 0);
        batch.flatMap(PlannedCook::prior).ifPresent(monitor::expect);
        for (int i = 0; i < trace.size(); i++) {
            long atNanos = Math.round(trace.elapsedS(i) * 1e9);
            monitor.accept(Reading.good("pan", atNanos, trace.temperatureC(i).orElseThrow(), ""));
            Optional<Forecast> forecast = monitor.status().forecast();
            if (forecast.isPresent()) {
                return forecast.get().highS() - forecast.get().lowS();
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    @Test
    void theFirstCountOfACook_teachesItsHob_andOthersAtTheSameTimeDoNot() {
        Path hob = folder.resolve("hob.json");
        Pantry pantry = Pantry.of(folder.resolve("foods.csv"), hob, Optional.empty());
        try (Run run = new Run()) {
            run.kitchen.plans().cook(Optional.of(batch())).join();
            run.play(0, trace.size());
            List<CompletableFuture<PlanState>> counts = Stream.of(4, 5, 6)
                    .map(jars -> run.kitchen.plans().filled(jars, pantry))
                    .toList();
            counts.forEach(CompletableFuture::join);
            assertThat(run.kitchen.plans().state().join().filled()).hasValue(6);
        }
        assertThat(hob).content().containsOnlyOnce("waterKgPerMin");
    }

    @Test
    void jarsThatNobodyFills_areRefused() {
        try (Run run = new Run()) {
            assertThatThrownBy(
                            () -> run.kitchen.plans().filled(-1, Pantry.usual()).join())
                    .hasMessageContaining("how many jars?");
            assertThatThrownBy(() ->
                            run.kitchen.plans().filled(501, Pantry.usual()).join())
                    .hasMessageContaining("0 to 500");
        }
    }
}
