package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.watch.Standstill;
import spoonfall.lab.Scenario;
import spoonfall.log.TraceReplay;
import spoonfall.probe.trace.Trace;

/** What lies near an alarm and must not raise it, how often a cook is called at all, and the reasons with their numbers. */
final class NeighboursTest {
    private static List<CookEvent> events(Trace trace, double moreRiseC) {
        CookSettings settings = Cooks.settings(trace);
        TraceReplay replay =
                new TraceReplay(trace, new CookSettings(settings.waterBoil(), settings.riseC() + moreRiseC));
        List<CookEvent> events = new ArrayList<>();
        while (replay.hasNext()) {
            events.addAll(replay.next());
        }
        return events;
    }

    private static String title(Scenario scenario, long seed, AlarmName name) {
        return Cooks.events(Cooks.trace(scenario, seed)).stream()
                .filter(event -> event instanceof CookEvent.AlarmChanged)
                .map(event -> ((CookEvent.AlarmChanged) event).alarm())
                .filter(alarm -> alarm.name() == name)
                .findFirst()
                .orElseThrow()
                .title();
    }

    @Test
    void aPanTakenOffShortOfTheWindow_callsToNothing() {
        assertThat(Cooks.raised(events(Cooks.trace(Scenario.CLEAN, 3), 2)))
                .doesNotContain(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT, AlarmName.PAST_GEL_POINT);
    }

    @Test
    void aPanTakenOffShortOfTheGelPoint_isAskedWhetherItIsSet_onceATestWouldBeOver() {
        assertThat(Cooks.raised(events(Cooks.trace(Scenario.CLEAN, 3), 0.7)))
                .containsExactly(AlarmName.START_SET_TESTS, AlarmName.STALLED);
    }

    @Test
    void aPanTakenOffAHairShortOfTheGelPoint_callsToTheTestsOnly() {
        assertThat(Cooks.raised(events(Cooks.trace(Scenario.CLEAN, 3), 0.33)))
                .containsExactly(AlarmName.START_SET_TESTS);
    }

    @ParameterizedTest
    @EnumSource(
            value = Scenario.class,
            names = {"COLD_WATER", "SET_TESTS", "STALL", "HEAT_CHANGE"})
    void whatFallsInThePan_isNoProbeOutOfIt(Scenario scenario) {
        for (long seed = 1; seed < 4; seed++) {
            assertThat(Cooks.raised(Cooks.events(Cooks.trace(scenario, seed))))
                    .as("%s, seed %d", scenario, seed)
                    .doesNotContain(AlarmName.PROBE_OUT_OF_PAN);
        }
    }

    @Test
    void aCleanCook_isCalledAtMostOnceInTenMinutes() {
        for (long seed = 201; seed <= 230; seed++) {
            Trace trace = Cooks.trace(Scenario.CLEAN, seed);
            List<AlarmName> raised = Cooks.raised(Cooks.events(trace));
            // EEMUA 191: one alarm in ten minutes is manageable. The two that belong to every cook lie closer than
            // that.
            assertThat(raised)
                    .as("seed %d", seed)
                    .containsExactly(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT)
                    .hasSizeLessThanOrEqualTo((int) (trace.lastS() / 600));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void somethingCold_isASentenceAndNoAlarm(long seed) {
        Trace trace = Cooks.trace(Scenario.COLD_WATER, seed);
        List<CookEvent> events = Cooks.events(trace);
        double cold = trace.info().firstT("water-added").orElseThrow();
        List<Double> said = events.stream()
                .filter(event -> event instanceof CookEvent.StatusTaken taken
                        && taken.status().wentIn() != WentIn.NOTHING)
                .map(CookEvent::t)
                .toList();
        assertThat(said).as("seed %d", seed).isNotEmpty().allMatch(t -> t > cold && t < cold + 600);
        assertThat(Cooks.raised(events)).containsExactly(AlarmName.START_SET_TESTS, AlarmName.GEL_POINT);
    }

    @ParameterizedTest
    @EnumSource(
            value = Scenario.class,
            names = {"COLD_WATER"},
            mode = EnumSource.Mode.EXCLUDE)
    void nothingCold_isSaidWhereNothingWentIn(Scenario scenario) {
        for (long seed = 1; seed < 4; seed++) {
            assertThat(Cooks.events(Cooks.trace(scenario, seed)))
                    .as("%s, seed %d", scenario, seed)
                    .noneMatch(event -> event instanceof CookEvent.StatusTaken taken
                            && taken.status().wentIn() != WentIn.NOTHING);
        }
    }

    @Test
    void theReasons_haveNumbers() {
        assertThat(title(Scenario.STALL, 21, AlarmName.STALLED))
                .matches("It is cooling from \\{temp:[0-9]+\\.[0-9]}, since \\{clock:[0-9]+}\\.");
        assertThat(title(Scenario.SCORCH, 41, AlarmName.SCORCH_RISK))
                .matches("The base may be catching: it climbs \\{diff:[0-9.]+} a minute; "
                        + "the water that leaves allows \\{diff:[0-9.]+}\\.");
        assertThat(title(Scenario.PAST, 51, AlarmName.PAST_GEL_POINT))
                .matches("It is more than \\{diff:1\\.[0-3]} past the setting point\\.");
    }

    @Test
    void aPanThatStandsStill_saysSinceWhenNoWaterHasLeft() {
        Standstill standstill = new Standstill();
        Signals last = Still.at(0, 100);
        for (int t = 0; t <= 600; t++) {
            last = Still.at(t, 100 + 0.004 * Math.min(t, 420));
            standstill.endSecond(last);
        }
        assertThat(standstill.standingText(last).title()).matches("No water has left since \\{clock:3[78][0-9]}\\.");
        assertThat(standstill.standingText(last).act()).isEqualTo("Is a lid on, or the heat too low?");
    }

    /** Signals of a pan that says nothing but its height. */
    private static final class Still {
        static Signals at(double t, double levelC) {
            return new Signals(t, levelC, levelC, Optional.empty(), Optional.empty(), levelC, levelC, 0.01);
        }
    }
}
