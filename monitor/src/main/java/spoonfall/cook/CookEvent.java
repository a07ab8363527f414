package spoonfall.cook;

import spoonfall.alarm.AlarmChange;
import spoonfall.cook.monitor.CookMonitor;

/** Something that happened in a cook. */
public sealed interface CookEvent {
    /** Seconds of the cook at which it happened. */
    double t();

    /**
     * How the pan is, every {@link CookMonitor#STATUS_EVERY_S} seconds.
     *
     * @param status the pan
     */
    record StatusTaken(CookStatus status) implements CookEvent {
        @Override
        public double t() {
            return status.t();
        }
    }

    /**
     * The cook entered another stage.
     *
     * @param t seconds of the cook
     * @param stage the new one
     */
    record StageEntered(double t, Stage stage) implements CookEvent {}

    /**
     * An alarm changed: it was raised, acknowledged, cleared, put aside, taken back or suppressed.
     *
     * @param t seconds of the cook
     * @param change which of these
     * @param alarm the alarm afterwards
     */
    record AlarmChanged(double t, AlarmChange change, CookAlarm alarm) implements CookEvent {}

    /**
     * The cook is reminded of something; nothing is wrong.
     *
     * @param t seconds of the cook
     * @param reminder of what
     * @param text one sentence, with marks
     */
    record Reminded(double t, ReminderName reminder, String text) implements CookEvent {}

    /**
     * The watch goes on after nobody watched.
     *
     * @param t seconds of the cook at which it goes on
     * @param forS for how many seconds nobody watched
     */
    record CameBack(double t, double forS) implements CookEvent {}

    /**
     * A set test began, was answered or was taken back.
     *
     * @param t seconds of the cook
     * @param change which of these
     * @param test the test afterwards
     */
    record TestChanged(double t, TestChange change, SetTest test) implements CookEvent {}
}
