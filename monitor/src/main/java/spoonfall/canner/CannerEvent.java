package spoonfall.canner;

import spoonfall.alarm.AlarmChange;

/** What happens to the jars. */
public sealed interface CannerEvent {
    /** Seconds on the watch's scale. */
    double t();

    /**
     * A phase began.
     *
     * @param t when
     * @param phase which
     */
    record PhaseEntered(double t, CannerPhase phase) implements CannerEvent {}

    /**
     * An alarm changed.
     *
     * @param t when
     * @param change what happened to it
     * @param alarm the alarm afterwards
     */
    record AlarmChanged(double t, AlarmChange change, CannerAlarm alarm) implements CannerEvent {}

    /**
     * Anything else that can be seen changed: the thermometer fell silent, a jar was looked at, a tap was taken back.
     *
     * @param t when
     */
    record Noted(double t) implements CannerEvent {}
}
