package spoonfall.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What becomes of an alarm whose matter was settled. */
final class SettleTest {
    private final Alarm alarm = new Alarm(new Delays(0, 300));

    @Test
    void whatIsSettled_isNormalAtOnce_andCallsAnew() {
        alarm.update(0, Condition.PRESENT);
        assertThat(alarm.settle()).contains(AlarmChange.CLEARED);
        assertThat(alarm.state()).isEqualTo(AlarmState.NORMAL);
        assertThat(alarm.settle()).isEmpty();
        assertThat(alarm.update(1, Condition.PRESENT)).contains(AlarmChange.RAISED);
        assertThat(alarm.occurrence()).isEqualTo(2);
    }

    @Test
    void whatIsSettledWhileSuppressed_isSaidByNobody_andDoesNotComeBack() {
        alarm.update(0, Condition.PRESENT);
        alarm.suppress();
        assertThat(alarm.settle()).isEmpty();
        assertThat(alarm.unsuppress()).isEmpty();
        assertThat(alarm.state()).isEqualTo(AlarmState.NORMAL);
    }

    @Test
    void whatWasPutAside_isTakenFromTheShelf() {
        alarm.update(0, Condition.PRESENT);
        alarm.shelve(1, 600);
        assertThat(alarm.settle()).contains(AlarmChange.CLEARED);
        assertThat(alarm.shelvedUntilS()).isEmpty();
    }
}
