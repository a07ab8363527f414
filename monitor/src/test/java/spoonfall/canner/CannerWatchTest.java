package spoonfall.canner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static spoonfall.canner.ToldCanner.BOIL_C;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.canning.CannerKind;

/** Ten minutes in boiling water at 1,240 m, by taps alone, with a thermometer, and with every trouble. */
final class CannerWatchTest {
    private static final double PROCESS_S = 600;

    /** What may be said while jars are at the boil. */
    private static final List<CannerTap> SAID =
            List.of(CannerTap.BOILS, CannerTap.BOIL_LOST, CannerTap.BOILED, CannerTap.BY_TAPS, CannerTap.BY_PROBE);

    @Test
    void theWaterBoil_isThatOfTheKitchensElevation() {
        JarLoad load = ToldCanner.load(CannerKind.BOILING_WATER, 1, Optional.empty());
        assertThat(load.waterBoilC()).isCloseTo(BOIL_C, within(0.01));
    }

    @Test
    void byTapsAlone_aLoadGoesFromTheBoilToTheShelf() {
        ToldCanner told = ToldCanner.boilingWater().passes(300);
        assertThat(told.phase()).isEqualTo(CannerPhase.WAITING);
        told.tap(CannerTap.BOILS);
        assertThat(told.remainingS()).isEqualTo(PROCESS_S);
        told.passes(PROCESS_S - 1);
        assertThat(told.phase()).isEqualTo(CannerPhase.PROCESSING);
        told.passes(1);
        assertThat(told.phase()).isEqualTo(CannerPhase.HEAT_OFF);
        assertThat(told.calls()).containsExactly("jars-processed-1 raised");
        told.passes(60).tap(CannerTap.HEAT_OFF);
        assertThat(told.remainingS()).isEqualTo(300); // NCHFP: five minutes without heat and lid
        told.passes(299);
        assertThat(told.phase()).isEqualTo(CannerPhase.RESTING);
        told.passes(1);
        assertThat(told.phase()).isEqualTo(CannerPhase.LIFT_OUT);
        told.tap(CannerTap.LIFTED);
        assertThat(told.phase()).isEqualTo(CannerPhase.EMPTY);
        assertThat(told.view().shelf()).hasSize(1);
        assertThat(told.view().alarms()).isEmpty();
    }

    @Test
    void theThermometer_startsTheTimeOnlyAfterHalfAMinuteAtTheBoil() {
        ToldCanner told = ToldCanner.boilingWater();
        for (double c = 60; c < BOIL_C - 0.1; c += 0.02) { // 1.2 °C a minute
            told.says(c, 1);
        }
        assertThat(told.phase()).as("on its way up").isEqualTo(CannerPhase.WAITING);
        told.says(BOIL_C - 0.1, 60);
        assertThat(told.phase()).isEqualTo(CannerPhase.PROCESSING);
        told.says(BOIL_C - 0.1, 600);
        assertThat(told.phase()).isEqualTo(CannerPhase.HEAT_OFF);
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 90, BOIL_C - 1.1, BOIL_C + 3, 130})
    void aTemperatureThatIsNotBoilingWater_neverStartsTheTime(double temperatureC) {
        assertThat(ToldCanner.boilingWater().says(temperatureC, 3600).phase()).isEqualTo(CannerPhase.WAITING);
    }

    @Test
    void aLostBoil_callsAndTheWholeTimeStartsAgain() {
        ToldCanner told = ToldCanner.boilingWater().says(BOIL_C, 40).says(BOIL_C, 400);
        assertThat(told.remainingS()).isLessThan(200);
        told.says(BOIL_C - 3, 12);
        assertThat(told.phase()).isEqualTo(CannerPhase.BOIL_LOST);
        assertThat(told.calls()).containsExactly("jars-boil-lost-1 raised");
        assertThat(told.view().say().act()).isEqualTo("Bring it back: the whole 10 minutes start again.");
        told.says(BOIL_C - 3, 300);
        assertThat(told.phase()).isEqualTo(CannerPhase.BOIL_LOST);
        told.says(BOIL_C, 40);
        assertThat(told.phase()).isEqualTo(CannerPhase.PROCESSING);
        assertThat(told.remainingS()).isBetween(PROCESS_S - 15, PROCESS_S);
        assertThat(told.view().restarts()).isEqualTo(1);
        assertThat(told.view().alarms().get(0).state().wireName()).isEqualTo("returned");
        told.says(BOIL_C, 600);
        assertThat(told.phase()).isEqualTo(CannerPhase.HEAT_OFF);
    }

    @Test
    void aSplashOfHotWater_isNoLostBoil() {
        ToldCanner told =
                ToldCanner.boilingWater().says(BOIL_C, 100).says(BOIL_C - 4, 8).says(BOIL_C, 100);
        assertThat(told.phases()).containsExactly(CannerPhase.WAITING, CannerPhase.PROCESSING);
    }

    @Test
    void aBoilThatFallsInTheLastSeconds_isNotTakenForDone() {
        ToldCanner told = ToldCanner.boilingWater().says(BOIL_C, 32);
        told.says(BOIL_C, (int) told.remainingS() - 3).says(BOIL_C - 5, 30);
        assertThat(told.phase()).isEqualTo(CannerPhase.BOIL_LOST);
        assertThat(told.phases()).doesNotContain(CannerPhase.HEAT_OFF);
    }

    @Test
    void withoutAThermometer_theCookSaysThatTheBoilStopped() {
        ToldCanner told = ToldCanner.boilingWater().tap(CannerTap.BOILS).passes(599);
        told.tap(CannerTap.BOIL_LOST).passes(1000);
        assertThat(told.phase()).isEqualTo(CannerPhase.BOIL_LOST);
        assertThat(told.view().alarms())
                .as("who said so is not called")
                .noneMatch(alarm -> alarm.state().wireName().equals("unacknowledged"));
        told.tap(CannerTap.BOILS);
        assertThat(told.remainingS()).isEqualTo(PROCESS_S);
    }

    @Test
    void aTapThatTheThermometerContradicts_isRefusedWithTheWayOut() {
        ToldCanner told = ToldCanner.boilingWater().says(71.2, 5);
        assertThatThrownBy(() -> told.tap(CannerTap.BOILS))
                .isInstanceOf(NotNow.class)
                .hasMessageContaining("shows 71.")
                .hasMessageContaining("water boils at 95.8")
                .hasMessageContaining("go by what you see");
        told.tap(CannerTap.BY_TAPS).tap(CannerTap.BOILS);
        assertThat(told.phase()).isEqualTo(CannerPhase.PROCESSING);
        assertThat(told.view().probe().state()).isEqualTo(CannerProbe.State.SET_ASIDE);
        told.says(71.2, 599);
        assertThat(told.phase()).isEqualTo(CannerPhase.PROCESSING);
        told.tap(CannerTap.BY_PROBE).says(71.2, 12);
        assertThat(told.phase()).isEqualTo(CannerPhase.BOIL_LOST);
    }

    @Test
    void aSilentThermometer_fallsBackToTapsAndNeverEndsATimeEarly() {
        ToldCanner told = ToldCanner.boilingWater().says(BOIL_C, 100).passes(60);
        assertThat(told.view().probe().state()).isEqualTo(CannerProbe.State.SILENT);
        assertThat(told.view().say().note()).startsWith("No word from the canner's thermometer since {clock:");
        assertThat(told.view().offers().get(0)).isEqualTo(new CannerOffer(CannerTap.BOILS, "It still boils", true));
        told.passes(3600);
        assertThat(told.phase()).as("nobody vouched for the boil").isEqualTo(CannerPhase.UNSURE);
        assertThat(told.calls()).containsExactly("jars-processed-1 raised");
        told.tap(CannerTap.BOIL_LOST);
        assertThat(told.phase()).isEqualTo(CannerPhase.BOIL_LOST);
        told.tap(CannerTap.BOILS);
        assertThat(told.remainingS()).isEqualTo(PROCESS_S);
        told.passes(600);
        assertThat(told.phase()).as("the cook watched this time").isEqualTo(CannerPhase.HEAT_OFF);
    }

    @Test
    void aSilenceForWhichTheCookVouched_needsNoQuestion() {
        ToldCanner told = ToldCanner.boilingWater().says(BOIL_C, 100).passes(60).tap(CannerTap.BOILS);
        told.passes(600);
        assertThat(told.phase()).isEqualTo(CannerPhase.HEAT_OFF);
    }

    @Test
    void aThermometerThatIsBackAndSilentAgain_asksAgain() {
        ToldCanner told = ToldCanner.boilingWater().says(BOIL_C, 100).passes(60).tap(CannerTap.BOILS);
        told.says(BOIL_C, 20).passes(600);
        assertThat(told.phase()).isEqualTo(CannerPhase.UNSURE);
        told.tap(CannerTap.BOILED);
        assertThat(told.phase()).isEqualTo(CannerPhase.HEAT_OFF);
    }

    @Test
    void aThermometerThatFellOut_isSilentNotBoiling() {
        ToldCanner told = ToldCanner.boilingWater().says(BOIL_C, 100).says(140, 700);
        assertThat(told.view().probe().state()).isEqualTo(CannerProbe.State.ODD);
        assertThat(told.phase()).isEqualTo(CannerPhase.UNSURE);
    }

    @Test
    void aLeapOfTime_endsNothingThatAThermometerWatches() {
        ToldCanner told = ToldCanner.boilingWater().says(BOIL_C, 100).leaps(1200);
        assertThat(told.phase()).isEqualTo(CannerPhase.UNSURE);
    }

    @Test
    void aClockThatRunsBackwards_countsAsStandingStill() {
        ToldCanner told = ToldCanner.boilingWater().tap(CannerTap.BOILS).passes(100);
        told.watch.advanceTo(0);
        assertThat(told.remainingS()).isEqualTo(500);
    }

    @Test
    void aTapThatArrivesTwice_countsOnce_andTwoPeopleDoNoHarm() {
        ToldCanner told = ToldCanner.boilingWater().tap("a", CannerTap.BOILS).passes(200);
        told.tap("a", CannerTap.BOILS).tap("b", CannerTap.BOILS);
        assertThat(told.remainingS()).isEqualTo(400);
        told.tap("c", CannerTap.BOIL_LOST).tap("d", CannerTap.BOIL_LOST);
        assertThat(told.phase()).isEqualTo(CannerPhase.BOIL_LOST);
        told.tap("c", CannerTap.BOIL_LOST).tap("e", CannerTap.BOILS).tap("c", CannerTap.BOIL_LOST);
        assertThat(told.phase()).as("the late twin of a tap").isEqualTo(CannerPhase.PROCESSING);
    }

    @Test
    void heatOffBeforeTheTimeIsUp_isRefusedWithWhatIsLeft() {
        ToldCanner told = ToldCanner.boilingWater().tap(CannerTap.BOILS).passes(60);
        assertThatThrownBy(() -> told.tap(CannerTap.HEAT_OFF)).hasMessageContaining("9 minutes are left");
        assertThatThrownBy(() -> told.tap(CannerTap.LIFTED)).hasMessageContaining("stay in");
        told.passes(540).tap(CannerTap.HEAT_OFF).passes(10);
        assertThatThrownBy(() -> told.tap(CannerTap.LIFTED)).hasMessageContaining("5 minutes more");
    }

    @ParameterizedTest
    @EnumSource(CannerTap.class)
    void inAnEmptyCanner_everyTapIsRefusedInWords_butClearing(CannerTap tap) {
        ToldCanner told = new ToldCanner();
        if (tap == CannerTap.CLEAR) {
            assertThat(told.tap(tap).events).isEmpty();
        } else {
            assertThatThrownBy(() -> told.tap(tap)).isInstanceOf(NotNow.class).hasMessageContaining("no jars");
        }
    }

    @Test
    void everyTap_canBeTakenBack() {
        ToldCanner told =
                ToldCanner.boilingWater().tap(CannerTap.BOILS).passes(30).undo();
        assertThat(told.phase()).isEqualTo(CannerPhase.WAITING);
        told.tap(CannerTap.BOILS)
                .passes(100)
                .tap(CannerTap.BOIL_LOST)
                .passes(10)
                .undo();
        assertThat(told.remainingS()).as("it never stopped").isEqualTo(490);
        told.tap(CannerTap.CLEAR).undo();
        assertThat(told.phase()).isEqualTo(CannerPhase.PROCESSING);
        told.passes(490).tap(CannerTap.HEAT_OFF).undo();
        assertThat(told.phase()).isEqualTo(CannerPhase.HEAT_OFF);
        told.tap(CannerTap.HEAT_OFF).passes(300).tap(CannerTap.LIFTED).undo();
        assertThat(told.phase()).isEqualTo(CannerPhase.LIFT_OUT);
        assertThat(told.view().shelf()).isEmpty();
    }

    @Test
    void anUndoThatArrivesTwice_takesBackOneTap() {
        ToldCanner told = ToldCanner.boilingWater().tap(CannerTap.BOILS);
        long mark = told.view().undo().orElseThrow();
        told.watch.undo(told.t(), mark);
        told.watch.undo(told.t(), mark);
        assertThat(told.phase()).isEqualTo(CannerPhase.WAITING);
    }

    @Test
    void whatTheThermometerSaw_cannotBeTakenBack() {
        ToldCanner told =
                ToldCanner.boilingWater().tap(CannerTap.BOILS).says(BOIL_C, 60).says(BOIL_C - 4, 12);
        assertThat(told.phase()).isEqualTo(CannerPhase.BOIL_LOST);
        assertThat(told.view().undo()).isEmpty();
    }

    @Test
    void aTimeThatRunsAgainByUndo_isInDoubtWhereAThermometerWatches() {
        ToldCanner told = ToldCanner.boilingWater().tap(CannerTap.BOILS).says(BOIL_C, 60);
        told.tap(CannerTap.CLEAR).passes(200).undo().says(BOIL_C, 400);
        assertThat(told.phase()).isEqualTo(CannerPhase.UNSURE);
    }

    // NCHFP, Univ. of Wisconsin: the water of a steam canner lasts 45 minutes in all, and it is never opened meanwhile
    @Test
    void steam_startsAgainOnlyWhileItsWaterLasts() {
        ToldCanner told = ToldCanner.steam(20).tap(CannerTap.BOILS).passes(600).tap(CannerTap.BOIL_LOST);
        told.passes(60).tap(CannerTap.BOILS);
        assertThat(told.phase()).as("11 + 20 minutes are less than 45").isEqualTo(CannerPhase.PROCESSING);
        told.passes(900).tap(CannerTap.BOIL_LOST);
        assertThat(told.phase()).as("26 + 20 minutes are more").isEqualTo(CannerPhase.STEAM_SPENT);
        assertThatThrownBy(() -> told.tap(CannerTap.BOILS)).hasMessageContaining("fresh water");
        told.tap(CannerTap.AGAIN).passes(600).tap(CannerTap.BOILS).passes(1200);
        assertThat(told.phase()).isEqualTo(CannerPhase.HEAT_OFF);
    }

    @Test
    void steam_thatFallsOff_isSeenAndNotWaitedForBeyondItsWater() {
        ToldCanner told =
                ToldCanner.steam(20).says(BOIL_C, 40).says(BOIL_C, 600).says(BOIL_C - 4, 20);
        assertThat(told.phase()).isEqualTo(CannerPhase.BOIL_LOST);
        told.says(BOIL_C - 4, 900);
        assertThat(told.phase()).isEqualTo(CannerPhase.STEAM_SPENT);
        assertThat(told.calls()).containsExactly("jars-boil-lost-1 raised");
        assertThat(told.view().offers().get(0).tap()).isEqualTo(CannerTap.AGAIN);
    }

    @Test
    void anAlarm_isAcknowledgedOnce_andOneThatNeverWasIsNone() {
        ToldCanner told = ToldCanner.boilingWater().says(BOIL_C, 60).says(BOIL_C - 4, 20);
        List<CannerEvent> events = new ArrayList<>();
        assertThat(told.watch
                        .acknowledge(told.t(), "jars-boil-lost-1", events)
                        .orElseThrow()
                        .state()
                        .wireName())
                .isEqualTo("acknowledged");
        assertThat(told.watch.acknowledge(told.t(), "jars-boil-lost-1", events)).isPresent();
        assertThat(told.watch.acknowledge(told.t(), "jars-boil-lost-2", events)).isEmpty();
        assertThat(events).hasSize(1);
    }

    /** Whatever comes in whatever order, no time ends before the whole of it has passed since the last start. */
    @Test
    void noOrderOfTapsReadingsAndSilences_endsATimeEarly() {
        long seed = System.nanoTime() % 1_000_000;
        System.out.println("seed " + seed);
        Random random = new Random(seed);
        int ends = 0;
        for (int round = 0; round < 300; round++) {
            ToldCanner told = ToldCanner.boilingWater();
            double startedT = Double.NaN;
            for (int i = 0; i < 150; i++) {
                int before = told.events.size();
                stir(told, random);
                for (CannerEvent event : told.events.subList(before, told.events.size())) {
                    if (event instanceof CannerEvent.PhaseEntered entered) {
                        if (entered.phase() == CannerPhase.PROCESSING) {
                            startedT = entered.t();
                        } else if (entered.phase() == CannerPhase.HEAT_OFF) {
                            ends++;
                            assertThat(entered.t() - startedT)
                                    .as("seed " + seed + ", round " + round)
                                    .isGreaterThanOrEqualTo(PROCESS_S);
                        }
                    }
                }
            }
        }
        assertThat(ends).as("rounds that came to an end").isGreaterThan(50);
    }

    private static void stir(ToldCanner told, Random random) {
        try {
            switch (random.nextInt(6)) {
                case 0 -> told.says(BOIL_C, 1 + random.nextInt(120));
                case 1 -> told.says(BOIL_C - 5, 1 + random.nextInt(30));
                case 2 -> told.passes(random.nextInt(200));
                case 3 -> told.leaps(random.nextInt(300));
                default -> told.tap(SAID.get(random.nextInt(SAID.size())));
            }
        } catch (NotNow e) {
            assertThat(e.getMessage()).isNotBlank().doesNotContain("\n");
        }
    }
}
