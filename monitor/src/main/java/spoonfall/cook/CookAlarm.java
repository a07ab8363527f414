package spoonfall.cook;

import spoonfall.alarm.AlarmState;

/**
 * One alarm as it stands.
 *
 * @param id its name and how often it was raised, such as {@code stalled-2}
 * @param name which alarm
 * @param state where it is in its life cycle
 * @param raisedT seconds of the cook at which it was raised
 * @param title one sentence: what is so
 * @param act one sentence: what to do
 */
public record CookAlarm(String id, AlarmName name, AlarmState state, double raisedT, String title, String act) {
    /** Title and act as one text. */
    public String text() {
        return act.isEmpty() ? title : title + " " + act;
    }
}
