package spoonfall.cook;

import java.util.Optional;
import java.util.OptionalDouble;
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
 * @param shelvedUntilT seconds of the cook until which it is put aside; empty if it is not
 * @param suppressedBy why it means nothing just now; empty if it is not suppressed
 */
public record CookAlarm(
        String id,
        AlarmName name,
        AlarmState state,
        double raisedT,
        String title,
        String act,
        OptionalDouble shelvedUntilT,
        Optional<Suppression> suppressedBy) {
    /** Title and act as one text. */
    public String text() {
        return act.isEmpty() ? title : title + " " + act;
    }
}
