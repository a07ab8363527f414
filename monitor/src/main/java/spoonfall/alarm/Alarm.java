package spoonfall.alarm;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One alarm and its life cycle. Times are seconds on the caller's scale and must not run backwards.
 *
 * <p>Shelving and suppression lie over the rest: beneath them the condition is followed as ever, so that the alarm
 * comes out in the state that its condition then has. A suppressed alarm may be shelved as well; suppression is on top.
 *
 * <p>Not safe for use by several threads.
 */
public final class Alarm {
    /** Longest time in seconds for which an alarm may be shelved: what is put aside for longer is forgotten. */
    public static final double LONGEST_SHELF_S = 1800;

    private final Delays delays;

    /** The state as if it were neither shelved nor suppressed. */
    private AlarmState beneath = AlarmState.NORMAL;

    private boolean suppressed;
    private OptionalDouble shelvedUntilS = OptionalDouble.empty();
    private int occurrence;
    private int toldOccurrence;
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
        if (suppressed) {
            return AlarmState.SUPPRESSED;
        }
        return shelvedUntilS.isPresent() ? AlarmState.SHELVED : beneath;
    }

    /** Whether what it warns of is so, delays elapsed, whether or not anybody is told. */
    public boolean present() {
        return beneath.active();
    }

    /** How often it was raised so far. */
    public int occurrence() {
        return occurrence;
    }

    /** When it was last raised; meaningless before the first time. */
    public double raisedAtS() {
        return raisedAtS;
    }

    /** Until when it is shelved; empty if it is not. */
    public OptionalDouble shelvedUntilS() {
        return shelvedUntilS;
    }

    /** Takes note of the condition at {@code atS} and says what that changed for those who are told, if anything. */
    public Optional<AlarmChange> update(double atS, Condition condition) {
        if (stays(condition)) {
            return Optional.empty();
        }
        Optional<AlarmChange> change = follow(atS);
        return state() == beneath ? told(change) : Optional.empty();
    }

    /** Takes note of a condition with which it stays as it is, as with nearly all of them; false if it must be {@link #update}d. */
    public boolean stays(Condition condition) {
        boolean stays = condition != (present() ? Condition.ABSENT : Condition.PRESENT);
        pending &= !stays;
        return stays;
    }

    private Optional<AlarmChange> follow(double atS) {
        if (!pending) {
            pending = true;
            pendingSinceS = atS;
        }
        double delayS = present() ? delays.offS() : delays.onS();
        if (atS - pendingSinceS < delayS) {
            return Optional.empty();
        }
        return Optional.of(present() ? clear() : raise(atS));
    }

    /** Somebody says that they know; says whether that changed anything. Who is not told cannot know. */
    public Optional<AlarmChange> acknowledge() {
        switch (state()) {
            case UNACKNOWLEDGED -> beneath = AlarmState.ACKNOWLEDGED;
            case RETURNED -> beneath = AlarmState.NORMAL;
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(AlarmChange.ACKNOWLEDGED);
    }

    /**
     * Somebody puts it aside for {@code forS} seconds from {@code atS}; shelving what is shelved sets its time anew.
     * What is suppressed is not to be seen, so it cannot be put aside.
     *
     * @throws IllegalArgumentException if {@code forS} is not above 0 or is longer than {@link #LONGEST_SHELF_S}
     */
    public Optional<AlarmChange> shelve(double atS, double forS) {
        if (!(forS > 0 && forS <= LONGEST_SHELF_S)) {
            throw new IllegalArgumentException(
                    "an alarm is shelved for at most " + LONGEST_SHELF_S + " s, not " + forS + " s");
        }
        if (suppressed) {
            return Optional.empty();
        }
        shelvedUntilS = OptionalDouble.of(atS + forS);
        return Optional.of(AlarmChange.SHELVED);
    }

    /** Takes it back from the shelf: it calls again if what it warns of is so, and is normal if it is not. */
    public Optional<AlarmChange> unshelve() {
        if (shelvedUntilS.isEmpty()) {
            return Optional.empty();
        }
        shelvedUntilS = OptionalDouble.empty();
        beneath = present() ? AlarmState.UNACKNOWLEDGED : AlarmState.NORMAL;
        return suppressed ? Optional.empty() : told(Optional.of(AlarmChange.UNSHELVED));
    }

    /** Lets time pass: what has been on the shelf for its time comes back. */
    public Optional<AlarmChange> pass(double atS) {
        return shelvedUntilS.isPresent() && atS >= shelvedUntilS.getAsDouble() ? unshelve() : Optional.empty();
    }

    /** It means nothing now, by design. Says nothing if there was nothing to be seen of it. */
    public Optional<AlarmChange> suppress() {
        if (suppressed) {
            return Optional.empty();
        }
        boolean seen = state() != AlarmState.NORMAL;
        suppressed = true;
        return seen ? Optional.of(AlarmChange.SUPPRESSED) : Optional.empty();
    }

    /**
     * It means something again. What was acknowledged and never was over stays acknowledged; what is over is normal.
     * What began meanwhile is {@link AlarmChange#RAISED} only now.
     */
    public Optional<AlarmChange> unsuppress() {
        if (!suppressed) {
            return Optional.empty();
        }
        suppressed = false;
        if (beneath == AlarmState.RETURNED) {
            beneath = AlarmState.NORMAL;
        }
        if (state() == AlarmState.NORMAL) {
            return Optional.empty();
        }
        boolean begun = state() == AlarmState.UNACKNOWLEDGED && occurrence > toldOccurrence;
        return told(Optional.of(begun ? AlarmChange.RAISED : AlarmChange.UNSUPPRESSED));
    }

    /** What it warned of is settled, delays or not: it is normal, and begins anew with whatever comes. */
    public Optional<AlarmChange> settle() {
        boolean seen = !suppressed && state() != AlarmState.NORMAL;
        pending = false;
        beneath = AlarmState.NORMAL;
        shelvedUntilS = OptionalDouble.empty();
        return seen ? Optional.of(AlarmChange.CLEARED) : Optional.empty();
    }

    private Optional<AlarmChange> told(Optional<AlarmChange> change) {
        if (change.isPresent() && state() == beneath) {
            toldOccurrence = occurrence;
        }
        return change;
    }

    private AlarmChange raise(double atS) {
        pending = false;
        beneath = AlarmState.UNACKNOWLEDGED;
        occurrence++;
        raisedAtS = atS;
        return AlarmChange.RAISED;
    }

    private AlarmChange clear() {
        pending = false;
        beneath = beneath == AlarmState.ACKNOWLEDGED ? AlarmState.NORMAL : AlarmState.RETURNED;
        return AlarmChange.CLEARED;
    }
}
