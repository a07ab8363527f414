package spoonfall.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every state times every event, by the state diagram of ISA-18.2 / IEC 62682 (from memory). Of its states Spoonfall has
 * no latched one and no out of service. Ours is: shelving and suppression lie over the alarm, whose condition is followed
 * beneath them, and an alarm that was acknowledged before it was suppressed and never was over is acknowledged after it.
 */
final class AlarmTableTest {
    private static final double ON_S = 10;
    private static final double OFF_S = 5;
    private static final double SHELF_S = 600;

    private final Alarm alarm = new Alarm(new Delays(ON_S, OFF_S));
    private double t;

    private Optional<AlarmChange> lasts(Condition condition, double forS) {
        alarm.update(t, condition);
        t += forS;
        return alarm.update(t, condition);
    }

    private Optional<AlarmChange> happens(String event) {
        return switch (event) {
            case "present" -> lasts(Condition.PRESENT, ON_S);
            case "absent" -> lasts(Condition.ABSENT, OFF_S);
            case "acknowledge" -> alarm.acknowledge();
            case "shelve" -> alarm.shelve(t, SHELF_S);
            case "unshelve" -> alarm.unshelve();
            case "time-up" -> {
                t += SHELF_S;
                yield alarm.pass(t);
            }
            case "suppress" -> alarm.suppress();
            case "unsuppress" -> alarm.unsuppress();
            default -> throw new IllegalArgumentException(event);
        };
    }

    /** Brings a new alarm into a state; {@code +} and {@code -} say whether its condition is present beneath. */
    private void bringTo(String state) {
        String way = switch (state) {
            case "normal" -> "";
            case "unacknowledged" -> "present";
            case "acknowledged" -> "present acknowledge";
            case "returned" -> "present absent";
            case "shelved-" -> "present absent shelve";
            case "shelved+" -> "present shelve";
            case "suppressed-" -> "suppress";
            case "suppressed+" -> "present suppress";
            case "suppressed-known+" -> "present acknowledge suppress";
            case "suppressed-shelved+" -> "present shelve suppress";
            default -> throw new IllegalArgumentException(state);
        };
        List.of(way.split(" ", -1)).stream().filter(event -> !event.isEmpty()).forEach(this::happens);
        assertThat(alarm.state().wireName()).isEqualTo(state.replaceAll("-known|-shelved|[-+]", ""));
        assertThat(alarm.present()).as("condition of %s", state).isEqualTo(isPresentIn(state));
    }

    private static boolean isPresentIn(String state) {
        return state.endsWith("acknowledged") || state.endsWith("+");
    }

    @ParameterizedTest(name = "{0} + {1} -> {2} ({3})")
    @CsvSource({
        "normal, present, unacknowledged, raised",
        "normal, absent, normal, -",
        "normal, acknowledge, normal, -",
        "normal, shelve, shelved, shelved",
        "normal, unshelve, normal, -",
        "normal, time-up, normal, -",
        "normal, suppress, suppressed, -",
        "normal, unsuppress, normal, -",
        "unacknowledged, present, unacknowledged, -",
        "unacknowledged, absent, returned, cleared",
        "unacknowledged, acknowledge, acknowledged, acknowledged",
        "unacknowledged, shelve, shelved, shelved",
        "unacknowledged, unshelve, unacknowledged, -",
        "unacknowledged, time-up, unacknowledged, -",
        "unacknowledged, suppress, suppressed, suppressed",
        "unacknowledged, unsuppress, unacknowledged, -",
        "acknowledged, present, acknowledged, -",
        "acknowledged, absent, normal, cleared",
        "acknowledged, acknowledge, acknowledged, -",
        "acknowledged, shelve, shelved, shelved",
        "acknowledged, unshelve, acknowledged, -",
        "acknowledged, time-up, acknowledged, -",
        "acknowledged, suppress, suppressed, suppressed",
        "acknowledged, unsuppress, acknowledged, -",
        "returned, present, unacknowledged, raised",
        "returned, absent, returned, -",
        "returned, acknowledge, normal, acknowledged",
        "returned, shelve, shelved, shelved",
        "returned, unshelve, returned, -",
        "returned, time-up, returned, -",
        "returned, suppress, suppressed, suppressed",
        "returned, unsuppress, returned, -",
        "shelved-, present, shelved, -",
        "shelved-, absent, shelved, -",
        "shelved-, acknowledge, shelved, -",
        "shelved-, shelve, shelved, shelved",
        "shelved-, unshelve, normal, unshelved",
        "shelved-, time-up, normal, unshelved",
        "shelved-, suppress, suppressed, suppressed",
        "shelved-, unsuppress, shelved, -",
        "shelved+, present, shelved, -",
        "shelved+, absent, shelved, -",
        "shelved+, acknowledge, shelved, -",
        "shelved+, shelve, shelved, shelved",
        "shelved+, unshelve, unacknowledged, unshelved",
        "shelved+, time-up, unacknowledged, unshelved",
        "shelved+, suppress, suppressed, suppressed",
        "shelved+, unsuppress, shelved, -",
        "suppressed-, present, suppressed, -",
        "suppressed-, absent, suppressed, -",
        "suppressed-, acknowledge, suppressed, -",
        "suppressed-, shelve, suppressed, -",
        "suppressed-, unshelve, suppressed, -",
        "suppressed-, time-up, suppressed, -",
        "suppressed-, suppress, suppressed, -",
        "suppressed-, unsuppress, normal, -",
        "suppressed+, present, suppressed, -",
        "suppressed+, absent, suppressed, -",
        "suppressed+, acknowledge, suppressed, -",
        "suppressed+, shelve, suppressed, -",
        "suppressed+, unshelve, suppressed, -",
        "suppressed+, time-up, suppressed, -",
        "suppressed+, suppress, suppressed, -",
        "suppressed+, unsuppress, unacknowledged, unsuppressed",
        "suppressed-known+, unsuppress, acknowledged, unsuppressed",
        "suppressed-shelved+, unsuppress, shelved, unsuppressed",
        "suppressed-shelved+, unshelve, suppressed, -",
        "suppressed-shelved+, time-up, suppressed, -",
    })
    void transitions(String state, String event, String next, String change) {
        bringTo(state);
        Optional<AlarmChange> changed = happens(event);
        assertThat(alarm.state().wireName()).isEqualTo(next);
        assertThat(changed.map(AlarmChange::wireName).orElse("-")).isEqualTo(change);
    }

    @Test
    void everyStateAndChange_isNamedInTheTable() {
        assertThat(AlarmState.values()).hasSize(6);
        assertThat(AlarmChange.values())
                .hasSize(7)
                .allSatisfy(change ->
                        assertThat(change.wireName()).isEqualTo(change.name().toLowerCase(Locale.ROOT)));
    }

    @Test
    void whatBeginsOnTheShelf_callsWhenItsTimeIsUp() {
        bringTo("shelved-");
        happens("present");
        assertThat(happens("time-up")).contains(AlarmChange.UNSHELVED);
        assertThat(alarm.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(alarm.occurrence()).isEqualTo(2);
    }

    @Test
    void whatEndsOnTheShelf_isNormalWhenItsTimeIsUp() {
        bringTo("shelved+");
        happens("absent");
        assertThat(happens("time-up")).contains(AlarmChange.UNSHELVED);
        assertThat(alarm.state()).isEqualTo(AlarmState.NORMAL);
    }

    @Test
    void whatBeginsWhileSuppressed_isRaisedWhenItMeansSomethingAgain() {
        bringTo("suppressed-");
        happens("present");
        assertThat(happens("unsuppress")).contains(AlarmChange.RAISED);
        assertThat(alarm.state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void whatEndsWhileSuppressed_isNormalAfterwardsAndNobodyIsAsked() {
        bringTo("suppressed+");
        happens("absent");
        assertThat(happens("unsuppress")).isEmpty();
        assertThat(alarm.state()).isEqualTo(AlarmState.NORMAL);
    }

    @Test
    void theShelf_keepsItUntilItsTimeAndNoLonger() {
        bringTo("shelved+");
        double until = alarm.shelvedUntilS().orElseThrow();
        assertThat(until).isEqualTo(t + SHELF_S);
        assertThat(alarm.pass(until - 0.1)).isEmpty();
        assertThat(alarm.pass(until)).contains(AlarmChange.UNSHELVED);
        assertThat(alarm.shelvedUntilS()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -60, 1801, Double.NaN, Double.POSITIVE_INFINITY})
    void aShelfForNoTimeOrForTooLong_isRefused(double forS) {
        assertThatThrownBy(() -> alarm.shelve(0, forS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(forS));
    }

    @Test
    void theLongestShelf_isHalfAnHour() {
        assertThat(alarm.shelve(0, 1800)).contains(AlarmChange.SHELVED);
    }
}
