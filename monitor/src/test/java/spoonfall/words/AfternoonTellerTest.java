package spoonfall.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import spoonfall.afternoon.Afternoon;
import spoonfall.afternoon.Timeline;
import spoonfall.afternoon.UsualAfternoon;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;
import spoonfall.cook.Stage;
import spoonfall.cook.WentIn;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.cook.calm.HowLong;
import spoonfall.probe.Quality;

/** What is said of an afternoon. */
final class AfternoonTellerTest {
    private final Afternoon afternoon = new Afternoon(UsualAfternoon.notes());
    private final CalmForecast calm = new CalmForecast();
    private Optional<CalmForecast.Shown> foretold = Optional.empty();

    private Timeline timeline() {
        return afternoon.timeline(foretold);
    }

    private String headline() {
        return AfternoonTeller.say(timeline()).saying().state();
    }

    private void boils(double untilT, double setT) {
        boils(
                untilT,
                t -> Optional.of(new Forecast(setT - t - 300, setT - t, 0.9 * (setT - t), 1.1 * (setT - t), 0.01)));
    }

    private void boils(double untilT, DoubleFunction<Optional<Forecast>> forecast) {
        pan(Stage.ROLLING_BOIL, untilT, forecast);
    }

    private void pan(Stage stage, double untilT, DoubleFunction<Optional<Forecast>> forecast) {
        for (double t = timeline().t(); t <= untilT; t += 5) {
            foretold = calm.settle(t, forecast.apply(t), OptionalDouble.empty());
            afternoon.follow(
                    t,
                    Optional.of(new CookStatus(
                            t,
                            OptionalDouble.of(100),
                            Quality.GOOD,
                            Optional.empty(),
                            stage,
                            OptionalDouble.empty(),
                            OptionalDouble.of(0.5),
                            forecast.apply(t),
                            WentIn.NOTHING,
                            false)),
                    foretold,
                    false);
        }
    }

    @Test
    void theSentence_saysWhatComesNextAndWhen() {
        assertThat(headline()).isEqualTo("First: soften the peel.");
        boils(600, 2700);
        AfternoonSaying saying = AfternoonTeller.say(timeline());
        assertThat(saying.saying().state()).isEqualTo("Next: test the set, in about 30 minutes.");
        assertThat(saying.saying().act()).isEmpty();
        assertThat(saying.act().orElseThrow().label()).isEqualTo("It is time to test");
    }

    @Test
    void whatMustBePrepared_isTheOneActBeforeAnythingElse() {
        boils(1560, 2700);
        AfternoonSaying saying = AfternoonTeller.say(timeline());
        assertThat(saying.saying().act()).isEqualTo("Put the plates in the freezer now.");
        assertThat(saying.act().orElseThrow().does()).isEqualTo("prepared");
        assertThat(saying.other().orElseThrow().id()).isEqualTo("boil");
        assertThat(AfternoonTeller.toPrepare(timeline())).contains("Put the plates in the freezer");
        afternoon.prepare("plates", 1560);
        assertThat(AfternoonTeller.toPrepare(timeline())).isEmpty();
        assertThat(AfternoonTeller.say(timeline()).act().orElseThrow().id()).isEqualTo("boil");
    }

    @Test
    void handwork_isSaidAsNow_andWaitingAsNext() {
        afternoon.tap("off", 100);
        afternoon.skip("spirit", 110);
        assertThat(headline()).isEqualTo("Next: fill the jars, in about 10 minutes.");
        afternoon.prepare("canner", 110);
        afternoon.follow(120, Optional.empty(), Optional.empty(), false);
        afternoon.tap("rest", 130);
        assertThat(headline()).isEqualTo("Now: fill the jars.");
        afternoon.tap("process", 400);
        assertThat(headline()).isEqualTo("Next: lift the jars out to cool, in about 5 minutes.");
        afternoon.tap("rest-jars", 700);
        assertThat(headline()).isEqualTo("Lift the jars out to cool: until {clock:43900}.");
        afternoon.follow(50_000, Optional.empty(), Optional.empty(), false);
        assertThat(headline()).isEqualTo("The afternoon is over.");
    }

    @Test
    void whenToTest_isNotKnown_whileThePanBoilsWithoutAForecast() {
        assertThat(AfternoonTeller.comingUp(timeline(), 0)).allMatch(NextStep::known);
        boils(300, t -> Optional.empty());
        assertThat(AfternoonTeller.comingUp(timeline(), 0))
                .filteredOn(line -> !line.known())
                .extracting(NextStep::text)
                .contains("Test the set")
                .doesNotContain("Warm the jars", "Heat the canner");
        assertThat(headline()).isEqualTo("Next: test the set.");
        boils(600, 2700);
        assertThat(AfternoonTeller.comingUp(timeline(), 0)).allMatch(NextStep::known);
        assertThat(AfternoonTeller.comingUp(timeline(), 0))
                .filteredOn(line -> line.text().equals("Test the set"))
                .allSatisfy(line -> assertThat(line.howLong()).contains(new HowLong(30, 30)));
    }

    @Test
    void whatIsOnlyMoreThanSoMuch_isSaidSo_andWhatTellsNothingIsNotKnown() {
        boils(10, t -> Optional.of(new Forecast(1200, 1500, 500, 5400, 0.01)));
        List.of("plates", "jars", "canner").forEach(id -> afternoon.prepare(id, 10));
        assertThat(headline()).isEqualTo("Next: test the set, in more than 5 minutes.");
        assertThat(AfternoonTeller.comingUp(timeline(), 0))
                .filteredOn(line -> line.text().equals("Take it off the heat"))
                .allSatisfy(line -> assertThat(line.range()).isEmpty())
                .isNotEmpty();
        boils(20, t -> Optional.empty());
        boils(30, t -> Optional.of(new Forecast(1200, 1500, 60, 5400, 0.01)));
        assertThat(headline()).isEqualTo("Next: test the set.");
        assertThat(AfternoonTeller.comingUp(timeline(), 0))
                .filteredOn(line -> line.text().equals("Test the set"))
                .noneMatch(NextStep::known)
                .isNotEmpty();
    }

    @Test
    void whileThePanIsOffTheHeat_itNeedNotBeTakenOff() {
        pan(Stage.TEST_WINDOW, 300, t -> Optional.empty());
        assertThat(texts()).contains("Test the set", "Take it off the heat");
        pan(Stage.OFF_THE_HEAT, 360, t -> Optional.empty());
        assertThat(texts()).contains("Test the set").doesNotContain("Take it off the heat");
        pan(Stage.TEST_WINDOW, 420, t -> Optional.empty());
        assertThat(texts()).contains("Take it off the heat");
    }

    private List<String> texts() {
        return AfternoonTeller.comingUp(timeline(), 0).stream()
                .map(NextStep::text)
                .toList();
    }

    @Test
    void coldJars_standAsStillToDo_andTakeNoTapFromTheStep() {
        afternoon.follow(1000, Optional.empty(), Optional.empty(), false);
        afternoon.tap("off", 1000);
        afternoon.skip("spirit", 1010);
        afternoon.follow(1300, Optional.empty(), Optional.empty(), false);
        AfternoonSaying resting = AfternoonTeller.say(timeline());
        assertThat(resting.saying().act()).isEqualTo("Warm the jars now.");
        assertThat(resting.act().orElseThrow().id()).isEqualTo("rest");
        assertThat(resting.other().orElseThrow().id()).isEqualTo("jars");
        assertThat(texts()).contains("Warm the jars");
        afternoon.tap("fill", 1400);
        assertThat(texts()).doesNotContain("Warm the jars");
    }

    @Test
    void whatComesUp_isAtMostFiveLinesInOrder_withOneNext() {
        for (double untilT = 0; untilT < 2400; untilT += 60) {
            boils(untilT, 2700);
            var lines = AfternoonTeller.comingUp(timeline(), 10);
            assertThat(lines).hasSizeBetween(1, 5);
            assertThat(lines.stream().filter(line -> line.state() == NextStep.State.NEXT))
                    .hasSize(1);
            assertThat(lines.stream().map(NextStep::t)).isSorted();
        }
        var lines = AfternoonTeller.comingUp(timeline(), 10);
        assertThat(lines).extracting(NextStep::text).contains("Boil it hard", "Test the set");
        assertThat(lines.stream().filter(line -> line.text().equals("Take it off the heat")))
                .allSatisfy(line -> assertThat(line.range()).isPresent());
    }
}
