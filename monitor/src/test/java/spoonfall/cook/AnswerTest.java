package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.AlarmChange;
import spoonfall.alarm.AlarmState;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.lab.Scenario;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** What becomes of an alarm that the cook puts aside, and of one that means nothing just now. */
final class AnswerTest {
    private static final long SECOND = 1_000_000_000L;

    private static CookMonitor silent() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 4; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, 80, ""));
        }
        monitor.advanceTo(20 * SECOND);
        return monitor;
    }

    private static List<String> changes(List<CookEvent> events) {
        return events.stream()
                .filter(event -> event instanceof CookEvent.AlarmChanged)
                .map(event -> (CookEvent.AlarmChanged) event)
                .map(changed -> changed.alarm().name().wireName() + " "
                        + changed.change().wireName())
                .toList();
    }

    private static List<CookEvent.AlarmChanged> suppressed(List<CookEvent> events) {
        return events.stream()
                .filter(event -> event instanceof CookEvent.AlarmChanged)
                .map(event -> (CookEvent.AlarmChanged) event)
                .filter(changed -> changed.change() == AlarmChange.SUPPRESSED)
                .toList();
    }

    @Test
    void whatIsPutAside_callsAgainWhenItsTimeIsUpAndItIsStillSo() {
        CookMonitor monitor = silent();
        CookAlarm aside =
                monitor.shelve("probe-silent-1", 2, 20 * SECOND).orElseThrow().alarm();
        assertThat(aside.state()).isEqualTo(AlarmState.SHELVED);
        assertThat(aside.shelvedUntilT()).hasValue(140);
        assertThat(monitor.advanceTo(139 * SECOND)).noneMatch(event -> event instanceof CookEvent.AlarmChanged);
        assertThat(changes(monitor.advanceTo(140 * SECOND))).containsExactly("probe-silent unshelved");
        assertThat(monitor.alarms()).singleElement().satisfies(alarm -> {
            assertThat(alarm.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
            assertThat(alarm.id()).isEqualTo("probe-silent-1");
        });
    }

    @Test
    void whatIsOverMeanwhile_isNormalWhenItsTimeIsUp() {
        CookMonitor monitor = silent();
        monitor.shelve("probe-silent-1", 1, 20 * SECOND);
        for (int t = 30; t < 90; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, 80, ""));
        }
        assertThat(monitor.alarms()).isEmpty();
    }

    @Test
    void takingBack_isByAnyIdItHadAndHarmlessTwice() {
        CookMonitor monitor = silent();
        monitor.shelve("probe-silent-1", 30, 20 * SECOND);
        for (int t = 30; t < 40; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, 80, ""));
        }
        monitor.advanceTo(60 * SECOND);
        assertThat(monitor.alarms()).extracting(CookAlarm::id).containsExactly("probe-silent-2");
        CookMonitor.Answer back =
                monitor.unshelve("probe-silent-1", 60 * SECOND).orElseThrow();
        assertThat(back.alarm().state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(changes(back.events())).containsExactly("probe-silent unshelved");
        assertThat(monitor.unshelve("probe-silent-2", 60 * SECOND).orElseThrow().events())
                .isEmpty();
        assertThat(monitor.unshelve("stalled-1", 60 * SECOND)).isEmpty();
        assertThat(monitor.shelve("stalled-1", 5, 60 * SECOND)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 31})
    void puttingAsideForNoTimeOrTooLong_isRefused(int minutes) {
        assertThatThrownBy(() -> silent().shelve("probe-silent-1", minutes, 20 * SECOND))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an alarm can be put aside for 1 to 30 minutes, not " + minutes);
    }

    @Test
    void aProbeOutOfThePanThatIsPutAside_isStillNotBelieved() {
        Trace trace = Cooks.trace(Scenario.PROBE_OUT, 71);
        CookMonitor monitor = new CookMonitor(Cooks.settings(trace), 0);
        List<CookEvent> events = new ArrayList<>();
        for (int i = 0; i < trace.size(); i++) {
            long atNanos = Math.round(trace.elapsedS(i) * 1e9);
            events.addAll(monitor.accept(
                    Reading.good("pan", atNanos, trace.temperatureC(i).orElseThrow(), "")));
            if (monitor.alarms().stream().anyMatch(alarm -> alarm.name() == AlarmName.PROBE_OUT_OF_PAN)) {
                monitor.shelve("probe-out-of-pan-1", 30, atNanos);
            }
        }
        assertThat(Cooks.raised(events))
                .containsExactly(AlarmName.PROBE_OUT_OF_PAN, AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
    }

    /** Puts aside and takes back at given seconds; time passes in between as the random numbers will. */
    private static List<CookEvent> live(Trace trace, SplittableRandom random, boolean ticks) {
        CookMonitor monitor = new CookMonitor(Cooks.settings(trace), 0);
        List<CookEvent> events = new ArrayList<>();
        for (int i = 0; i < trace.size(); i++) {
            long atNanos = Math.round(trace.elapsedS(i) * 1e9);
            if (ticks && random.nextBoolean()) {
                events.addAll(monitor.advanceTo(atNanos - random.nextLong(SECOND)));
            }
            events.addAll(monitor.accept(
                    Reading.good("pan", atNanos, trace.temperatureC(i).orElseThrow(), "")));
            if (i % 40 == 0) {
                for (CookAlarm alarm : monitor.alarms()) {
                    monitor.shelve(alarm.id(), 1, atNanos).ifPresent(answer -> events.addAll(answer.events()));
                }
            } else if (i % 97 == 0) {
                for (CookAlarm alarm : monitor.alarms()) {
                    monitor.unshelve(alarm.id(), atNanos).ifPresent(answer -> events.addAll(answer.events()));
                }
            }
        }
        return events;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void puttingAside_doesTheSameWheneverTimePasses(long seed) {
        Scenario scenario = seed % 2 == 0 ? Scenario.STALL : Scenario.GAP;
        Trace trace = Cooks.trace(scenario, seed);
        List<CookEvent> plain = live(trace, new SplittableRandom(seed), false);
        assertThat(live(trace, new SplittableRandom(seed), true))
                .as("%s, seed %d", scenario, seed)
                .isEqualTo(plain);
        assertThat(changes(plain)).anyMatch(change -> change.endsWith(" shelved"));
    }

    @Test
    void theGelPoint_suppressesTheCallToTheSetTests_andNamesItself() {
        assertThat(suppressed(Cooks.events(Cooks.trace(Scenario.CLEAN, 11))))
                .first()
                .satisfies(changed -> {
                    assertThat(changed.alarm().name()).isEqualTo(AlarmName.START_SET_TESTS);
                    assertThat(changed.alarm().suppressedBy()).contains(Suppression.GEL_POINT);
                });
    }

    @Test
    void aSilentProbe_suppressesAStallUntilItSpeaksAgain() {
        Trace trace = Cooks.trace(Scenario.STALL, 21);
        double stalledT = Cooks.raisedT(Cooks.events(trace), AlarmName.STALLED).orElseThrow();
        CookMonitor monitor = new CookMonitor(Cooks.settings(trace), 0);
        List<CookEvent> events = new ArrayList<>();
        for (int i = 0; i < trace.size() && trace.elapsedS(i) < stalledT + 60; i++) {
            if (trace.elapsedS(i) < stalledT + 5 || trace.elapsedS(i) > stalledT + 30) {
                events.addAll(monitor.accept(Reading.good(
                        "pan",
                        Math.round(trace.elapsedS(i) * 1e9),
                        trace.temperatureC(i).orElseThrow(),
                        "")));
            }
        }
        assertThat(changes(events))
                .containsSubsequence(
                        "stalled raised",
                        "probe-silent raised",
                        "stalled suppressed",
                        "probe-silent cleared",
                        "stalled unsuppressed");
        assertThat(Cooks.raised(events)).containsOnlyOnce(AlarmName.STALLED);
    }
}
