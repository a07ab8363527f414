package spoonfall.cook.pan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.Cooks;
import spoonfall.cook.MadeCook;
import spoonfall.cook.TestWord;
import spoonfall.settest.TestAnswer;

/** The set tests are called for in time though nothing is read of the pan when its test window opens. */
final class UnseenWindowTest {
    /** The pan of {@link MadeCook#boilsC} is at 103 °C then, where its test window opens. */
    private static final double OPENS_T = 900;

    private static final int BLIND_T = 780;
    private static final int BLIND_S = 240;

    /** Why nothing is read of the pan. */
    private enum Blind {
        SILENT(AlarmName.PROBE_SILENT, cook -> cook.silent(BLIND_S)),
        STUCK(AlarmName.PROBE_STUCK, cook -> cook.watch(BLIND_S, t -> MadeCook.boilsC(BLIND_T))),
        OUT(AlarmName.PROBE_OUT_OF_PAN, cook -> cook.watch(BLIND_S, t -> 40 + 60 * Math.exp(-(t - BLIND_T) / 8)));

        final AlarmName alarm;
        final UnaryOperator<MadeCook> lasts;

        Blind(AlarmName alarm, UnaryOperator<MadeCook> lasts) {
            this.alarm = alarm;
            this.lasts = lasts;
        }
    }

    @ParameterizedTest
    @EnumSource
    void setTests_areCalledByWhatWasKnownBefore(Blind blind) {
        MadeCook cook = blind.lasts.apply(MadeCook.boiling(BLIND_T));
        assertThat(cook.raised()).containsExactly(blind.alarm, AlarmName.START_SET_TESTS);
        assertThat(Cooks.raisedT(cook.events(), AlarmName.START_SET_TESTS).orElseThrow())
                .isBetween(OPENS_T - 60, OPENS_T + 60);
        CookAlarm call = cook.alarm(AlarmName.START_SET_TESTS);
        assertThat(call.act()).contains("Nothing was read since {clock:7").contains("by what was known then");
        assertThat(call.act()).contains("plate");
    }

    @Test
    void theCallStandsWhenThePanIsReadAgain_andIsNotRaisedTwice() {
        MadeCook cook = MadeCook.boiling(BLIND_T).silent(BLIND_S).watch(60, MadeCook::boilsC);
        assertThat(cook.raised()).containsExactly(AlarmName.PROBE_SILENT, AlarmName.START_SET_TESTS);
        assertThat(cook.monitor().alarms()).anyMatch(alarm -> alarm.name() == AlarmName.START_SET_TESTS);
    }

    @Test
    void nothingIsCalled_beforeTheWindowIsDue() {
        MadeCook cook = MadeCook.boiling(600).silent(120).watch(30, MadeCook::boilsC);
        assertThat(cook.raised()).containsExactly(AlarmName.PROBE_SILENT);
    }

    @Test
    void nothingIsCalled_ofAPanThatStoodStillWhenItWasReadLast() {
        MadeCook cook = MadeCook.boiling(BLIND_T).watch(420, t -> MadeCook.boilsC(t) - 0.1 * (t - BLIND_T) / 60);
        assertThat(cook.raised()).containsExactly(AlarmName.STALLED);
        cook.silent(1100);
        assertThat(cook.raised()).containsExactly(AlarmName.STALLED, AlarmName.PROBE_SILENT);
    }

    @Test
    void nothingIsCalledAgain_whenThePlateSaidNotYet() {
        MadeCook cook = MadeCook.boiling(BLIND_T).silent(BLIND_S);
        cook.say(TestWord.seen("one", TestAnswer.RUNS));
        cook.silent(200);
        assertThat(cook.raisedSince(BLIND_T + BLIND_S)).isEmpty();
    }

    @Test
    void aCallOfBefore_staysSuppressedWhileTheProbeIsSilent() {
        MadeCook cook = MadeCook.boiling(1000);
        assertThat(cook.raised()).containsExactly(AlarmName.START_SET_TESTS);
        List<CookEvent> since = cook.silent(120).eventsSince(1000);
        assertThat(since)
                .anyMatch(event -> event instanceof CookEvent.AlarmChanged changed
                        && changed.alarm().name() == AlarmName.START_SET_TESTS
                        && changed.change() == AlarmChange.SUPPRESSED);
        assertThat(Cooks.raised(since)).containsExactly(AlarmName.PROBE_SILENT);
    }
}
