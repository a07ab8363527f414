package spoonfall.cook.monitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.AlarmState;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Cooks;
import spoonfall.cook.Forecast;
import spoonfall.cook.Stage;
import spoonfall.cook.WaterBoil;
import spoonfall.lab.Scenario;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** Each alarm has a simulated cook that raises it and one near it that does not. */
final class CookMonitorTest {
    private static final long SECOND = 1_000_000_000L;

    private static Trace trace(Scenario scenario, long seed) {
        return Cooks.trace(scenario, seed);
    }

    private static double labelT(Trace trace, String what) {
        return trace.info().firstT(what).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void aCleanCook_callsToTheTestsAndToTheGelPointInTimeAndToNothingElse(long seed) {
        Trace trace = trace(Scenario.CLEAN, seed);
        List<CookEvent> events = Cooks.events(trace);
        assertThat(Cooks.raised(events)).containsExactly(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
        assertThat(Cooks.raisedT(events, AlarmName.START_SET_TESTS).orElseThrow())
                .isBetween(labelT(trace, "window") - 30, labelT(trace, "window") + 30);
        assertThat(Cooks.raisedT(events, AlarmName.GEL_POINT).orElseThrow())
                .isBetween(labelT(trace, "gel") - 30, labelT(trace, "gel") + 30);
    }

    @Test
    void aCleanCook_goesThroughItsStagesInOrder() {
        assertThat(Cooks.stages(Cooks.events(trace(Scenario.CLEAN, 11))))
                .containsExactly(
                        Stage.WARMING,
                        Stage.COMING_TO_THE_BOIL,
                        Stage.ROLLING_BOIL,
                        Stage.TEST_WINDOW,
                        Stage.AT_GEL_POINT,
                        Stage.OFF_THE_HEAT);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void stall_isRaisedSoonAfterTheHeatGoesOffAndClearsWhenItClimbsAgain(long seed) {
        Trace trace = trace(Scenario.STALL, seed);
        List<CookEvent> events = Cooks.events(trace);
        double off = labelT(trace, "heat-off");
        assertThat(Cooks.raisedT(events, AlarmName.STALLED).orElseThrow()).isBetween(off, off + 150);
        assertThat(Cooks.raised(events).stream().filter(AlarmName.STALLED::equals))
                .hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(
            value = Scenario.class,
            names = {"CLEAN", "HEAT_CHANGE", "DILUTE", "SET_TESTS", "GAP", "COARSE", "PAST", "COLD_WATER"})
    void noStallAndNoScorch_areRaisedWhereThereIsNone(Scenario scenario) {
        for (long seed = 31; seed < 34; seed++) {
            assertThat(Cooks.raised(Cooks.events(trace(scenario, seed))))
                    .as("%s, seed %d", scenario, seed)
                    .doesNotContain(AlarmName.STALLED, AlarmName.SCORCH_RISK);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44})
    void scorchRisk_isRaisedWithinThreeMinutesOfTheBaseCatching(long seed) {
        Trace trace = trace(Scenario.SCORCH, seed);
        double begins = labelT(trace, "scorch-begins");
        assertThat(Cooks.raisedT(Cooks.events(trace), AlarmName.SCORCH_RISK).orElseThrow())
                .isBetween(begins, begins + 180);
    }

    @Test
    void pastGelPoint_isRaisedWhenItBoilsOnAndTakesTheGelPointsPlace() {
        List<CookEvent> events = Cooks.events(trace(Scenario.PAST, 51));
        assertThat(Cooks.raised(events))
                .containsExactly(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT, AlarmName.PAST_GEL_POINT);
        assertThat(Cooks.stages(events)).contains(Stage.PAST_GEL_POINT);
    }

    @Test
    void probeSilent_isRaisedWithinTenSecondsOfTheLastReadingAndClearedByTheNext() {
        Trace trace = trace(Scenario.GAP, 61);
        List<CookEvent> events = Cooks.events(trace);
        double gap = labelT(trace, "gap-begins");
        assertThat(Cooks.raisedT(events, AlarmName.PROBE_SILENT).orElseThrow()).isBetween(gap, gap + 10);
        assertThat(events)
                .anyMatch(event -> event instanceof CookEvent.AlarmChanged changed
                        && changed.alarm().name() == AlarmName.PROBE_SILENT
                        && changed.alarm().state() == AlarmState.RETURNED);
    }

    @Test
    void probeOutOfPan_isRaisedWithinFifteenSecondsAndNothingElseIsMadeOfIt() {
        Trace trace = trace(Scenario.PROBE_OUT, 71);
        List<CookEvent> events = Cooks.events(trace);
        double out = labelT(trace, "probe-out-begins");
        assertThat(Cooks.raisedT(events, AlarmName.PROBE_OUT_OF_PAN).orElseThrow())
                .isBetween(out, out + 15);
        assertThat(Cooks.raised(events))
                .containsExactly(AlarmName.PROBE_OUT_OF_PAN, AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
    }

    /** A fifth of the pan of cold fruit within twelve seconds, read 5 s late, and then warmed by three degrees a minute. */
    @Test
    void somethingColdThatIsPouredIn_isNoProbeOutOfThePan_andAFallIntoTheAirIs() {
        DoubleUnaryOperator poured = s -> 20.0 / 12 * (late(s) - late(Math.max(0, s - 12))) - Math.max(0, s - 20) / 20;
        assertThat(raisedWhenFalling(poured)).doesNotContain(AlarmName.PROBE_OUT_OF_PAN);
        assertThat(raisedWhenFalling(s -> 70 * -Math.expm1(-s / 20))).contains(AlarmName.PROBE_OUT_OF_PAN);
    }

    private static double late(double s) {
        return s + 5 * Math.expm1(-s / 5);
    }

    private static List<AlarmName> raisedWhenFalling(DoubleUnaryOperator fallC) {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        List<CookEvent> events = new ArrayList<>();
        for (int t = 0; t < 560; t++) {
            double c = Math.min(102.5, 60 + 0.2 * t) - (t > 500 ? fallC.applyAsDouble(t - 500) : 0);
            events.addAll(monitor.accept(Reading.good("pan", t * SECOND, Math.round(c * 10) / 10.0, "")));
        }
        return Cooks.raised(events);
    }

    @Test
    void oneWildReading_movesNothing() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 300; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, t == 200 ? 240 : 101.5, ""));
            assertThat(monitor.alarms()).isEmpty();
            if (t > 10) {
                assertThat(monitor.status().temperatureC().orElseThrow()).isBetween(101.4, 101.6);
            }
        }
    }

    @Test
    void badReadings_areNeitherATemperatureNorASignOfLife() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        monitor.accept(Reading.good("pan", 0, 80, ""));
        for (int t = 1; t < 35; t++) {
            monitor.accept(Reading.bad("pan", t * SECOND, "NaN", Quality.NOT_FINITE));
        }
        CookStatus status = monitor.status();
        assertThat(status.temperatureC()).isEmpty();
        assertThat(status.seen().orElseThrow()).isEqualTo(new CookStatus.Seen(0, 80));
        assertThat(monitor.alarms()).extracting(CookAlarm::name).containsExactly(AlarmName.PROBE_SILENT);
    }

    @Test
    void aSlowThermometer_isNotTakenForASilentOne() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 600; t += 10) {
            monitor.accept(Reading.good("pan", t * SECOND, 80, ""));
        }
        monitor.advanceTo(635 * SECOND);
        assertThat(monitor.alarms().stream().filter(alarm -> alarm.state().active()))
                .isEmpty();
        monitor.advanceTo(650 * SECOND);
        assertThat(monitor.alarms().stream().filter(alarm -> alarm.state().active()))
                .hasSize(1);
    }

    @Test
    void aSlowThermometer_isNotTakenForASilentOne_whenItsSecondReadingIsLost() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        monitor.accept(Reading.good("pan", 0, 80, ""));
        monitor.advanceTo(22 * SECOND);
        assertThat(monitor.alarms()).isEmpty();
        monitor.advanceTo(35 * SECOND);
        assertThat(monitor.alarms()).extracting(CookAlarm::name).containsExactly(AlarmName.PROBE_SILENT);
    }

    @Test
    void simmering_isToldFromWarming() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 600; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, Math.min(95, 40 + 0.3 * t), ""));
        }
        assertThat(monitor.status().stage()).isEqualTo(Stage.SIMMERING);
    }

    @Test
    void acknowledging_isByIdAndHarmlessTwice() {
        CookMonitor monitor = new CookMonitor(CookSettings.defaults(), 0);
        for (int t = 0; t < 4; t++) {
            monitor.accept(Reading.good("pan", t * SECOND, 80, ""));
        }
        monitor.advanceTo(20 * SECOND);
        assertThat(monitor.acknowledge("probe-silent-2", 20 * SECOND)).isEmpty();
        assertThat(monitor.acknowledge("probe-silent-1", 20 * SECOND)
                        .orElseThrow()
                        .events())
                .hasSize(1);
        assertThat(monitor.acknowledge("probe-silent-1", 21 * SECOND)
                        .orElseThrow()
                        .alarm()
                        .state())
                .isEqualTo(AlarmState.ACKNOWLEDGED);
    }

    @Test
    void theFirstForecast_isWithinThreeMinutesTenMinutesBeforeTheGelPoint() {
        for (long seed = 81; seed < 86; seed++) {
            Trace trace = trace(Scenario.CLEAN, seed);
            double gel = labelT(trace, "gel");
            Forecast forecast = Cooks.events(trace).stream()
                    .filter(event -> event instanceof CookEvent.StatusTaken && event.t() >= gel - 600)
                    .map(event -> ((CookEvent.StatusTaken) event).status().forecast())
                    .findFirst()
                    .orElseThrow()
                    .orElseThrow();
            assertThat(forecast.etaS()).as("seed %d", seed).isBetween(420.0, 780.0);
        }
    }

    @Test
    void beforeTheBoil_noForecastIsMadeUp() {
        Trace trace = trace(Scenario.CLEAN, 91);
        double boil = labelT(trace, "boil");
        assertThat(Cooks.events(trace))
                .filteredOn(event -> event instanceof CookEvent.StatusTaken && event.t() < boil)
                .allSatisfy(event -> assertThat(
                                ((CookEvent.StatusTaken) event).status().forecast())
                        .isEmpty());
    }

    @Test
    void statuses_comeEveryTenSeconds() {
        assertThat(Cooks.events(trace(Scenario.CLEAN, 11)).stream()
                        .filter(event -> event instanceof CookEvent.StatusTaken)
                        .mapToDouble(CookEvent::t)
                        .limit(4))
                .containsExactly(0.0, 10.0, 20.0, 30.0);
    }

    @Test
    void aRiseThatSetsNothing_isRefused() {
        assertThat(CookSettings.defaults().gelPointC()).isBetween(104.3, 104.5);
        assertThatThrownBy(() -> new CookSettings(WaterBoil.standard(), 40)).hasMessageContaining("40.0");
    }
}
