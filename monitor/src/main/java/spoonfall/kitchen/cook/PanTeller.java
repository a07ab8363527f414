package spoonfall.kitchen.cook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spoonfall.afternoon.Reminder;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookStatus;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.thermometer.Thermometer;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenCounts;
import spoonfall.log.CookJson;

/**
 * Tells what comes out of a pan: events of its cook, reminders, and how its thermometers are. What is told is in the record as
 * well. Used by the kitchen's thread alone.
 */
public final class PanTeller {
    /** One that the record had told this shortly before is not told anew. */
    private static final double REMINDED_WITHIN_S = 60;

    private final PanCook cook;
    private final PanLog log;
    private final PanNews news;
    private final Thermometers thermometers;
    private final KitchenCounts counts;
    private final Map<String, Double> remindedT = new HashMap<>();

    /** Nothing was told yet. */
    public PanTeller(PanCook cook, PanLog log, PanNews news, Thermometers thermometers, KitchenCounts counts) {
        this.cook = cook;
        this.log = log;
        this.news = news;
        this.thermometers = thermometers;
        this.counts = counts;
    }

    /** Events of the cook, in order. */
    public void happened(List<CookEvent> events) {
        for (CookEvent event : events) {
            if (event instanceof CookEvent.StatusTaken taken) {
                cook.now().filter(begun -> log.again()).ifPresent(begun -> draw(begun, taken.status()));
                continue;
            }
            news.add(seq -> new KitchenChange.Cook(seq, event));
            log.happened(event);
            if (event instanceof CookEvent.AlarmChanged alarm && !log.again()) {
                follow(alarm);
            }
        }
    }

    /** A cook that is gone through again gets its picture and its story from its statuses, which no page takes meanwhile. */
    private void draw(Cook begun, CookStatus status) {
        begun.draw(status, thermometers.first().byHand());
        begun.story().follow(status);
    }

    private void follow(CookEvent.AlarmChanged event) {
        boolean raised = event.change() == AlarmChange.RAISED;
        if (raised) {
            counts.countRaised(event.alarm().name());
        }
        Thermometer first = thermometers.first();
        boolean silent = raised && event.alarm().name() == AlarmName.PROBE_SILENT;
        if (silent && first.state() == ProbeState.State.READING && first.becomes(ProbeState.State.SILENT)) {
            tell(first);
        }
    }

    /** How a thermometer is. */
    public void tell(Thermometer thermometer) {
        news.add(seq -> new KitchenChange.Probe(seq, cook.watchedS(), thermometers.state(thermometer)));
    }

    /** A reminder of the afternoon, unless the record holds that it was just said. */
    public void remind(Reminder reminder, double laterS, double nowT) {
        double saidT = remindedT.getOrDefault(reminder.name(), Double.NEGATIVE_INFINITY);
        if (!log.again() && saidT <= nowT - REMINDED_WITHIN_S) {
            say(reminder.name(), reminder.marked(laterS));
        }
    }

    /** Something to be said aloud. */
    public void say(String name, String text) {
        double t = cook.watchedS();
        cook.now().ifPresent(begun -> {
            ObjectNode detail = CookJson.object().put("t", t).put("name", name).put("text", text);
            log.said(begun, Words.REMINDED, detail);
        });
        news.add(seq -> new KitchenChange.Reminded(seq, t, name, text));
    }

    /** What was said aloud in an earlier run. */
    public void saidBefore(ObjectNode detail) {
        double t = CookJson.number(detail, "t");
        String name = CookJson.text(detail, "name");
        remindedT.put(name, t);
        news.add(seq -> new KitchenChange.Reminded(seq, t, name, CookJson.text(detail, "text")));
    }

    /** In a new cook nothing was said yet. */
    public void clear() {
        remindedT.clear();
    }
}
