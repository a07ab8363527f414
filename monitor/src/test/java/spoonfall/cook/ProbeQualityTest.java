package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.lab.Scenario;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** What the monitor makes of a thermometer that misleads: each fault is found, and its harmless neighbour is not. */
final class ProbeQualityTest {
    private static final long SECOND = 1_000_000_000L;

    /** A simulated cook in which the probe shows something else from {@code fromS} on. */
    private static List<CookEvent> cook(Trace trace, double fromS, IntToDoubleFunction shown) {
        CookMonitor monitor = new CookMonitor(Cooks.settings(trace), 0);
        List<CookEvent> events = new ArrayList<>();
        for (int i = 0; i < trace.size(); i++) {
            long atNanos = Math.round(trace.elapsedS(i) * 1e9);
            OptionalDouble told = trace.temperatureC(i);
            if (told.isPresent()) {
                double value = trace.elapsedS(i) >= fromS ? shown.applyAsDouble(i) : told.getAsDouble();
                events.addAll(monitor.accept(Reading.good("pan", atNanos, value, "")));
            }
        }
        return events;
    }

    private static double at(Trace trace, int i) {
        return trace.temperatureC(i).orElseThrow();
    }

    private static int rowAt(Trace trace, double t) {
        int row = 0;
        while (trace.elapsedS(row) < t) {
            row++;
        }
        return row;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void stuck_isSaidWithinTwoMinutes_andIsNoStall(long seed) {
        Trace trace = Cooks.trace(Scenario.CLEAN, seed);
        double stuckT = trace.info().firstT("window").orElseThrow() - 400;
        int row = rowAt(trace, stuckT);
        List<CookEvent> events = cook(trace, stuckT, i -> at(trace, row));
        // the reading may have been the same for some seconds before, which count
        assertThat(Cooks.raisedT(events, AlarmName.PROBE_STUCK).orElseThrow()).isBetween(stuckT + 45, stuckT + 120);
        assertThat(Cooks.raised(events))
                .as("the test window opens while it is stuck")
                .containsExactly(AlarmName.PROBE_STUCK, AlarmName.START_SET_TESTS);
    }

    @ParameterizedTest
    @EnumSource(Scenario.class)
    void stuck_isNotSaidOfAThermometerThatWorks(Scenario scenario) {
        for (long seed = 1; seed < 4; seed++) {
            assertThat(Cooks.raised(Cooks.events(Cooks.trace(scenario, seed))))
                    .as("%s, seed %d", scenario, seed)
                    .doesNotContain(AlarmName.PROBE_STUCK, AlarmName.PROBE_IMPLAUSIBLE);
        }
    }

    @Test
    void aPanThatStandsStill_isNotAStuckProbe() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 3600; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, 21.0, ""));
        }
        assertThat(monitor.alarms()).isEmpty();
        assertThat(monitor.status().quality()).isEqualTo(Quality.GOOD);
    }

    @Test
    void stuckWhileWarming_isSaid_butAPanThatIsLeftToSimmerIsNotStuck() {
        CookMonitor stuck = new CookMonitor(CookSettings.defaults(), 0);
        CookMonitor simmering = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 600; t++) {
            stuck.accept(Reading.good("pan", t * SECOND, Math.min(70, 40 + 0.1 * t), ""));
            simmering.accept(Reading.good("pan", t * SECOND, Math.min(96, 40 + 0.3 * t), ""));
        }
        assertThat(stuck.alarms()).extracting(CookAlarm::name).containsExactly(AlarmName.PROBE_STUCK);
        assertThat(simmering.alarms()).isEmpty();
    }

    @Test
    void spikes_areToldAndMoveNothing() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 5);
        SplittableRandom random = new SplittableRandom(5);
        List<CookEvent> plain = cook(trace, 1e9, i -> 0);
        List<CookEvent> spiky = cook(trace, 0, i -> i % 37 == 20 ? random.nextDouble(-40, 390) : at(trace, i));
        assertThat(Cooks.raised(spiky)).isEqualTo(Cooks.raised(plain));
        double gel = Cooks.raisedT(plain, AlarmName.GEL_POINT).orElseThrow();
        assertThat(Cooks.raisedT(spiky, AlarmName.GEL_POINT).orElseThrow()).isBetween(gel - 10, gel + 10);
    }

    @Test
    void oneSpike_isAQualityOfTheReading() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 60; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, t == 50 ? 10 : 101 + 0.1 * (t % 2), ""));
            assertThat(monitor.status().quality()).isEqualTo(t == 50 ? Quality.SPIKE : Quality.GOOD);
        }
    }

    @Test
    void aLooseProbeThatJumpsAbout_isSaid() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 120; t++) {
            boolean wild = t >= 60 && t % 4 == 0;
            monitor.accept(Reading.good("pan", t * SECOND, wild ? 180 + t % 8 * 10 : 101 + 0.1 * (t % 2), ""));
        }
        assertThat(monitor.alarms()).extracting(CookAlarm::name).containsExactly(AlarmName.PROBE_IMPLAUSIBLE);
        assertThat(monitor.status().temperatureC().orElseThrow()).isBetween(100.9, 101.2);
    }

    @Test
    void aJumpThatNoPanCanMake_isSaidAndNotTakenForTheGelPoint() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 6);
        double jumpT = trace.info().firstT("window").orElseThrow() - 300;
        int row = rowAt(trace, jumpT);
        List<CookEvent> events = cook(trace, jumpT, i -> i < row + 40 ? at(trace, i) + 14 : at(trace, i));
        assertThat(Cooks.raisedT(events, AlarmName.PROBE_IMPLAUSIBLE).orElseThrow())
                .isBetween(jumpT, jumpT + 15);
        assertThat(Cooks.raised(events))
                .containsExactly(AlarmName.PROBE_IMPLAUSIBLE, AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
        assertThat(Cooks.raisedT(events, AlarmName.GEL_POINT).orElseThrow()).isGreaterThan(jumpT + 250);
    }

    @Test
    void aTemperatureThatNoPreserveHas_isSaid() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 60; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, t < 30 ? 90 + 0.1 * t : 260, ""));
        }
        assertThat(monitor.status().quality()).isEqualTo(Quality.IMPLAUSIBLE);
        assertThat(monitor.alarms()).extracting(CookAlarm::name).contains(AlarmName.PROBE_IMPLAUSIBLE);
    }

    private static CookMonitor twoProbes(OptionalDouble firstDoubtC, OptionalDouble secondDoubtC) {
        return new CookMonitor(
                CookSettings.defaults(),
                0,
                List.of(new ProbeTrust("pan", firstDoubtC), new ProbeTrust("clip", secondDoubtC)));
    }

    private static List<CookAlarm> watch(CookMonitor monitor, IntToDoubleFunction pan, IntToDoubleFunction clip) {
        for (int t = 0; t < 300; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, pan.applyAsDouble(t), ""));
            monitor.compare(Reading.good("clip", t * SECOND + 1000, clip.applyAsDouble(t), ""));
        }
        return monitor.alarms();
    }

    @Test
    void twoProbesThatDiffer_areSaid_andTheCheckedOneIsToBeBelieved() {
        CookMonitor monitor = twoProbes(OptionalDouble.empty(), OptionalDouble.of(0.3));
        List<CookAlarm> alarms = watch(monitor, t -> 99 + t * 0.005, t -> 102 + t * 0.005);
        assertThat(alarms).singleElement().satisfies(alarm -> {
            assertThat(alarm.name()).isEqualTo(AlarmName.PROBES_DISAGREE);
            assertThat(alarm.title()).contains("{diff:3.0}");
            assertThat(alarm.act()).isEqualTo("Believe clip: it was checked in boiling water, pan was not.");
        });
        assertThat(monitor.status().temperatureC().orElseThrow())
                .as("never averaged")
                .isBetween(100.4, 100.6);
        assertThat(monitor.otherTemperatureC("clip").orElseThrow()).isBetween(103.4, 103.6);
    }

    @Test
    void twoProbesThatDifferByLittle_areNotSaid() {
        assertThat(watch(twoProbes(OptionalDouble.empty(), OptionalDouble.empty()), t -> 99, t -> 100.2))
                .isEmpty();
    }

    @Test
    void twoCheckedProbes_areHeldToTheirCalibrations() {
        List<CookAlarm> alarms = watch(twoProbes(OptionalDouble.of(0.3), OptionalDouble.of(0.3)), t -> 99, t -> 100.2);
        assertThat(alarms)
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.act()).contains("check both again"));
    }

    @Test
    void aSecondProbeBelowBoilingWaterInABoilingPan_isNotToBeBelieved() {
        List<CookAlarm> alarms =
                watch(twoProbes(OptionalDouble.empty(), OptionalDouble.of(0.3)), t -> 102 + t * 0.004, t -> 97);
        assertThat(alarms)
                .singleElement()
                .satisfies(
                        alarm -> assertThat(alarm.act()).isEqualTo("Believe pan: clip shows less than boiling water."));
    }

    @Test
    void aProbeThatNobodyNamed_isRefused() {
        CookMonitor monitor = twoProbes(OptionalDouble.empty(), OptionalDouble.empty());
        assertThatThrownBy(() -> monitor.compare(Reading.good("lid", 0, 20, "")))
                .hasMessageContaining("lid");
    }
}
