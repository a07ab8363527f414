package spoonfall.afternoon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.afternoon.Timeline.Moment;
import spoonfall.afternoon.Timeline.State;
import spoonfall.cook.CookEvent;
import spoonfall.cook.Cooks;
import spoonfall.cook.Forecast;
import spoonfall.cook.ReminderName;
import spoonfall.cook.Stage;
import spoonfall.cook.WentIn;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.lab.Scenario;
import spoonfall.log.TraceReplay;
import spoonfall.probe.trace.Trace;

/** What an afternoon makes of the probe and of taps. */
final class AfternoonTest {
    private static Told usual() {
        return new Told(UsualAfternoon.notes());
    }

    /** Off the heat at second 5,100: softened, sugared, boiled and tested. */
    private static Told offTheHeat() {
        return usual().pan(Stage.SIMMERING, 0.05, 40)
                .tap("soften")
                .pan(Stage.WARMING, 0.05, 10)
                .pan(Stage.ROLLING_BOIL, 0.45, 25)
                .pan(Stage.TEST_WINDOW, 0.62, 10)
                .tap("test")
                .tap("off");
    }

    @Test
    void aWholeAfternoon_goesFromSoftPeelToCooledJars_byProbeClockAndTaps() {
        Told told = offTheHeat();
        assertThat(told.step("soften").endedT()).hasValue(2400);
        assertThat(told.step("soften").by()).isEqualTo(By.HAND);
        assertThat(told.step("boil").begunT()).hasValue(3000);
        assertThat(told.step("boil").by()).isEqualTo(By.PROBE);
        assertThat(told.step("test").begunT()).hasValue(4500);
        assertThat(told.now()).isEqualTo("spirit");
        told.tap("spirit").later(9);
        assertThat(told.now()).isEqualTo("rest");
        told.later(2);
        assertThat(told.now()).isEqualTo("fill");
        assertThat(told.step("rest").by()).isEqualTo(By.CLOCK);
        told.later(8).tap("fill").later(1).tap("wipe").tap("lid").later(3);
        told.afternoon.stepStarted("process", told.t());
        told.later(10);
        told.afternoon.stepDone("process", told.t());
        assertThat(told.step("process").by()).isEqualTo(By.TIMER);
        assertThat(told.now()).isEqualTo("rest-jars");
        told.later(6);
        assertThat(told.now()).isEqualTo("cool");
        told.later(12 * 60);
        assertThat(told.timeline().over()).isTrue();
        assertThat(told.timeline().steps()).allMatch(line -> line.state() == State.DONE);
    }

    @Test
    void theProbeRunsAhead_andWhatCameBeforeIsDoneAtTheTimeSeen() {
        Told told = usual().pan(Stage.WARMING, 0.3, 12).pan(Stage.ROLLING_BOIL, 0.5, 1);
        assertThat(told.now()).isEqualTo("boil");
        assertThat(told.step("soften").endedT()).hasValue(720);
        assertThat(told.step("sugar").endedT()).hasValue(720);
        told.pan(Stage.AT_GEL_POINT, 0.65, 1);
        assertThat(told.now()).isEqualTo("test");
    }

    @Test
    void fruitThatBoilsInWater_isNotYetTheBoil_andSugarThatGoesInThenIsSeen() {
        Told told = usual().pan(Stage.ROLLING_BOIL, 0.15, 30);
        assertThat(told.now()).isEqualTo("soften");
        told.pan(Told.pan(Stage.ROLLING_BOIL, 0.15, Optional.empty(), WentIn.SOMETHING_COLD), 2);
        assertThat(told.now()).isEqualTo("sugar");
        assertThat(told.step("soften").endedT()).hasValue(1800);
        told.pan(Stage.ROLLING_BOIL, 0.45, 1);
        assertThat(told.now()).isEqualTo("boil");
    }

    @Test
    void sugarThatGoesInLate_startsNothingTwice() {
        Told told = usual().pan(Stage.ROLLING_BOIL, 0.4, 10)
                .pan(Told.pan(Stage.ROLLING_BOIL, 0.5, Optional.empty(), WentIn.SOMETHING_COLD), 3)
                .pan(Stage.ROLLING_BOIL, 0.5, 3);
        assertThat(told.now()).isEqualTo("boil");
        assertThat(told.step("boil").begunT()).hasValue(0);
    }

    @Test
    void aSetTest_isNotTheEndOfTheBoil_andAPanThatStaysOffTheHeatIs() {
        Told told = usual().pan(Stage.ROLLING_BOIL, 0.5, 20).pan(Stage.TEST_WINDOW, 0.6, 2);
        told.pan(Stage.OFF_THE_HEAT, 0.6, 2).pan(Stage.TEST_WINDOW, 0.6, 3);
        assertThat(told.now()).isEqualTo("test");
        told.pan(Stage.OFF_THE_HEAT, 0.6, 4);
        assertThat(told.step("off").endedT()).hasValue(27 * 60);
        assertThat(told.step("spirit").state()).isEqualTo(State.SKIPPED);
        assertThat(told.now()).isEqualTo("rest");
        assertThat(told.step("rest").begunT()).as("counted from off the heat").hasValue(27 * 60);
    }

    @Test
    void itHasSet_thenOffTheHeatIsBelievedAtOnce() {
        Told told = usual().pan(Stage.TEST_WINDOW, 0.6, 5).tap("test").pan(Stage.OFF_THE_HEAT, 0.6, 0.1);
        assertThat(told.step("off").state()).isEqualTo(State.DONE);
    }

    @Test
    void jarsThatNobodyWarmed_areToBeWarmedUntilTheyAreFilled() {
        Told told = offTheHeat().pan(Stage.OFF_THE_HEAT, 0.6, 15);
        assertThat(told.now()).isEqualTo("fill");
        Timeline.PreparationLine cold = told.preparation("jars");
        assertThat(cold.state()).isEqualTo(State.NOW);
        assertThat(cold.late()).isTrue();
        double sinceT = cold.due().orElseThrow().t();
        assertThat(told.preparation("plates").state()).isEqualTo(State.SKIPPED);
        told.pan(Stage.OFF_THE_HEAT, 0.6, 1);
        assertThat(told.preparation("jars").due().orElseThrow().t())
                .as("it stays put")
                .isEqualTo(sinceT);
        told.tap("fill");
        assertThat(told.preparation("jars").state()).isEqualTo(State.SKIPPED);
    }

    @Test
    void jarsThatSomebodyWarmedLate_areWarm() {
        Told told = offTheHeat().pan(Stage.OFF_THE_HEAT, 0.6, 5);
        told.afternoon.prepare("jars", told.t());
        assertThat(told.preparation("jars").state()).isEqualTo(State.DONE);
    }

    @Test
    void aSecondBoil_takesBackWhatCameAfter_untilSomebodyHasFilledTheJars() {
        Told told = offTheHeat().pan(Stage.OFF_THE_HEAT, 0.6, 15);
        assertThat(told.now()).isEqualTo("fill");
        told.pan(Stage.TEST_WINDOW, 0.6, 2);
        assertThat(told.now()).isEqualTo("test");
        assertThat(told.step("rest").state()).isEqualTo(State.LATER);
        told.tap("off").pan(Stage.OFF_THE_HEAT, 0.6, 12).tap("fill").pan(Stage.ROLLING_BOIL, 0.6, 2);
        assertThat(told.now()).isEqualTo("wipe");
    }

    /** Before, it was let rest and poured into the jars, whatever the test had found. */
    @Test
    void aPanThatWasTestedAndNotSet_isNotLetRest_howeverLongItIsOff() {
        Told told = usual().pan(Stage.ROLLING_BOIL, 0.5, 20).pan(Stage.TEST_WINDOW, 0.6, 1);
        told.notSet(true).pan(Stage.OFF_THE_HEAT, 0.6, 10);
        assertThat(told.now()).isEqualTo("test");
        told.notSet(false).pan(Stage.OFF_THE_HEAT, 0.6, 4);
        assertThat(told.now()).isEqualTo("rest");
    }

    @Test
    void aTestThatIsAnsweredLate_takesBackThatItIsOff() {
        Told told = usual().pan(Stage.ROLLING_BOIL, 0.5, 20).pan(Stage.TEST_WINDOW, 0.6, 1);
        told.pan(Stage.OFF_THE_HEAT, 0.6, 4);
        assertThat(told.now()).isNotEqualTo("test");
        told.notSet(true).pan(Stage.OFF_THE_HEAT, 0.6, 1);
        assertThat(told.now()).isEqualTo("test");
    }

    @Test
    void aPanThatOnlyStandsStillShortOfTheSet_isNotOffTheHeat() {
        Told told = usual().pan(Stage.ROLLING_BOIL, 0.5, 20).pan(Stage.OFF_THE_HEAT, 0.5, 10);
        assertThat(told.now()).isEqualTo("boil");
    }

    @Test
    void sugarThatGoesIntoFruitThatSimmers_isSeen() {
        Told told = usual().pan(Stage.SIMMERING, 0.05, 30);
        told.pan(Told.pan(Stage.WARMING, 0.05, Optional.empty(), WentIn.SUGAR), 2);
        assertThat(told.now()).isEqualTo("sugar");
    }

    @Test
    void ofAPanThatCools_nothingIsForeseen_thoughItWouldBeThereSoonIfItWentBack() {
        Told told = usual().climb(20, 15);
        Timeline climbing = told.timeline();
        assertThat(climbing.onlyThePanKnows(told.step("test"))).isFalse();
        Forecast onceBack = new Forecast(60, 360, 300, 420, 0.01);
        told.pan(Told.pan(Stage.OFF_THE_HEAT, 0.5, Optional.of(onceBack), WentIn.NOTHING), 1);
        assertThat(told.timeline().onlyThePanKnows(told.step("test"))).isTrue();
        told.pan(Told.pan(Stage.ROLLING_BOIL, 0.5, Optional.of(onceBack), WentIn.NOTHING), 1);
        assertThat(told.timeline().onlyThePanKnows(told.step("test"))).isFalse();
    }

    @Test
    void aSpiritThatIsLeftOut_doesNotLengthenTheRest() {
        Told told = offTheHeat();
        told.later(1);
        told.afternoon.skip("spirit", told.t());
        assertThat(told.step("rest").begunT()).hasValue(5100);
        told.later(9.1);
        assertThat(told.now()).isEqualTo("fill");
        Told unanswered = offTheHeat().later(10.1);
        assertThat(unanswered.now()).isEqualTo("fill");
        assertThat(unanswered.step("fill").begunT()).hasValue(5700);
    }

    @Test
    void theCookRunsAhead_andWhatTheProbeSeesLaterChangesNothing() {
        Told told = usual().pan(Stage.ROLLING_BOIL, 0.6, 5).tap("off").pan(Stage.TEST_WINDOW, 0.6, 1);
        assertThat(told.now()).isEqualTo("spirit");
    }

    @Test
    void undo_takesBackTheNewestWordFirst_andKeepsWhatTheProbeSawMeanwhile() {
        Told told = usual().pan(Stage.ROLLING_BOIL, 0.5, 5).tap("test");
        told.pan(Stage.TEST_WINDOW, 0.6, 2);
        assertThat(told.now()).isEqualTo("off");
        told.undo();
        assertThat(told.now()).isEqualTo("test");
        assertThat(told.step("test").begunT())
                .as("what the probe saw while it did not matter")
                .hasValue(300);
        assertThat(told.timeline().undo())
                .hasValueSatisfying(undo -> assertThat(undo.words()).isEqualTo("it is close to setting"));
        told.undo();
        assertThat(told.now()).as("what the probe saw can be taken back").isEqualTo("boil");
        told.pan(Stage.TEST_WINDOW, 0.6, 2);
        assertThat(told.now()).as("and is not seen again").isEqualTo("boil");
    }

    @Test
    void twoWhoUndoAtOnce_undoOneThing_andATapThatComesTwiceIsHarmless() {
        Told told = offTheHeat().tap("spirit");
        told.later(11).tap("fill").tap("fill");
        assertThat(told.now()).isEqualTo("wipe");
        long mark = told.timeline().undo().orElseThrow().mark();
        told.afternoon.undo(mark);
        told.afternoon.undo(mark);
        assertThat(told.now()).isEqualTo("fill");
    }

    @Test
    void edits_countAtOnce_andAreUndone() {
        Told told = offTheHeat();
        told.afternoon.edit(
                notes -> notes.changed("rest", Optional.of("Let it stand"), Optional.of(15)), "Rest", told.t());
        told.afternoon.edit(notes -> notes.without("spirit"), "Spirit", told.t());
        assertThat(told.now()).isEqualTo("rest");
        assertThat(told.step("rest").step().name()).isEqualTo("Let it stand");
        told.later(14);
        assertThat(told.now()).isEqualTo("rest");
        told.undo();
        told.undo();
        assertThat(told.now()).isEqualTo("fill");
        told.afternoon.edit(notes -> notes.with(Step.own("skim", "Skim", 3), "fill"), "Skim", told.t());
        assertThat(told.tap("fill").now()).isEqualTo("skim");
        assertThatThrownBy(() -> told.tap("nothing")).hasMessageContaining("no step \"nothing\"");
        assertThatThrownBy(() ->
                        told.afternoon.edit(notes -> notes.changed("rest", Optional.empty(), Optional.of(-1)), "", 0))
                .hasMessageContaining("0 to 2880 minutes");
    }

    @Test
    void everything_isPlannedBackFromTheForecast_noMorePreciselyThanItIsKnown() {
        Told told = usual().climb(10, 20);
        double setT = told.t() + 1200;
        Moment test = told.step("test").begins().orElseThrow();
        assertThat(test.t()).isCloseTo(setT - 300, within(60.0));
        assertThat(test.forecast()).isTrue();
        Moment off = told.step("off").begins().orElseThrow();
        assertThat(off.t()).isCloseTo(setT, within(60.0));
        assertThat(off.untilT() - off.fromT()).isCloseTo(0.5 * 1200, within(60.0)); // the interval is calmed, too
        // off the heat 1, rest 10, fill 10, wipe 2, lids 2
        Moment process = told.step("process").begins().orElseThrow();
        assertThat(process.t()).isCloseTo(off.t() + 25 * 60, within(1e-6));
        Moment canner = told.preparation("canner").due().orElseThrow();
        assertThat(canner.t()).isCloseTo(process.t() - 30 * 60, within(1e-6));
        assertThat(told.preparation("plates").due().orElseThrow().t()).isCloseTo(test.t() - 900, within(1e-6));
        assertThat(told.preparation("jars").due().orElseThrow().t()).isCloseTo(off.t() - 600, within(1e-6));
    }

    @Test
    void theCanner_isSaidOnceInTime_andNotWhenItIsOn() {
        Told told = usual().climb(30, 1);
        assertThat(told.afternoon.takeReminders())
                .singleElement()
                .satisfies(one -> assertThat(one.marked(0))
                        .startsWith("Heat the canner now. \"Process the jars\" comes at about {clock:"))
                .satisfies(one -> assertThat(one.t()).isBetween(24 * 60.0, 28 * 60.0));
        Told on = usual().climb(10, 21);
        on.afternoon.prepare("canner", on.t());
        on.climb(20, 1);
        assertThat(on.afternoon.takeReminders()).isEmpty();
        assertThat(on.preparation("canner").state()).isEqualTo(State.DONE);
    }

    /** Three that wait for each other and for the call to the set tests would come when those are over. */
    @ParameterizedTest(name = "{0} minutes")
    @ValueSource(ints = {1, 2, 3})
    void whatIsDueJustBeforeTheTests_isSaidBeforeThem(int minutes) {
        Told told = usual();
        for (String name : List.of("spoon", "saucer", "cloth")) {
            told.afternoon.edit(notes -> notes.with(Preparation.own(name, name, minutes, "test")), name, 0);
        }
        told.climb(30, 5);
        assertThat(told.afternoon.takeReminders())
                .extracting(Reminder::name)
                .containsExactlyInAnyOrder("spoon", "saucer", "cloth");
    }

    @Test
    void howLongTheCannerTakes_isLearnt() {
        Told told = usual().climb(10, 20);
        told.afternoon.prepare("canner", told.t());
        told.climb(10, 10);
        told.climb(9.5, 1);
        told.afternoon.prepared("canner", told.t());
        assertThat(told.preparation("canner").preparation().minutes()).isEqualTo(20);
    }

    @Test
    void whatFallsDueByTheClock_isSaid() {
        Told told = offTheHeat().later(11);
        assertThat(told.afternoon.takeReminders()).extracting(Reminder::text).contains("Fill the jars now.");
    }

    @Test
    void aNewCookInThePan_forgetsWhatTheProbeSaw_andKeepsTheWords() {
        Told told = usual().tap("soften").pan(Stage.ROLLING_BOIL, 0.5, 5);
        assertThat(told.now()).isEqualTo("boil");
        told.afternoon.forgetThePan();
        assertThat(told.now()).isEqualTo("sugar");
        told.pan(Stage.ROLLING_BOIL, 0.5, 1);
        assertThat(told.now()).isEqualTo("boil");
    }

    @Test
    void aSimulatedCook_isFollowed_andAgreesWithItsReminders() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        TraceReplay replay = new TraceReplay(trace, Cooks.settings(trace));
        replay.monitor().foretell();
        Afternoon afternoon = new Afternoon(UsualAfternoon.notes());
        List<String> agreed = new ArrayList<>();
        while (replay.hasNext()) {
            List<CookEvent> events = replay.next();
            CookMonitor monitor = replay.monitor();
            afternoon.follow(monitor.timeS(), Optional.of(monitor.status()), monitor.foretold(), false);
            for (CookEvent event : events) {
                if (event instanceof CookEvent.Reminded said && said.reminder() != ReminderName.STIR) {
                    String id = said.reminder() == ReminderName.CHILL_PLATES ? "plates" : "jars";
                    afternoon.timeline(monitor.foretold()).preparations().stream()
                            .filter(line -> line.preparation().id().equals(id))
                            .forEach(line -> {
                                // what is shown stays put for longer than the forecast that reminds
                                assertThat(line.due().orElseThrow().t()).isCloseTo(said.t(), within(90.0));
                                agreed.add(id);
                            });
                }
            }
        }
        assertThat(agreed).containsExactlyInAnyOrder("plates", "jars");
        CookMonitor last = replay.monitor();
        afternoon.follow(last.timeS() + 240, Optional.of(last.status()), last.foretold(), false);
        Timeline end = afternoon.timeline(last.foretold());
        assertThat(end.steps().stream()
                        .filter(line -> line.state() == State.DONE)
                        .map(line -> line.step().id()))
                .contains("soften", "sugar", "boil", "test", "off");
    }
}
