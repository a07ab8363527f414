package spoonfall.alarm;

import java.util.Optional;

/**
 * One alarm and its life cycle. Times are seconds on the caller's scale and must not run backwards.
 *
 * <p>Not safe for use by several threads.
 */
public final class Alarm {
    private final Delays delays;
    private AlarmState state = AlarmState.NORMAL;
    private int occurrence;
    private double raisedAtS;

    /** When the condition that would change the state was first seen without a break. */
    private double pendingSinceS;

    private boolean pending;

    /** A normal alarm that waits for {@code delays}. */
    public Alarm(Delays delays) {
        this.delays = delays;
    }

    /** Where it is in its life cycle. */
    public AlarmState state() {
        return state;
    }

    /** How often it was raised so far. */
    public int occurrence() {
        return occurrence;
    }

    /** When it was last raised; meaningless before the first time. */
    public double raisedAtS() {
        return raisedAtS;
    }

    /** Takes note of the condition at {@code atS} and says what that changed, if anything. */
    public Optional<AlarmChange> update(double atS, Condition condition) {
        boolean towardsChange = condition == (state.active() ? Condition.ABSENT : Condition.PRESENT);
        if (!towardsChange) {
            pending = false;
            return Optional.empty();
        }
        if (!pending) {
            pending = true;
            pendingSinceS = atS;
        }
        double delayS = state.active() ? delays.offS() : delays.onS();
        if (atS - pendingSinceS < delayS) {
            return Optional.empty();
        }
        return Optional.of(state.active() ? clear() : raise(atS));
    }

    /** Somebody says that they know; says whether that changed anything. */
    public Optional<AlarmChange> acknowledge() {
        switch (state) {
            case UNACKNOWLEDGED -> state = AlarmState.ACKNOWLEDGED;
            case RETURNED -> state = AlarmState.NORMAL;
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(AlarmChange.ACKNOWLEDGED);
    }

    /**
     * Ends the alarm at once, acknowledged or not, because another one says more: the gel point makes the
     * call to the set tests void (ISA-18.2 suppressed by design).
     */
    public Optional<AlarmChange> supersede() {
        pending = false;
        if (state == AlarmState.NORMAL) {
            return Optional.empty();
        }
        state = AlarmState.NORMAL;
        return Optional.of(AlarmChange.CLEARED);
    }

    private AlarmChange raise(double atS) {
        pending = false;
        state = AlarmState.UNACKNOWLEDGED;
        occurrence++;
        raisedAtS = atS;
        return AlarmChange.RAISED;
    }

    private AlarmChange clear() {
        pending = false;
        state = state == AlarmState.ACKNOWLEDGED ? AlarmState.NORMAL : AlarmState.RETURNED;
        return AlarmChange.CLEARED;
    }
}
