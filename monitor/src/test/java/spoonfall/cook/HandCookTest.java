package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.lab.Scenario;
import spoonfall.log.TraceReplay;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;
import spoonfall.score.ByHand;

/** Cooks of the lab that somebody watches with an ordinary thermometer. */
final class HandCookTest {
    private static final CookSettings SETTINGS = new CookSettings(WaterBoil.atElevation(1240), 4.44);

    private static List<CookEvent> events(Scenario scenario, long seed, ByHand hand) {
        Trace trace = Cooks.trace(scenario, seed);
        TraceReplay replay =
                new TraceReplay(hand.look("seed " + seed, trace), Cooks.settings(trace), ProbeTrust.byHand("pan"));
        List<CookEvent> events = new ArrayList<>();
        while (replay.hasNext()) {
            events.addAll(replay.next());
        }
        return events;
    }

    private static double labelT(long seed, String what) {
        return Cooks.trace(Scenario.CLEAN, seed).info().labels().stream()
                .filter(label -> label.what().equals(what))
                .findFirst()
                .orElseThrow()
                .t();
    }

    @ParameterizedTest
    @CsvSource({"1,60,1", "2,60,1", "3,60,0.5", "1,120,0.5", "2,120,1", "3,60,0.5555556"})
    void aCleanCook_isCalledInTimeAndNothingElseIsSaid(long seed, double everyS, double stepC) {
        List<CookEvent> events = events(Scenario.CLEAN, seed, new ByHand(everyS, stepC));
        assertThat(Cooks.raised(events))
                .as("seed %d", seed)
                .isSubsetOf(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT, AlarmName.PAST_GEL_POINT);
        double window = Cooks.raisedT(events, AlarmName.START_SET_TESTS).orElseThrow();
        double gel = Cooks.raisedT(events, AlarmName.GEL_POINT).orElseThrow();
        // A mark of 1 °C is several minutes of the climb; nobody can call it closer than that.
        assertThat(window).as("seed %d", seed).isBetween(labelT(seed, "window") - 240, labelT(seed, "window") + 240);
        assertThat(gel).as("seed %d", seed).isBetween(labelT(seed, "gel") - 240, labelT(seed, "gel") + 180);
    }

    @ParameterizedTest
    @CsvSource({"60,1", "120,0.5"})
    void aForecast_isGivenAndIsLessSure(double everyS, double stepC) {
        double t = labelT(1, "gel") - 600;
        double handS = width(events(Scenario.CLEAN, 1, new ByHand(everyS, stepC)), t);
        double probeS = width(Cooks.events(Cooks.trace(Scenario.CLEAN, 1)), t);
        assertThat(handS).isGreaterThan(1.3 * probeS);
    }

    private static double width(List<CookEvent> events, double t) {
        for (CookEvent event : events) {
            if (event instanceof CookEvent.StatusTaken taken && taken.t() >= t) {
                Forecast forecast = taken.status().forecast().orElseThrow();
                return forecast.highS() - forecast.lowS();
            }
        }
        throw new AssertionError("no status at " + t);
    }

    @ParameterizedTest
    @CsvSource({"SCORCH", "PROBE_OUT", "COLD_WATER"})
    void whatOnlyAMovingReadingTells_isNeverSaid(Scenario scenario) {
        for (long seed = 1; seed <= 3; seed++) {
            assertThat(Cooks.raised(events(scenario, seed, new ByHand(60, 1))))
                    .as("%s, seed %d", scenario, seed)
                    .doesNotContain(AlarmName.SCORCH_RISK, AlarmName.PROBE_OUT_OF_PAN, AlarmName.PROBE_STUCK);
        }
    }

    /** Typed every minute to half a degree: what tells is minutes old, and the lower mark of a stir is typed by nobody. */
    @Test
    void aPanThatStands_isSaidToBeStalled_byMoreThanTenMinutesOfMarks() {
        MadeCook cook = MadeCook.byHand().typed(60, 3000, t -> {
            double atC = t < 300 ? 60 + t * 0.135 : 100.8 + Math.min(t - 300, 1200) * 0.1 / 60;
            return Math.rint(2 * atC) / 2;
        });

        assertThat(Cooks.raisedT(cook.events(), AlarmName.STALLED).orElseThrow())
                .isBetween(1500.0, 2400.0);
    }

    /** Readings so many seconds apart, and then silence. */
    private static CookMonitor typed(double everyS, double... temperaturesC) {
        CookMonitor monitor = new CookMonitor(SETTINGS, 0, List.of(ProbeTrust.byHand("pan")));
        for (int i = 0; i < temperaturesC.length; i++) {
            monitor.accept(Reading.good("pan", nanos(i * everyS), temperaturesC[i], ""));
        }
        return monitor;
    }

    private static long nanos(double s) {
        return Math.round(s * 1e9);
    }

    private static OptionalDouble silentT(CookMonitor monitor) {
        return Cooks.raisedT(monitor.advanceTo(nanos(7200)), AlarmName.PROBE_SILENT);
    }

    @Test
    void theSameTypedAgainAndAgain_isNotStuck() {
        CookMonitor monitor = typed(60, 97, 97, 97, 97, 97, 97, 97, 97, 97, 97, 97, 97);
        assertThat(monitor.alarms()).isEmpty();
        assertThat(monitor.status().temperatureC()).hasValue(97);
    }

    @Test
    void oneReading_isFreshForFiveMinutes() {
        CookMonitor monitor = typed(60, 60);
        monitor.advanceTo(nanos(300));
        assertThat(monitor.status().fresh()).isTrue();
        OptionalDouble silentT = silentT(monitor);
        assertThat(silentT).hasValue(301);
        assertThat(monitor.status().fresh()).isFalse();
        assertThat(monitor.alarms().get(0).title()).isEqualTo("No reading was typed since {clock:0}.");
    }

    @ParameterizedTest
    @CsvSource({"30,181", "60,181", "100,251", "120,301", "180,451", "290,601"})
    void silence_isAfterTwoAndAHalfUsualIntervals_threeToTenMinutes(double everyS, double afterS) {
        CookMonitor monitor = typed(everyS, 60, 62, 64, 66, 68, 70);
        assertThat(silentT(monitor).orElseThrow() - 5 * everyS).isEqualTo(afterS);
    }

    @Test
    void aBatchThatNobodyLooksAt_isNotSaidToBePast() {
        double[] climb = {98, 98.5, 99, 99.5, 99.5, 100};
        CookMonitor monitor = typed(60, climb);
        List<CookEvent> events = monitor.advanceTo(nanos(1200));
        assertThat(Cooks.raised(events)).doesNotContain(AlarmName.PAST_GEL_POINT);
    }

    @Test
    void ticksBetweenTheReadings_changeNothing() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        Trace looked = new ByHand(60, 1).look("1", trace);
        CookMonitor seldom = new CookMonitor(Cooks.settings(trace), 0, List.of(ProbeTrust.byHand("pan")));
        CookMonitor often = new CookMonitor(Cooks.settings(trace), 0, List.of(ProbeTrust.byHand("pan")));
        List<CookEvent> one = new ArrayList<>();
        List<CookEvent> other = new ArrayList<>();
        for (int i = 0; i < looked.size(); i++) {
            long at = nanos(looked.elapsedS(i));
            for (long tick = often.timeS() > 0 ? nanos(often.timeS()) : 0; tick < at; tick += 700_000_000L) {
                other.addAll(often.advanceTo(tick));
            }
            if (looked.temperatureC(i).isPresent()) {
                Reading reading = Reading.good("pan", at, looked.temperatureC(i).getAsDouble(), "");
                one.addAll(seldom.accept(reading));
                other.addAll(often.accept(reading));
            }
        }
        one.addAll(seldom.advanceTo(nanos(trace.lastS())));
        other.addAll(often.advanceTo(nanos(trace.lastS())));
        assertThat(other.stream().filter(event -> !one.contains(event))).isEmpty();
        assertThat(other).hasSameSizeAs(one);
    }
}
