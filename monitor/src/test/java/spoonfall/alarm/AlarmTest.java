package spoonfall.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** The life cycle by the state table of ISA-18.2 (from memory), for the states that Spoonfall uses. */
final class AlarmTest {
    private final Alarm alarm = new Alarm(new Delays(10, 5));

    private void raise() {
        alarm.update(0, Condition.PRESENT);
        alarm.update(10, Condition.PRESENT);
        assertThat(alarm.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    private void clear(double fromS) {
        alarm.update(fromS, Condition.ABSENT);
        assertThat(alarm.update(fromS + 5, Condition.ABSENT)).contains(AlarmChange.CLEARED);
    }

    @Test
    void aConditionThatLasts_raisesAfterTheOnDelayAndNotBefore() {
        assertThat(alarm.update(0, Condition.PRESENT)).isEmpty();
        assertThat(alarm.update(9.9, Condition.PRESENT)).isEmpty();
        assertThat(alarm.update(10, Condition.PRESENT)).contains(AlarmChange.RAISED);
        assertThat(alarm.raisedAtS()).isEqualTo(10);
        assertThat(alarm.occurrence()).isEqualTo(1);
    }

    @Test
    void aConditionThatBreaks_beginsItsDelayAnew() {
        alarm.update(0, Condition.PRESENT);
        alarm.update(8, Condition.ABSENT);
        alarm.update(9, Condition.PRESENT);
        assertThat(alarm.update(18, Condition.PRESENT)).isEmpty();
        assertThat(alarm.update(19, Condition.PRESENT)).contains(AlarmChange.RAISED);
    }

    @Test
    void itStays_withWhatCannotChangeIt_whichBreaksADelayLikeAnyOther() {
        alarm.update(0, Condition.PRESENT);
        assertThat(alarm.stays(Condition.PRESENT)).isFalse();
        assertThat(alarm.stays(Condition.UNDECIDED)).isTrue();
        assertThat(alarm.update(10, Condition.PRESENT)).isEmpty();
        assertThat(alarm.update(20, Condition.PRESENT)).contains(AlarmChange.RAISED);
        assertThat(alarm.stays(Condition.PRESENT)).isTrue();
        assertThat(alarm.stays(Condition.ABSENT)).isFalse();
    }

    @Test
    void theDeadband_neitherRaisesNorClears() {
        alarm.update(0, Condition.UNDECIDED);
        assertThat(alarm.update(100, Condition.UNDECIDED)).isEmpty();
        alarm.update(200, Condition.PRESENT);
        alarm.update(210, Condition.PRESENT);
        alarm.update(300, Condition.UNDECIDED);
        assertThat(alarm.update(400, Condition.UNDECIDED)).isEmpty();
        assertThat(alarm.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void unacknowledged_acknowledged_normal() {
        raise();
        assertThat(alarm.acknowledge()).contains(AlarmChange.ACKNOWLEDGED);
        assertThat(alarm.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        clear(20);
        assertThat(alarm.state()).isEqualTo(AlarmState.NORMAL);
    }

    @Test
    void unacknowledged_returned_normalWhenAcknowledged() {
        raise();
        clear(20);
        assertThat(alarm.state()).isEqualTo(AlarmState.RETURNED);
        assertThat(alarm.acknowledge()).contains(AlarmChange.ACKNOWLEDGED);
        assertThat(alarm.state()).isEqualTo(AlarmState.NORMAL);
    }

    @Test
    void returned_unacknowledgedWhenItComesBack() {
        raise();
        clear(20);
        alarm.update(30, Condition.PRESENT);
        assertThat(alarm.update(40, Condition.PRESENT)).contains(AlarmChange.RAISED);
        assertThat(alarm.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(alarm.occurrence()).isEqualTo(2);
    }

    @Test
    void acknowledgingAgainOrWhatIsNormal_changesNothing() {
        assertThat(alarm.acknowledge()).isEmpty();
        raise();
        alarm.acknowledge();
        assertThat(alarm.acknowledge()).isEmpty();
        assertThat(alarm.state()).isEqualTo(AlarmState.ACKNOWLEDGED);
    }

    @Test
    void anAlarmThatStaysRaised_isNotRaisedAgain() {
        raise();
        assertThat(alarm.update(50, Condition.PRESENT)).isEmpty();
        alarm.acknowledge();
        assertThat(alarm.update(100, Condition.PRESENT)).isEmpty();
        assertThat(alarm.occurrence()).isEqualTo(1);
    }

    @Test
    void above_hasADeadband() {
        assertThat(Condition.above(10, 10, 1)).isEqualTo(Condition.PRESENT);
        assertThat(Condition.above(9.5, 10, 1)).isEqualTo(Condition.UNDECIDED);
        assertThat(Condition.above(9, 10, 1)).isEqualTo(Condition.ABSENT);
    }

    @Test
    void negativeDelays_areRefused() {
        assertThatThrownBy(() -> new Delays(-1, 0)).hasMessageContaining("-1");
    }
}
