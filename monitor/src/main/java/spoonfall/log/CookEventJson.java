package spoonfall.log;

import com.fasterxml.jackson.databind.node.ObjectNode;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;

/** What came out of a cook, as the record lists it. */
public final class CookEventJson {
    private CookEventJson() {}

    /** One word for what happened; statuses are not listed and have none. */
    public static String kind(CookEvent event) {
        if (event instanceof CookEvent.AlarmChanged) {
            return "alarm";
        }
        if (event instanceof CookEvent.StageEntered) {
            return "stage";
        }
        if (event instanceof CookEvent.Reminded) {
            return "reminder";
        }
        if (event instanceof CookEvent.TestChanged) {
            return "set-test";
        }
        return event instanceof CookEvent.CameBack ? "came-back" : "";
    }

    /** What is needed to list it. */
    public static ObjectNode detail(CookEvent event) {
        ObjectNode node = CookJson.object();
        if (event instanceof CookEvent.AlarmChanged changed) {
            CookAlarm alarm = changed.alarm();
            node.put("id", alarm.id()).put("alarm", alarm.name().wireName());
            node.put("change", changed.change().wireName());
            node.put("state", alarm.state().wireName()).put("text", alarm.text());
        } else if (event instanceof CookEvent.StageEntered entered) {
            node.put("stage", entered.stage().wireName());
        } else if (event instanceof CookEvent.Reminded reminded) {
            node.put("reminder", reminded.reminder().wireName()).put("text", reminded.text());
        } else if (event instanceof CookEvent.TestChanged changed) {
            node.put("id", changed.test().id()).put("change", changed.change().wireName());
            changed.test()
                    .seen()
                    .ifPresent(seen -> node.put("answer", seen.answer().wireName()));
        } else if (event instanceof CookEvent.CameBack back) {
            node.put("forS", back.forS());
        }
        return node;
    }
}
