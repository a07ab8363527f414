package spoonfall.cook.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoonfall.alarm.AlarmChange;
import spoonfall.alarm.AlarmState;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.Suppression;

/** All alarms of a cook together: what is told, what stands and in which order. */
final class AlarmBoardTest {
    private final AlarmBoard board = new AlarmBoard();
    private final List<CookEvent> events = new ArrayList<>();

    private void update(double t, AlarmName name, Condition condition, String title) {
        board.update(t, name, condition, () -> new AlarmText(title, "Act."), events);
    }

    private void raise(double t, AlarmName name) {
        update(t, name, Condition.PRESENT, name.wireName());
    }

    private List<AlarmChange> changes() {
        return events.stream()
                .map(event -> ((CookEvent.AlarmChanged) event).change())
                .toList();
    }

    private CookAlarm last() {
        return ((CookEvent.AlarmChanged) events.get(events.size() - 1)).alarm();
    }

    @Test
    void anAlarm_hasTheWordsItBeganWith() {
        update(5, AlarmName.STALLED, Condition.PRESENT, "First.");
        update(6, AlarmName.STALLED, Condition.PRESENT, "Later.");
        update(7, AlarmName.STALLED, Condition.ABSENT, "Over.");
        update(17, AlarmName.STALLED, Condition.ABSENT, "Over.");
        assertThat(changes()).containsExactly(AlarmChange.RAISED, AlarmChange.CLEARED);
        assertThat(last().text()).isEqualTo("First. Act.");
        assertThat(last().id()).isEqualTo("stalled-1");
        assertThat(last().raisedT()).isEqualTo(5);
        assertThat(last().state()).isEqualTo(AlarmState.RETURNED);
        update(30, AlarmName.STALLED, Condition.PRESENT, "Again.");
        assertThat(last().text()).isEqualTo("Again. Act.");
        assertThat(last().id()).isEqualTo("stalled-2");
    }

    @Test
    void whatStands_isOrderedByItsStateThenHowUrgentItIsThenTheNewest() {
        raise(1, AlarmName.PROBE_STUCK);
        raise(2, AlarmName.STALLED);
        raise(3, AlarmName.PROBE_SILENT);
        raise(4, AlarmName.GEL_POINT);
        raise(5, AlarmName.PLATE_READY);
        raise(6, AlarmName.START_SET_TESTS);
        board.acknowledge(7, "gel-point-1", events);
        board.shelve(7, "probe-silent-1", 60, events);
        board.suppress(7, AlarmName.START_SET_TESTS, Optional.of(Suppression.GEL_POINT), events);
        assertThat(board.standing())
                .extracting(CookAlarm::name)
                .containsExactly(
                        AlarmName.PLATE_READY,
                        AlarmName.STALLED,
                        AlarmName.PROBE_STUCK,
                        AlarmName.GEL_POINT,
                        AlarmName.PROBE_SILENT);
    }

    @Test
    void whatIsWrong_standsAbovePromptsAsUrgent_thoughTheyCameLater() {
        raise(1, AlarmName.PAST_GEL_POINT);
        raise(2, AlarmName.PLATE_READY);
        raise(3, AlarmName.STALLED);
        assertThat(board.standing())
                .extracting(CookAlarm::name)
                .containsExactly(AlarmName.PAST_GEL_POINT, AlarmName.PLATE_READY, AlarmName.STALLED);
    }

    @Test
    void anAlarmThatIsSuppressed_isStillSo_andSaysWhyItMeansNothing() {
        raise(1, AlarmName.STALLED);
        board.suppress(2, AlarmName.STALLED, Optional.of(Suppression.SET_TEST), events);
        assertThat(last().suppressedBy()).contains(Suppression.SET_TEST);
        assertThat(board.present(AlarmName.STALLED)).isTrue();
        assertThat(board.standing()).isEmpty();
        board.suppress(3, AlarmName.STALLED, Optional.empty(), events);
        assertThat(changes()).containsExactly(AlarmChange.RAISED, AlarmChange.SUPPRESSED, AlarmChange.UNSUPPRESSED);
        assertThat(last().suppressedBy()).isEmpty();
        board.suppress(4, AlarmName.STALLED, Optional.empty(), events);
        assertThat(events).hasSize(3);
    }

    @Test
    void whatBeginsWhileItMeansNothing_hasItsWordsWhenItIsTold() {
        board.suppress(1, AlarmName.STALLED, Optional.of(Suppression.SET_TEST), events);
        raise(2, AlarmName.STALLED);
        assertThat(events).isEmpty();
        board.suppress(3, AlarmName.STALLED, Optional.empty(), events);
        assertThat(changes()).containsExactly(AlarmChange.RAISED);
        assertThat(last().title()).isEqualTo("stalled");
    }

    @Test
    void onlyTheLatestOfItsName_canBeAnswered() {
        raise(1, AlarmName.STALLED);
        board.over(2, AlarmName.STALLED, events);
        raise(3, AlarmName.STALLED);
        assertThat(board.acknowledge(4, "stalled-1", events)).isEmpty();
        assertThat(board.shelve(4, "stalled-1", 60, events)).isEmpty();
        assertThat(board.acknowledge(4, "stalled-0", events)).isEmpty();
        assertThat(board.acknowledge(4, "gel-point-0", events)).isEmpty();
        assertThat(board.acknowledge(4, "stalled-2", events).orElseThrow().state())
                .isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(last().state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(changes())
                .containsExactly(AlarmChange.RAISED, AlarmChange.CLEARED, AlarmChange.RAISED, AlarmChange.ACKNOWLEDGED);
    }

    @Test
    void whatWasPutAside_canBeTakenBackByAnyIdItHad() {
        raise(1, AlarmName.STALLED);
        board.over(2, AlarmName.STALLED, events);
        raise(3, AlarmName.STALLED);
        assertThat(board.shelve(4, "stalled-2", 60, events)).contains(last());
        assertThat(last().shelvedUntilT()).hasValue(64);
        assertThat(board.unshelve(5, "stalled-3", events)).isEmpty();
        assertThat(board.unshelve(5, "stalled-0", events)).isEmpty();
        assertThat(board.unshelve(5, "stalled-1", events).orElseThrow().state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(changes()).endsWith(AlarmChange.SHELVED, AlarmChange.UNSHELVED);
        assertThat(board.unshelve(6, "stalled-2", events)).isPresent();
        assertThat(changes()).endsWith(AlarmChange.SHELVED, AlarmChange.UNSHELVED);
    }

    @Test
    void whatWasPutAside_comesBackWhenItsTimeIsUp() {
        raise(1, AlarmName.STALLED);
        board.shelve(4, "stalled-1", 60, events);
        board.pass(63.9, events);
        assertThat(changes()).endsWith(AlarmChange.SHELVED);
        board.pass(64, events);
        assertThat(changes()).endsWith(AlarmChange.UNSHELVED);
    }

    @Test
    void whetherItWasRaisedSinceAMoment_countsThatMoment() {
        assertThat(board.raisedSince(Double.NEGATIVE_INFINITY, AlarmName.GEL_POINT))
                .isFalse();
        assertThat(board.raisedSince(0, AlarmName.GEL_POINT)).isFalse();
        raise(10, AlarmName.GEL_POINT);
        assertThat(board.raisedSince(10, AlarmName.GEL_POINT)).isTrue();
        assertThat(board.raisedSince(10.1, AlarmName.GEL_POINT)).isFalse();
    }

    @Test
    void whatIsSettled_isToldOnce_andBeginsAnew() {
        raise(1, AlarmName.GEL_POINT);
        board.over(2, AlarmName.GEL_POINT, events);
        board.over(3, AlarmName.GEL_POINT, events);
        assertThat(changes()).containsExactly(AlarmChange.RAISED, AlarmChange.CLEARED);
        assertThat(board.present(AlarmName.GEL_POINT)).isFalse();
        assertThat(board.standing()).isEmpty();
    }
}
