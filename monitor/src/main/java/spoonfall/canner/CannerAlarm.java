package spoonfall.canner;

import spoonfall.alarm.AlarmState;

/**
 * One alarm of the canner as it stands.
 *
 * @param id its name and how often it was raised, such as {@code jars-boil-lost-2}; no alarm of a cook is called so
 * @param name which alarm
 * @param state where it is in its life cycle
 * @param raisedT seconds on the watch's scale at which it was raised
 * @param title one sentence: what is so
 * @param act one sentence: what to do
 */
public record CannerAlarm(
        String id, CannerAlarmName name, AlarmState state, double raisedT, String title, String act) {}
