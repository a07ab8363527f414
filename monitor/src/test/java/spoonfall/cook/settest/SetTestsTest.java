package spoonfall.cook.settest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.SetTest;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.cook.WaterBoil;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.cook.monitor.Retelling;
import spoonfall.lab.HandledPan;
import spoonfall.lab.PanSettings;
import spoonfall.probe.Reading;
import spoonfall.settest.TestAnswer;

/** What the monitor makes of words on set tests, on a simulated pan that is really taken off the heat. */
final class SetTestsTest {
    private static final PanSettings PAN = PanSettings.defaults();
    private static final CookSettings SETTINGS = new CookSettings(WaterBoil.atElevation(PAN.elevationM()), PAN.riseC());

    private final HandledPan pan = new HandledPan(PAN, 7);
    private final CookMonitor monitor = new CookMonitor(SETTINGS, 0);
    private final List<Reading> readings = new ArrayList<>();
    private final List<CookEvent> events = new ArrayList<>();
    private long t;

    private void passes(int seconds, boolean onTheHeat) {
        for (int i = 0; i < seconds; i++) {
            t++;
            pan.second(onTheHeat).ifPresent(c -> {
                Reading reading = Reading.good("pan", nanos(), c, "");
                readings.add(reading);
                events.addAll(monitor.accept(reading));
            });
        }
    }

    private void boilTo(double riseC) {
        while (pan.syrupRiseC() < riseC) {
            passes(1, true);
        }
    }

    private List<CookEvent> says(TestWord word) {
        List<CookEvent> came = monitor.say(word, nanos());
        events.addAll(came);
        return came;
    }

    private long nanos() {
        return t * 1_000_000_000L;
    }

    private static List<AlarmName> raised(List<CookEvent> events) {
        return Cooks.raised(events);
    }

    private List<CookEvent> since(double fromT) {
        return events.stream().filter(event -> event.t() >= fromT).toList();
    }

    @Test
    void whileThePanIsTested_nobodyIsCalledButToThePlate() {
        boilTo(PAN.riseC() - 0.45);
        double beganT = t;
        says(TestWord.begun("a", 90));
        passes(89, false);
        assertThat(raised(since(beganT))).isEmpty();
        passes(1, false);
        assertThat(raised(since(beganT))).containsExactly(AlarmName.PLATE_READY);
        passes(240, false);
        assertThat(raised(since(beganT))).containsExactly(AlarmName.PLATE_READY);
        SetTest test = monitor.tests().open().orElseThrow();
        assertThat(test.riseC().orElseThrow()).isBetween(PAN.riseC() - 0.6, PAN.riseC() - 0.3);
        assertThat(test.solids().orElseThrow()).isBetween(0.6, 0.68);
    }

    @Test
    void notYet_callsAgainBeforeTheLearntRise_andNotBefore() {
        boilTo(PAN.riseC() - 0.45);
        double beganT = t;
        says(TestWord.begun("a", 60));
        passes(60, false);
        says(TestWord.seen("a", TestAnswer.RUNS));
        double nextC = monitor.tests().nextRiseC();
        assertThat(nextC).isGreaterThan(PAN.riseC() + 0.2);
        assertThat(monitor.tests().aim().riseC()).isEqualTo(nextC);
        boilTo(nextC - 0.6);
        assertThat(raised(since(beganT))).containsExactly(AlarmName.PLATE_READY);
        boilTo(nextC - 0.15); // a thermometer that is not late at all is called a quarter of a minute early
        assertThat(raised(since(beganT))).containsExactly(AlarmName.PLATE_READY, AlarmName.START_SET_TESTS);
        boilTo(nextC + 0.3);
        assertThat(raised(since(beganT)))
                .containsExactly(AlarmName.PLATE_READY, AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
        boilTo(nextC + 1.4);
        assertThat(raised(since(beganT))).endsWith(AlarmName.PAST_GEL_POINT);
    }

    @Test
    void set_endsTheBoil_andNothingOfThePanIsCalledAnyMore() {
        boilTo(PAN.riseC() + 0.1);
        says(TestWord.begun("a", 60));
        passes(60, false);
        List<CookEvent> came = says(TestWord.seen("a", TestAnswer.WRINKLES));
        assertThat(monitor.status().stage()).isEqualTo(Stage.OFF_THE_HEAT);
        double setT = t + 1;
        passes(200, true);
        t += 300; // the probe is pulled out
        events.addAll(monitor.advanceTo(nanos()));
        assertThat(raised(since(setT))).isEmpty();
        assertThat(monitor.alarms()).isEmpty();
        assertThat(monitor.tests().set()).isTrue();
        assertThat(came).anyMatch(event -> event instanceof CookEvent.TestChanged);
    }

    @Test
    void setThatIsTakenBack_isWatchedOnAsIfNothingHadBeen() {
        boilTo(PAN.riseC() - 0.2);
        says(TestWord.seen("a", TestAnswer.SET));
        passes(20, true);
        says(TestWord.unseen("a"));
        says(TestWord.undone("a"));
        double backT = t;
        boilTo(PAN.riseC() + 1.5);
        assertThat(raised(since(backT))).contains(AlarmName.GEL_POINT, AlarmName.PAST_GEL_POINT);
        assertThat(monitor.tests().tests()).isEmpty();
        assertThat(monitor.tests().aim()).isEqualTo(SETTINGS);
    }

    @Test
    void aPanThatIsNotPutBack_isSaidToCool() {
        boilTo(PAN.riseC() - 0.45);
        says(TestWord.begun("a", 60));
        passes(60, false);
        says(TestWord.seen("a", TestAnswer.THICKENS));
        double answeredT = t + 1;
        passes(110, false);
        assertThat(raised(since(answeredT))).isEmpty();
        passes(120, false);
        assertThat(raised(since(answeredT))).containsExactly(AlarmName.STALLED);
    }

    @Test
    void aTestThatNobodyAnswers_silencesNothingOnceThePanBoilsOn() {
        boilTo(PAN.riseC() - 0.3);
        says(TestWord.begun("a", 60));
        passes(20, false);
        boilTo(PAN.riseC() + 1.4);
        assertThat(raised(events)).contains(AlarmName.GEL_POINT, AlarmName.PAST_GEL_POINT);
    }

    @Test
    void everyWord_isHarmlessTheSecondTime() {
        boilTo(PAN.riseC() - 0.45);
        assertThat(says(TestWord.begun("a", 90))).isNotEmpty();
        assertThat(says(TestWord.begun("a", 90))).isEmpty();
        assertThat(says(TestWord.begun("b", 90))).isEmpty();
        assertThat(says(TestWord.seen("a", TestAnswer.RUNS))).isNotEmpty();
        assertThat(says(TestWord.seen("a", TestAnswer.WRINKLES))).isEmpty();
        assertThat(monitor.tests().tests()).singleElement().satisfies(test -> {
            assertThat(test.seen().orElseThrow().answer()).isEqualTo(TestAnswer.RUNS);
        });
        assertThat(says(TestWord.unseen("a"))).isNotEmpty();
        assertThat(says(TestWord.unseen("a"))).isEmpty();
        assertThat(says(TestWord.undone("a"))).isNotEmpty();
        assertThat(says(TestWord.undone("a"))).isEmpty();
        assertThat(says(TestWord.begun("a", 90))).isEmpty();
        assertThat(monitor.tests().tests()).isEmpty();
    }

    @Test
    void aTestWithoutAReading_isKeptAndTeachesNothing() {
        boilTo(PAN.riseC() - 0.45);
        t += 60;
        says(TestWord.seen("a", TestAnswer.RUNS));
        assertThat(monitor.tests().tests()).singleElement().satisfies(test -> {
            assertThat(test.temperatureC()).isEmpty();
            assertThat(test.riseC()).isEmpty();
        });
        assertThat(monitor.tests().aim()).isEqualTo(SETTINGS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {59, 121, Double.NaN})
    void aPlateOfAnotherTime_isRefused(double plateS) {
        assertThatThrownBy(() -> TestWord.begun("a", plateS))
                .hasMessageContaining("a plate stands for 60 to 120 seconds");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a b", "ä", "12345678901234567890123456789012345678901"})
    void aNameThatIsNone_isRefused(String id) {
        assertThatThrownBy(() -> TestWord.undone(id)).hasMessageContaining("letters, digits and hyphens");
    }

    @ParameterizedTest
    @ValueSource(longs = {1_000_001, 1_000_002, 1_000_003, 1_000_004})
    void theSameReadingsAndWords_giveTheSameEvents(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        TestAnswer[] answers = TestAnswer.values();
        boilTo(PAN.riseC() - 1);
        for (int i = 0; i < 4; i++) {
            passes(random.nextInt(20, 100), true);
            says(TestWord.begun("test-" + i, 60));
            passes(random.nextInt(1, 120), false);
            says(TestWord.seen("test-" + i, answers[random.nextInt(answers.length)]));
            passes(random.nextInt(1, 20), false);
            if (random.nextBoolean() || monitor.tests().set()) {
                says(TestWord.unseen("test-" + i));
                passes(random.nextInt(1, 20), false);
                says(TestWord.undone("test-" + i));
            }
        }
        passes(120, true);
        CookMonitor again = new CookMonitor(SETTINGS, 0);
        Retelling words = monitor.retelling(again);
        List<CookEvent> replayed = new ArrayList<>();
        for (Reading reading : readings) {
            replayed.addAll(words.until(reading.atNanos()));
            replayed.addAll(again.accept(reading));
        }
        replayed.addAll(words.until(Long.MAX_VALUE));
        assertThat(replayed).as("seed %d", seed).isEqualTo(events);
        assertThat(again.tests()).isEqualTo(monitor.tests());
    }
}
