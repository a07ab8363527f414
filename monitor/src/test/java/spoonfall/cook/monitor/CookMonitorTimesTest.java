package spoonfall.cook.monitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.alarm.AlarmChange;
import spoonfall.alarm.AlarmState;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Cooks;
import spoonfall.cook.MadePan;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.SetTest;
import spoonfall.cook.TestWord;
import spoonfall.cook.Unrecorded;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** How a cook's time passes, and what is asked of it besides its pan. Its seconds begin at some instant of the readings' scale. */
final class CookMonitorTimesTest {
    private static final long ORIGIN = 7_000_000_000L;

    private final CookMonitor monitor = new CookMonitor(
            MadePan.SETTINGS, ORIGIN, List.of(ProbeTrust.unchecked("pan"), ProbeTrust.unchecked("other")));

    private static long nanos(double s) {
        return ORIGIN + Math.round(s * 1e9);
    }

    private static Reading reading(String probe, double s, double c) {
        return Reading.good(probe, nanos(s), c, "");
    }

    private List<CookEvent> reads(double fromS, double untilS, double c) {
        List<CookEvent> events = new ArrayList<>();
        for (double s = fromS; s < untilS; s++) {
            events.addAll(monitor.accept(reading("pan", s, c)));
        }
        return events;
    }

    private static List<Double> statusTs(List<CookEvent> events) {
        return events.stream()
                .filter(event -> event instanceof CookEvent.StatusTaken)
                .map(CookEvent::t)
                .toList();
    }

    @ParameterizedTest(name = "{0} ns before ten seconds: {1} s")
    @CsvSource({"500001, 9.999", "500000, 10", "1, 10", "-499999, 10", "-500000, 10.001"})
    void time_isToTheNearestMillisecond(long beforeNanos, double timeS) {
        List<CookEvent> events = monitor.advanceTo(nanos(10) - beforeNanos);
        assertThat(monitor.timeS()).isEqualTo(timeS);
        assertThat(statusTs(events)).isEqualTo(timeS < 10 ? List.of(0.0) : List.of(0.0, 10.0));
    }

    @Test
    void anEarlierTime_changesNothing() {
        monitor.advanceTo(nanos(20));
        assertThat(monitor.accept(reading("pan", 5, 80))).isEmpty();
        assertThat(monitor.timeS()).isEqualTo(20);
        assertThat(monitor.status().seen()).contains(new CookStatus.Seen(20, 80));
        assertThat(monitor.status().t()).isEqualTo(20);
    }

    @Test
    void whatNobodyWatched_isNotJudged() {
        reads(0, 9.9, 80);
        List<CookEvent> events = monitor.comeBack(nanos(100.25));
        assertThat(statusTs(events)).as("the second that was running").containsExactly(10.0);
        assertThat(events).last().isEqualTo(new CookEvent.CameBack(100.25, 91.25));
        assertThat(monitor.timeS()).isEqualTo(100.25);
        assertThat(statusTs(monitor.advanceTo(nanos(110)))).containsExactly(110.0);
    }

    @Test
    void whoComesBack_listensAnew() {
        reads(0, 9.9, 80);
        monitor.comeBack(nanos(100.25));
        assertThat(Cooks.raised(monitor.advanceTo(nanos(108)))).isEmpty();
        assertThat(Cooks.raised(monitor.advanceTo(nanos(110)))).containsExactly(AlarmName.PROBE_SILENT);
    }

    @Test
    void whoComesBackAtOnce_missedNothing() {
        reads(0, 9.9, 80);
        assertThat(monitor.comeBack(nanos(3))).containsExactly(new CookEvent.CameBack(9, 0));
        assertThat(monitor.comeBack(nanos(9.5))).containsExactly(new CookEvent.CameBack(9.5, 0.5));
        assertThat(statusTs(monitor.advanceTo(nanos(10)))).containsExactly(10.0);
    }

    @Test
    void aCookThatIsNotWrittenDown_saysSo_untilItIs() {
        List<CookEvent> events =
                monitor.recording(Optional.of(new Unrecorded("the disk is full", "Make room.")), nanos(10));
        assertThat(statusTs(events)).containsExactly(0.0, 10.0);
        List<CookEvent> later = monitor.advanceTo(nanos(20));
        assertThat(Cooks.raisedT(later, AlarmName.NOT_RECORDING)).hasValue(14);
        assertThat(monitor.alarms())
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.title()).contains("the disk is full"));
        assertThat(statusTs(monitor.recording(Optional.empty(), nanos(30)))).containsExactly(30.0);
        monitor.advanceTo(nanos(40));
        assertThat(monitor.alarms()).noneMatch(alarm -> alarm.state().active());
    }

    private void silent() {
        reads(0, 4, 80);
        monitor.advanceTo(nanos(25));
    }

    @Test
    void everyAnswer_tellsWhatCameOfTheTimeBefore() {
        silent();
        assertThat(statusTs(monitor.acknowledge("probe-silent-1", nanos(30))
                        .orElseThrow()
                        .events()))
                .containsExactly(30.0);
        assertThat(statusTs(monitor.shelve("probe-silent-1", 1, nanos(40))
                        .orElseThrow()
                        .events()))
                .containsExactly(40.0);
        assertThat(statusTs(monitor.unshelve("probe-silent-1", nanos(50))
                        .orElseThrow()
                        .events()))
                .containsExactly(50.0);
        assertThat(statusTs(monitor.say(TestWord.begun("a", 90), nanos(60)))).containsExactly(60.0);
        assertThat(monitor.acknowledge("nothing-1", nanos(65))).isEmpty();
        assertThat(monitor.timeS()).isEqualTo(65);
        assertThat(monitor.tests().tests()).extracting(SetTest::beganT).containsExactly(60.0);
    }

    @ParameterizedTest(name = "{0} minutes")
    @CsvSource({"1", "30"})
    void whatIsPutAside_isSoForItsMinutes(int minutes) {
        silent();
        CookAlarm aside = monitor.shelve("probe-silent-1", minutes, nanos(25))
                .orElseThrow()
                .alarm();
        assertThat(aside.state()).isEqualTo(AlarmState.SHELVED);
        assertThat(aside.shelvedUntilT()).hasValue(25 + 60 * minutes);
        List<CookEvent> events = monitor.advanceTo(nanos(25 + 60 * minutes + 5));
        assertThat(events)
                .filteredOn(event ->
                        event instanceof CookEvent.AlarmChanged changed && changed.change() == AlarmChange.UNSHELVED)
                .extracting(CookEvent::t)
                .containsExactly(25.0 + 60 * minutes);
    }

    @Test
    void noAlarm_isPutAsideForNoTimeOrMoreThanHalfAnHour() {
        assertThat(CookMonitor.MOST_MINUTES_ASIDE).isEqualTo(30);
        assertThatIllegalArgumentException().isThrownBy(() -> monitor.shelve("stalled-1", 0, nanos(1)));
        assertThatIllegalArgumentException().isThrownBy(() -> monitor.shelve("stalled-1", 31, nanos(1)));
    }

    @Test
    void anotherProbe_isFreshForAWhile() {
        assertThat(monitor.otherTemperatureC("other")).isEmpty();
        monitor.compare(reading("other", 1, 71));
        monitor.compare(reading("other", 2, 71));
        monitor.advanceTo(nanos(3));
        assertThat(monitor.otherTemperatureC("other")).hasValue(71);
        assertThat(monitor.otherQuality("other")).isEqualTo(Quality.GOOD);
        monitor.advanceTo(nanos(60));
        assertThat(monitor.otherTemperatureC("other")).isEqualTo(OptionalDouble.empty());
        assertThat(monitor.otherQuality("other")).isEqualTo(Quality.SILENT);
        assertThat(monitor.timeS()).as("no time passes with it").isEqualTo(60);
    }

    @Test
    void aReadingBeforeTheCookBegan_isOfItsBeginning() {
        monitor.compare(reading("other", -100, 70));
        assertThat(monitor.otherTemperatureC("other")).hasValue(70);
    }

    @Test
    void twoProbesInABoilingPan_areCompared() {
        List<CookEvent> events = new ArrayList<>();
        for (int s = 0; s < 200; s++) {
            monitor.compare(reading("other", s, 105 + 0.01 * (s % 3)));
            events.addAll(monitor.accept(reading("pan", s, 101.5 + 0.01 * (s % 5))));
        }
        assertThat(Cooks.raised(events)).containsExactly(AlarmName.PROBES_DISAGREE);
    }
}
