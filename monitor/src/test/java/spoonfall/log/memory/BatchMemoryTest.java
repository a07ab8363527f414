package spoonfall.log.memory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.book.After;
import spoonfall.book.Firmness;
import spoonfall.book.OutcomeWords;
import spoonfall.calibration.Correction;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;
import spoonfall.cook.Cooks;
import spoonfall.food.Foods;
import spoonfall.food.Ingredient;
import spoonfall.food.IngredientLine;
import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.lab.Scenario;
import spoonfall.learn.Batch;
import spoonfall.learn.CookFacts;
import spoonfall.learn.Diagnosis;
import spoonfall.learn.Evidence;
import spoonfall.learn.Finding;
import spoonfall.log.CalibrationBook;
import spoonfall.log.DataFolder;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.book.BatchBook;
import spoonfall.plan.BatchPlan;
import spoonfall.plan.Jar;
import spoonfall.plan.PlanSetup;
import spoonfall.probe.trace.Trace;

/** What the record says of simulated cooks. */
final class BatchMemoryTest {
    @TempDir
    Path folder = Path.of("");

    private DataFolder data() {
        return new DataFolder(folder);
    }

    private BatchMemory memory() {
        return new BatchMemory(data(), new BatchFile(data().notebook()), FoodBook::usual);
    }

    private long cooked(Scenario scenario) {
        Trace trace = Cooks.trace(scenario, 1);
        try (CookLog log = CookLog.openOrMake(data().cooks())) {
            return log.take(trace, Cooks.settings(trace));
        }
    }

    @Test
    void aCleanCook_stoppedAtItsTarget_afterAWhileAtTheBoil() {
        CookFacts facts = memory().facts(cooked(Scenario.CLEAN));
        assertThat(facts.finalRiseC().orElseThrow()).isCloseTo(facts.targetRiseC(), within(0.3));
        assertThat(facts.boilMinutes().orElseThrow()).isBetween(10.0, 60.0);
        assertThat(facts.base().from()).isEqualTo(CookFacts.From.GIVEN);
        assertThat(facts.scorched()).isFalse();
        assertThat(facts.probeHighC()).isEmpty();
        assertThat(facts.earlierMinutes()).isZero();
    }

    @Test
    void whatWentWrong_isInTheFacts() {
        CookFacts past = memory().facts(cooked(Scenario.PAST));
        assertThat(past.finalRiseC().orElseThrow() - past.targetRiseC()).isBetween(1.2, 2.5);
        assertThat(past.pastMinutes().orElseThrow()).isGreaterThan(1);
        assertThat(memory().facts(cooked(Scenario.SCORCH)).scorched()).isTrue();
        assertThat(memory().facts(cooked(Scenario.STALL)).stalled()).isTrue();
    }

    @Test
    void theNextCalibration_ofTheOnlyThermometer_isBroughtToTheCook() {
        long id = cooked(Scenario.CLEAN);
        Correction reads08High = new Correction(List.of(new Point(Reference.boilingWater(95.8, 0.4), 96.6, 0.02, 0)));
        CalibrationBook book = data().calibrations();
        book.add(entry("/dev/a", "2001-01-01T00:00:00Z", reads08High));
        assertThat(memory().facts(id).probeHighC()).isEmpty(); // that was before the cook
        book.add(entry("/dev/a", "2101-01-01T00:00:00Z", reads08High));
        assertThat(memory().facts(id).probeHighC().orElseThrow()).isCloseTo(0.8, within(1e-6));
        assertThat(memory().diagnosis(id, Optional.of(Firmness.SOFT), Optional.empty())
                        .findings())
                .extracting(Finding::id)
                .contains("probe-high");
        book.add(entry("/dev/b", "2101-01-02T00:00:00Z", reads08High));
        assertThat(memory().facts(id).probeHighC()).isEmpty(); // which of the two it was, nobody knows
    }

    private static CalibrationBook.Entry entry(String probe, String at, Correction correction) {
        return new CalibrationBook.Entry(probe, probe, Instant.parse(at), "", false, correction);
    }

    @Test
    void aRecook_goesOnWithTheOldCook() {
        long old = cooked(Scenario.CLEAN);
        long later = cooked(Scenario.CLEAN);
        try (CookLog log = CookLog.open(data().cooks())) {
            log.say(later, BatchMemory.RECOOK, BatchMemory.recook(old));
            assertThat(BatchMemory.recookOf(log.cook(later))).hasValue(old);
        }
        double minutes = memory().facts(old).boilMinutes().orElseThrow();
        assertThat(memory().facts(later).earlierMinutes()).isCloseTo(minutes, within(1e-9));
        assertThatThrownBy(() -> memory().recooks(old, old)).hasMessageContaining("which did not begin before it");
        assertThatThrownBy(() -> memory().recooks(later, 99)).hasMessageContaining("there is no cook 99");
        try (CookLog log = CookLog.open(data().cooks())) {
            log.say(old, BatchMemory.RECOOK, BatchMemory.recook(later)); // no circle keeps it from an answer
        }
        assertThat(memory().facts(later).earlierMinutes()).isCloseTo(minutes, within(1e-9));
    }

    @Test
    void whatTheBookWasTold_isLearntFrom_andDiagnosed() {
        long id = cooked(Scenario.PAST);
        BatchBook book = new BatchBook(data().cooks());
        book.say(id, said(After.DAY, Optional.of(Firmness.FIRM), Optional.empty())); // no fruit yet: not learnt from
        BatchMemory memory = new BatchMemory(data(), new BookOutcomes(data().cooks()), FoodBook::usual);
        assertThat(memory.learning().batches()).isEmpty();
        book.say(id, said(After.MONTH, Optional.of(Firmness.STIFF), Optional.of("Seville orange")));
        assertThat(memory.learning().batches())
                .extracting(Batch::id, Batch::fruit, Batch::set)
                .containsExactly(tuple(id, "Seville orange", Firmness.STIFF));
        assertThat(memory.learning().propose("seville orange").riseC()).isLessThan(4.44);
        assertThat(memory.diagnosis(id).headline()).startsWith("It came out stiff.");
    }

    private static OutcomeWords said(After after, Optional<Firmness> set, Optional<String> fruit) {
        return new OutcomeWords(after, set, Optional.empty(), Optional.empty(), fruit, OptionalInt.empty());
    }

    private static PlannedBatch plan(OptionalDouble acidity, String... lines) {
        Foods foods = FoodBook.usual();
        List<Ingredient> ingredients =
                Stream.of(lines).map(line -> IngredientLine.read(line, foods)).toList();
        OptionalDouble none = OptionalDouble.empty();
        return PlannedBatch.of(BatchPlan.of(
                ingredients, new PlanSetup(101_325, 100, 4.44, Optional.empty(), none, acidity, Jar.HALF_PINT)));
    }

    private void plans(long id, PlannedBatch plan) {
        try (CookLog log = CookLog.open(data().cooks())) {
            log.say(id, PlannedBatch.WORD, PlannedBatch.detail(Optional.of(plan)));
        }
    }

    private List<Finding> whySoft(long id) {
        return memory().diagnosis(id, Optional.of(Firmness.SOFT), Optional.empty())
                .findings();
    }

    @Test
    void thePlanInTheRecord_bearsWitness() {
        long id = cooked(Scenario.CLEAN);
        plans(id, plan(OptionalDouble.empty(), "1 kg strawberries", "400 g sugar"));
        Evidence evidence = memory().facts(id).plan().orElseThrow();
        assertThat(evidence.sugarToFruit()).hasValueCloseTo(0.4, within(1e-9));
        assertThat(evidence.setting()).contains(Evidence.Setting.NEEDS); // So Easy to Preserve
        assertThat(whySoft(id))
                .filteredOn(Finding::cause)
                .extracting(Finding::id)
                .contains("sugar-low", "pectin")
                .doesNotContain("acid");
        ObjectNode unknown =
                PlannedBatch.detail(Optional.of(plan(OptionalDouble.empty(), "1 kg damsons", "1 kg sugar")));
        unknown.withArray("ingredients").addObject().put("amount", "1 kg").put("food", "moon dust");
        plans(id, PlannedBatch.of(unknown).orElseThrow());
        assertThat(memory().facts(id).plan()).isEmpty();
    }

    /** 2.8 to 3.4: So Easy to Preserve. */
    @Test
    void aPlannedPh_isKept_andSaysWhyABatchIsSoft() {
        long id = cooked(Scenario.CLEAN);
        plans(id, plan(OptionalDouble.of(3.9), "1 kg damsons", "1 kg sugar"));
        assertThat(memory().facts(id).plan().orElseThrow().ph()).hasValue(3.9);
        assertThat(whySoft(id))
                .filteredOn(finding -> finding.id().equals("acid"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.cause()).isTrue();
                    assertThat(finding.text()).contains("At pH 3.9 it sets badly");
                });
        plans(id, plan(OptionalDouble.of(3.1), "1 kg damsons", "1 kg sugar"));
        assertThat(whySoft(id)).extracting(Finding::id).doesNotContain("acid");
    }

    @Test
    void aNotebook_isLearntFrom_andLearntAnewWhenItChanges() throws IOException {
        assertThat(memory().learning().batches()).isEmpty();
        BatchMemory memory = memory();
        write("fruit,final_rise,set\n Orange ,8F,soft\nquince,4.9C,Right\n");
        assertThat(memory.learning().batches())
                .extracting(Batch::fruit, Batch::set)
                .containsExactly(tuple("Orange", Firmness.SOFT), tuple("quince", Firmness.RIGHT));
        assertThat(memory.learning()).isSameAs(memory.learning());
        write("fruit,final_rise,set\norange,8F,firm\n");
        assertThat(memory.learning().propose("orange").riseC()).isLessThan(4.4);
    }

    @Test
    void aNotebookThatCannotBe_isRefusedInOneLineThatNamesThePlace() throws IOException {
        write("fruit,final_rise,set\norange,8F,soft\norange,warm,soft\n");
        assertThatThrownBy(() -> memory().learning())
                .hasMessageContaining("batches.csv, batch 2: ")
                .hasMessageContaining("warm");
        write("fruit,final_rise,set\norange,8F\n");
        assertThatThrownBy(() -> memory().learning()).hasMessageContaining("such as orange,4.6C,soft");
        write("what,is,this\n");
        assertThatThrownBy(() -> memory().learning()).hasMessageContaining("the heading must be fruit,final_rise,set");
        write("fruit,final_rise,set\n\"orange,8F,soft\n");
        assertThatThrownBy(() -> memory().learning()).isInstanceOf(IllegalArgumentException.class);
        Files.write(data().notebook(), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
        assertThatThrownBy(() -> memory().learning()).hasMessageContaining("UTF-8");
    }

    private void write(String text) throws IOException {
        Files.writeString(data().notebook(), text);
    }

    @Test
    void aBatchOfWhichNobodySaidAnything_isDiagnosedWithoutAFruit() {
        Diagnosis diagnosis = memory().diagnosis(cooked(Scenario.CLEAN));
        assertThat(diagnosis.headline()).isEqualTo("Nobody has said how it set.");
    }
}
