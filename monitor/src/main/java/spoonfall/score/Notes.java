package spoonfall.score;

import java.util.ArrayList;
import java.util.List;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;

/** Notes down what the monitor tells of a cook while it runs. */
final class Notes {
    private final List<Observed.Look> looks = new ArrayList<>();
    private final List<Observed.Call> raised = new ArrayList<>();
    private final List<Observed.Call> cleared = new ArrayList<>();

    void take(List<CookEvent> events) {
        for (CookEvent event : events) {
            if (event instanceof CookEvent.StatusTaken taken) {
                looks.add(new Observed.Look(taken.status().t(), taken.status().forecast()));
            } else if (event instanceof CookEvent.AlarmChanged changed) {
                take(changed);
            }
        }
    }

    private void take(CookEvent.AlarmChanged changed) {
        Observed.Call call =
                new Observed.Call(changed.t(), changed.alarm().name().wireName());
        if (changed.change() == AlarmChange.RAISED) {
            raised.add(call);
        } else if (changed.change() == AlarmChange.UNSUPPRESSED) {
            takeBackTheEnd(call.alarm());
        } else if (changed.change() == AlarmChange.CLEARED || changed.change() == AlarmChange.SUPPRESSED) {
            cleared.add(call);
        }
    }

    /** An alarm that stands after it was suppressed had not ended. */
    private void takeBackTheEnd(String alarm) {
        for (int i = cleared.size() - 1; i >= 0; i--) {
            if (cleared.get(i).alarm().equals(alarm)) {
                cleared.remove(i);
                return;
            }
        }
    }

    /** All that was noted of a cook that was measured against {@code settings}. */
    Observed observed(CookSettings settings) {
        return new Observed(settings, looks, raised, cleared);
    }
}
