package spoonfall.cook.calm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.Cooks;
import spoonfall.cook.Forecast;
import spoonfall.cook.ReminderName;
import spoonfall.cook.Stage;
import spoonfall.cook.signal.Signals;
import spoonfall.lab.Scenario;

/** What a cook is reminded of, and when. */
final class RemindersTest {
    private static List<CookEvent.Reminded> reminded(List<CookEvent> events) {
        return events.stream()
                .filter(event -> event instanceof CookEvent.Reminded)
                .map(event -> (CookEvent.Reminded) event)
                .toList();
    }

    private static Signals signals(double t, double levelC, double trendC, double stepC) {
        return new Signals(t, levelC, trendC, Optional.empty(), Optional.empty(), trendC, trendC, stepC);
    }

    private static Optional<Forecast> in(double windowS) {
        return Optional.of(new Forecast(windowS, windowS + 300, windowS + 200, windowS + 400, 0.01));
    }

    @Test
    void platesAndJars_areSaidOnceEachAtTheirTime() {
        Reminders reminders = new Reminders();
        List<CookEvent> events = new ArrayList<>();
        for (int t = 0; t < 1500; t += 5) {
            reminders.endSecond(signals(t, 102, 102, 0.01), Stage.ROLLING_BOIL, 0.5, in(1500 - t), events);
        }
        List<CookEvent.Reminded> said = reminded(events);
        assertThat(said)
                .extracting(CookEvent.Reminded::reminder)
                .containsExactly(ReminderName.CHILL_PLATES, ReminderName.WARM_JARS);
        assertThat(said.get(0).t()).isBetween(600.0, 630.0);
        assertThat(said.get(0).text()).isEqualTo("Put the plates in the freezer now: set tests at about {clock:1500}.");
        assertThat(said.get(1).t()).isBetween(1200.0, 1230.0);
        assertThat(said.get(1).text()).isEqualTo("Warm the jars now: it sets at about {clock:1800}.");
    }

    @Test
    void whatIsDueTogether_isSaidAMinuteApart_theColdPlatesFirst() {
        Reminders reminders = new Reminders();
        List<CookEvent> events = new ArrayList<>();
        for (int t = 0; t < 200; t++) {
            reminders.endSecond(signals(t, 102, 102, 0.01), Stage.ROLLING_BOIL, 0.5, in(300 - t), events);
        }
        assertThat(reminded(events)).extracting(CookEvent::t).containsExactly(20.0, 80.0);
        assertThat(reminded(events))
                .extracting(CookEvent.Reminded::reminder)
                .containsExactly(ReminderName.CHILL_PLATES, ReminderName.WARM_JARS);
    }

    @Test
    void theJars_waitUntilTheCallToTheSetTestsIsAMinuteOld() {
        Reminders reminders = new Reminders();
        List<CookEvent> events = new ArrayList<>();
        for (int t = 0; t < 300; t++) {
            Stage stage = t < 70 ? Stage.ROLLING_BOIL : Stage.TEST_WINDOW;
            double windowS = Math.max(0, 70 - t);
            Optional<Forecast> forecast = Optional.of(new Forecast(windowS, 640 - t, 600 - t, 700 - t, 0.01));
            reminders.endSecond(signals(t, 103, 103, 0.01), stage, 0.5, forecast, events);
        }
        assertThat(reminded(events)).extracting(CookEvent::t).containsExactly(20.0, 150.0);
    }

    @Test
    void aForecastThatWobbles_saysNothingTwice_andOneThatMovesFarDoes() {
        Due due = new Due(900);
        List<Integer> said = new ArrayList<>();
        for (int t = 0; t < 4000; t += 5) {
            double at = (t < 1000 ? 1200 : 3000) + 200 * Math.sin(t / 60.0);
            if (due.comes(t, at - t)) {
                said.add(t);
            }
        }
        assertThat(said).hasSize(2);
        assertThat(said.get(0)).isBetween(100, 500);
        assertThat(said.get(1)).isBetween(1800, 2400);
    }

    @Test
    void oneWildForecast_saysNothing() {
        Due due = new Due(900);
        assertThat(due.comes(0, 100)).isFalse();
        assertThat(due.comes(5, 5000)).isFalse();
        assertThat(due.comes(30, 100)).isFalse();
    }

    private static List<Double> stirs(IntToDoubleFunction dipC, double stepC, double noiseC, Stage stage) {
        Reminders reminders = new Reminders();
        SplittableRandom random = new SplittableRandom(7);
        List<CookEvent> events = new ArrayList<>();
        for (int t = 0; t < 1800; t++) {
            double trendC = 103 + t * 0.0005;
            double levelC = trendC - dipC.applyAsDouble(t) + noiseC * (random.nextDouble() * 2 - 1);
            reminders.endSecond(signals(t, levelC, trendC, stepC), stage, 0.6, Optional.empty(), events);
        }
        return reminded(events).stream().map(CookEvent.Reminded::t).toList();
    }

    @Test
    void aThickPanThatNobodyStirs_isSaidAtMostEveryFiveMinutes() {
        assertThat(stirs(t -> 0, 0.01, 0.02, Stage.ROLLING_BOIL))
                .containsExactly(240.0, 540.0, 840.0, 1140.0, 1440.0, 1740.0);
    }

    @Test
    void aThickPanThatIsStirred_isNotSaid() {
        assertThat(stirs(t -> t % 200 < 10 && t > 50 ? 0.5 : 0, 0.01, 0.02, Stage.ROLLING_BOIL))
                .isEmpty();
    }

    @Test
    void aThermometerThatCannotShowStirs_isAPlainReminderEverySixMinutes() {
        assertThat(stirs(t -> 0, 0.5, 0, Stage.ROLLING_BOIL)).containsExactly(360.0, 720.0, 1080.0, 1440.0);
        assertThat(stirs(t -> 0, 0.01, 0.3, Stage.ROLLING_BOIL)).hasSizeBetween(4, 5);
    }

    /** When a pan in which nobody stirs was reminded of it; its syrup is so thick at each second. */
    private static List<CookEvent.Reminded> stirs(Reminders reminders, int fromT, int untilT, double solids) {
        List<CookEvent> events = new ArrayList<>();
        for (int t = fromT; t < untilT; t++) {
            reminders.endSecond(signals(t, 103, 103, 0.01), Stage.ROLLING_BOIL, solids, Optional.empty(), events);
        }
        return reminded(events);
    }

    @Test
    void syrupIsThick_from58PerCent() {
        assertThat(stirs(new Reminders(), 0, 300, 0.58))
                .extracting(CookEvent::t)
                .containsExactly(240.0);
        assertThat(stirs(new Reminders(), 0, 300, 0.579)).isEmpty();
    }

    @Test
    void whoHasNotStirredSinceItWasThick_isToldSinceWhen() {
        Reminders reminders = new Reminders();
        stirs(reminders, 0, 100, 0.5);
        assertThat(stirs(reminders, 100, 400, 0.6))
                .singleElement()
                .satisfies(said -> assertThat(said.text())
                        .isEqualTo("Stir down to the base: nobody seems to have since {clock:100}."));
    }

    @Test
    void whatIsNoLongerThick_isNotSpokenOf() {
        Reminders reminders = new Reminders();
        stirs(reminders, 0, 230, 0.6);
        assertThat(stirs(reminders, 230, 300, 0.57)).isEmpty();
    }

    @Test
    void whenTheReadingsBeginAnew_soDoesTheTimeWithoutAStir() {
        Reminders reminders = new Reminders();
        stirs(reminders, 0, 200, 0.6);
        reminders.restart();
        assertThat(stirs(reminders, 200, 500, 0.6)).extracting(CookEvent::t).containsExactly(440.0);
    }

    @Test
    void aDipFromBeforeTheReadingsBeganAnew_isNoStir() {
        Reminders reminders = new Reminders();
        List<CookEvent> events = new ArrayList<>();
        stirs(reminders, 0, 195, 0.6);
        for (int t = 195; t < 200; t++) {
            reminders.endSecond(signals(t, 102.5, 103, 0.01), Stage.ROLLING_BOIL, 0.6, Optional.empty(), events);
        }
        reminders.restart();
        for (int t = 200; t < 210; t++) {
            reminders.endSecond(signals(t, 102.9, 103, 0.01), Stage.ROLLING_BOIL, 0.6, Optional.empty(), events);
        }
        assertThat(stirs(reminders, 210, 460, 0.6))
                .singleElement()
                .satisfies(said -> assertThat(said.text()).contains("since {clock:200}"));
    }

    @Test
    void aThermometerThatCannotShowStirs_isToldPlainly() {
        Reminders reminders = new Reminders();
        List<CookEvent> events = new ArrayList<>();
        for (int t = 0; t <= 360; t++) {
            reminders.endSecond(signals(t, 103, 103, 0.5), Stage.ROLLING_BOIL, 0.6, Optional.empty(), events);
        }
        assertThat(reminded(events))
                .singleElement()
                .satisfies(said ->
                        assertThat(said.text()).isEqualTo("Stir down to the base now and then: it is thick by now."));
    }

    @Test
    void whoStirs_isRemindedFourMinutesAfterTheLastTime() {
        Reminders reminders = new Reminders();
        List<CookEvent> events = new ArrayList<>();
        for (int t = 0; t < 600; t++) {
            double levelC = t >= 100 && t < 110 ? 102.5 : 103;
            reminders.endSecond(signals(t, levelC, 103, 0.01), Stage.ROLLING_BOIL, 0.6, Optional.empty(), events);
        }
        assertThat(reminded(events)).extracting(CookEvent::t).containsExactly(350.0);
        assertThat(reminded(events).get(0).text()).contains("since {clock:110}");
    }

    @Test
    void aMomentAhead_isSaidWhenTheForecastHasHeldForTwentySeconds_andNotAfterIt() {
        Due due = new Due(900);
        assertThat(due.comes(0, 900.5)).isFalse();
        assertThat(due.comes(1, 900)).isFalse();
        assertThat(due.comes(20, 881)).isFalse();
        assertThat(due.comes(21, 880)).isTrue();
        assertThat(due.comes(60, 841 + 600)).isFalse();
        Due passed = new Due(900);
        assertThat(passed.comes(0, 0)).isFalse();
        assertThat(passed.comes(30, 0)).isFalse();
    }

    @Test
    void aMomentThatMovesByMoreThanTenMinutes_isAnotherOne() {
        for (boolean further : new boolean[] {true, false}) {
            Due due = new Due(2000);
            due.comes(0, 1000);
            assertThat(due.comes(20, 980)).isTrue();
            double leftS = further ? 1581 : 381;
            assertThat(due.comes(20, leftS - 1)).isFalse();
            assertThat(due.comes(41, leftS - 22)).isFalse();
            due.comes(50, further ? 1551 : 349);
            assertThat(due.comes(70, further ? 1531 : 329)).isTrue();
        }
    }

    @Test
    void aPanThatIsLongInTheTestWindow_isStillRemindedOfTheJars() {
        Reminders reminders = new Reminders();
        List<CookEvent> events = new ArrayList<>();
        for (int t = 0; t < 300; t += 10) {
            Optional<Forecast> forecast = Optional.of(new Forecast(0, 800 - t, 600 - t, 1000 - t, 0.01));
            reminders.endSecond(signals(t, 103, 103, 0.01), Stage.TEST_WINDOW, 0.6, forecast, events);
        }
        assertThat(reminded(events)).extracting(CookEvent.Reminded::reminder).containsExactly(ReminderName.WARM_JARS);
    }

    @Test
    void inTheTestWindow_nobodyIsRemindedToStir() {
        assertThat(stirs(t -> 0, 0.01, 0.02, Stage.TEST_WINDOW)).isEmpty();
    }

    @Test
    void aCookThatIsSimulated_isRemindedOfPlatesAndJarsOnceEachInGoodTime() {
        for (long seed = 11; seed < 16; seed++) {
            List<CookEvent> events = Cooks.events(Cooks.trace(Scenario.CLEAN, seed));
            List<CookEvent.Reminded> said = reminded(events);
            assertThat(said)
                    .as("seed %d", seed)
                    .extracting(CookEvent.Reminded::reminder)
                    .containsOnlyOnce(ReminderName.CHILL_PLATES)
                    .containsOnlyOnce(ReminderName.WARM_JARS);
            double window = Cooks.raisedT(events, AlarmName.START_SET_TESTS).orElseThrow();
            assertThat(said).as("seed %d", seed).allMatch(one -> one.t() < window);
        }
    }
}
