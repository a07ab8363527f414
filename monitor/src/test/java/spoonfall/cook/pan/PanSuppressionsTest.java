package spoonfall.cook.pan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.MadePan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.Pace;
import spoonfall.cook.Suppression;
import spoonfall.cook.TestWord;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.probe.ProbeWatch;
import spoonfall.cook.settest.SetTests;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;
import spoonfall.cook.stage.SugarIn;
import spoonfall.settest.TestAnswer;

/** By which design each alarm means nothing just now, and which reason counts where there are two. */
final class PanSuppressionsTest {
    private static final CookSettings SETTINGS = MadePan.SETTINGS;

    private final AlarmBoard board = new AlarmBoard();
    private final Stages stages = new Stages(SETTINGS);
    private final SetTests tests = new SetTests(SETTINGS);
    private final PanAlarms alarms = new PanAlarms(
            SETTINGS,
            board,
            stages,
            new Forecaster(SETTINGS, Pace.BY_ITSELF),
            tests,
            Pace.BY_ITSELF,
            unseen(),
            new SugarIn(SETTINGS.waterBoil().temperatureC()));
    private final List<CookEvent> events = new ArrayList<>();
    private double t;

    private UnseenWindow unseen() {
        return new UnseenWindow(board, new ProbeWatch(SETTINGS, Pace.BY_ITSELF));
    }

    /** What may be the reason. */
    private enum Cause {
        /** Somebody found it set. */
        SET,
        /** Somebody tests it. */
        TESTED,
        /** It stands off the heat, and nobody said why. */
        OFF,
        /** Something cold went in. */
        COLD,
        PAST,
        GEL,
        SILENT,
        OUT
    }

    private void so(Cause cause) {
        switch (cause) {
            case SET -> say(TestWord.seen("one", TestAnswer.WRINKLES));
            case TESTED -> say(TestWord.begun("one", TestWord.USUAL_PLATE_S));
            case OFF -> {
                boils(102);
                stages.end();
                second(MadeSignals.falling(t, 101, 102, -1));
            }
            case COLD -> {
                boils(102);
                for (double c : new double[] {102, 98, 98.6}) {
                    second(MadeSignals.at(t, c));
                }
            }
            case PAST -> raise(AlarmName.PAST_GEL_POINT);
            case GEL -> raise(AlarmName.GEL_POINT);
            case SILENT -> raise(AlarmName.PROBE_SILENT);
            case OUT -> raise(AlarmName.PROBE_OUT_OF_PAN);
        }
    }

    private void say(TestWord word) {
        OptionalDouble unknown = OptionalDouble.empty();
        tests.say(t, Math.round(t * 1000), word, new SetTests.Pan(unknown, unknown, unknown));
    }

    private void boils(double c) {
        for (int i = 0; i < 30; i++) {
            stages.follow(MadeSignals.at(i - 30, c));
        }
    }

    private void second(Signals now) {
        alarms.endSecond(t, now, false, false, events);
        t++;
    }

    private void raise(AlarmName name) {
        for (int i = 0; i < 2; i++) {
            board.update(t, name, Condition.PRESENT, () -> AlarmText.NONE, events);
            t += 30; // the longest of the delays
        }
        assertThat(board.present(name)).isTrue();
    }

    /** Why the alarm, which is so, means nothing. */
    private Optional<Suppression> suppressed(AlarmName name) {
        if (!board.present(name)) {
            raise(name);
        }
        alarms.suppress(t, events);
        return board.acknowledge(t, name.wireName() + "-1", events)
                .orElseThrow()
                .suppressedBy();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // set, tested, off, cold, past, gel, silent, out
        "START_SET_TESTS,  SET, SET_TEST, -, -, PAST_GEL_POINT, GEL_POINT, PROBE_SILENT, PROBE_OUT_OF_PAN",
        "GEL_POINT,        SET, SET_TEST, -, -, PAST_GEL_POINT, -, PROBE_SILENT, PROBE_OUT_OF_PAN",
        "PAST_GEL_POINT,   SET, SET_TEST, -, -, -, -, -, -",
        "STALLED,          SET, SET_TEST, SET_TEST, COLD_ADDED, -, -, PROBE_SILENT, PROBE_OUT_OF_PAN",
        "SCORCH_RISK,      SET, -, -, -, -, -, PROBE_SILENT, PROBE_OUT_OF_PAN",
        "PROBE_SILENT,     SET, -, -, -, -, -, -, -",
        "PROBE_OUT_OF_PAN, SET, -, -, -, -, -, -, -",
        "PROBE_STUCK,      SET, -, -, -, -, -, -, -",
        "PROBE_IMPLAUSIBLE,SET, -, -, -, -, -, -, -",
        "PROBES_DISAGREE,  SET, -, -, -, -, -, -, -",
        "PLATE_READY,      -, -, -, -, -, -, -, -",
        "NOT_RECORDING,    -, -, -, -, -, -, -, -"
    })
    void anAlarm_meansNothing_forEachOfItsReasonsAndNoOther(
            AlarmName name,
            String set,
            String tested,
            String off,
            String cold,
            String past,
            String gel,
            String silent,
            String out) {
        List<String> expected = List.of(set, tested, off, cold, past, gel, silent, out);
        List<String> found = new ArrayList<>();
        Arrays.stream(Cause.values()).forEach(cause -> {
            PanSuppressionsTest fresh = new PanSuppressionsTest();
            fresh.so(cause);
            found.add(fresh.suppressed(name).map(Suppression::name).orElse("-"));
        });
        assertThat(found).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0}: {1} before {2}")
    @CsvSource({
        "START_SET_TESTS, SET, PAST, SET",
        "START_SET_TESTS, TESTED, PAST, SET_TEST",
        "START_SET_TESTS, PAST, GEL, PAST_GEL_POINT",
        "START_SET_TESTS, GEL, SILENT, GEL_POINT",
        "GEL_POINT, TESTED, PAST, SET_TEST",
        "GEL_POINT, PAST, SILENT, PAST_GEL_POINT",
        "GEL_POINT, SILENT, OUT, PROBE_SILENT",
        "STALLED, SET, SILENT, SET",
        "STALLED, SILENT, TESTED, PROBE_SILENT",
        "STALLED, TESTED, COLD, SET_TEST",
        "SCORCH_RISK, SET, OUT, SET"
    })
    void ofTwoReasons_theOneThatSaysMoreCounts(AlarmName name, Cause first, Cause second, Suppression expected) {
        so(second);
        so(first);
        assertThat(suppressed(name)).contains(expected);
    }

    @Test
    void whenTheProbeIsHeardAgain_theAlarmMeansSomethingAgain() {
        so(Cause.SILENT);
        assertThat(suppressed(AlarmName.SCORCH_RISK)).contains(Suppression.PROBE_SILENT);
        board.over(t, AlarmName.PROBE_SILENT, events);
        assertThat(suppressed(AlarmName.SCORCH_RISK)).isEmpty();
    }

    @Test
    void theGelPointOnceCalled_saysMoreThanTheCallToTheTests_thoughItIsOver() {
        so(Cause.GEL);
        board.over(t, AlarmName.GEL_POINT, events);
        assertThat(suppressed(AlarmName.START_SET_TESTS)).contains(Suppression.GEL_POINT);
    }

    @Test
    void anAnswer_holdsTheCallsForHalfAMinute_andTheStallForTwo() {
        so(Cause.TESTED);
        say(TestWord.seen("one", TestAnswer.NOT_YET));
        assertThat(tests.notYet()).isTrue();
        board.update(t, AlarmName.START_SET_TESTS, Condition.PRESENT, () -> AlarmText.NONE, events);
        board.update(t, AlarmName.STALLED, Condition.PRESENT, () -> AlarmText.NONE, events);
        double answeredT = t;
        t = answeredT + 29;
        assertThat(suppressed(AlarmName.START_SET_TESTS)).contains(Suppression.SET_TEST);
        t = answeredT + 30;
        assertThat(suppressed(AlarmName.START_SET_TESTS)).isEmpty();
        t = answeredT + 119;
        assertThat(suppressed(AlarmName.STALLED)).contains(Suppression.SET_TEST);
        t = answeredT + 120;
        assertThat(suppressed(AlarmName.STALLED)).isEmpty();
    }

    @Test
    void whenTheReadingsBeginAnew_nothingIsTestedOrColdAnyMore() {
        so(Cause.OFF);
        assertThat(suppressed(AlarmName.STALLED)).contains(Suppression.SET_TEST);
        alarms.restart();
        assertThat(suppressed(AlarmName.STALLED)).isEmpty();
        PanSuppressionsTest fresh = new PanSuppressionsTest();
        fresh.so(Cause.COLD);
        assertThat(fresh.alarms.coldAdded()).isTrue();
        fresh.alarms.restart();
        assertThat(fresh.alarms.coldAdded()).isFalse();
        assertThat(fresh.suppressed(AlarmName.STALLED)).isEmpty();
    }
}
