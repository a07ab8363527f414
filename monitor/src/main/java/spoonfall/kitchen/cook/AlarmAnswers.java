package spoonfall.kitchen.cook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import spoonfall.alarm.AlarmChange;
import spoonfall.alarm.AlarmState;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.log.CookJson;

/** What somebody says of a pan's alarms, and what becomes of it when the cook is gone through again. Used by the kitchen's thread alone. */
public final class AlarmAnswers {
    private final PanCook cook;
    private final PanLog log;
    private final PanNews news;
    private final PanTeller teller;
    private final Set<AlarmName> acknowledged = EnumSet.noneOf(AlarmName.class);

    /** Nobody knows of any alarm yet. */
    public AlarmAnswers(PanCook cook, PanLog log, PanNews news, PanTeller teller) {
        this.cook = cook;
        this.log = log;
        this.news = news;
        this.teller = teller;
    }

    /** Somebody knows of it; empty if there never was one of that id. */
    public Optional<CookAlarm> acknowledge(String id, long atNanos) {
        ObjectNode detail = CookJson.object().put("id", id);
        Optional<CookAlarm> known = answer(Words.ACKNOWLEDGE, detail, monitor -> monitor.acknowledge(id, atNanos));
        known.ifPresent(alarm -> acknowledged.add(alarm.name()));
        return known;
    }

    /** Somebody puts it aside for so many minutes; empty if there is none of that id. */
    public Optional<CookAlarm> shelve(String id, int minutes, long atNanos) {
        ObjectNode detail = CookJson.object().put("id", id).put("minutes", minutes);
        return answer(Words.SHELVE, detail, monitor -> monitor.shelve(id, minutes, atNanos));
    }

    /** Somebody takes it back; empty if there never was one of that id. */
    public Optional<CookAlarm> unshelve(String id, long atNanos) {
        ObjectNode detail = CookJson.object().put("id", id);
        return answer(Words.UNSHELVE, detail, monitor -> monitor.unshelve(id, atNanos));
    }

    private Optional<CookAlarm> answer(
            String kind, ObjectNode detail, Function<CookMonitor, Optional<CookMonitor.Answer>> word) {
        return cook.now()
                .flatMap(current -> word.apply(current.monitor()).map(done -> {
                    log.said(current, kind, detail);
                    teller.happened(done.events());
                    news.stir();
                    return done.alarm();
                }));
    }

    /**
     * Gives the alarms of a cook that was gone through again the answers that they had before; those that it had not are raised.
     *
     * @param before the cook's alarms until now
     * @param again what judges the cook from now on
     */
    public void carryOver(List<CookAlarm> before, CookMonitor again, long atNanos) {
        List<CookAlarm> asideAgain = putAsideAgain(before, again, atNanos);
        for (CookAlarm alarm : again.alarms()) {
            if (asideAgain.stream().anyMatch(one -> one.name() == alarm.name())) {
                continue;
            }
            Optional<CookAlarm> old = named(alarm.name(), before);
            boolean open = old.isPresent() && old.get().state() != AlarmState.ACKNOWLEDGED;
            boolean over = alarm.state() == AlarmState.RETURNED;
            if (!open && (over || acknowledged.contains(alarm.name()))) {
                again.acknowledge(alarm.id(), atNanos);
            } else if (old.isEmpty()) {
                teller.happened(List.of(new CookEvent.AlarmChanged(alarm.raisedT(), AlarmChange.RAISED, alarm)));
            }
        }
    }

    /** Puts aside what was aside before, for as long as was left of it; returns those. */
    public static List<CookAlarm> putAsideAgain(List<CookAlarm> before, CookMonitor again, long atNanos) {
        List<CookAlarm> aside = new ArrayList<>();
        for (CookAlarm alarm : again.alarms()) {
            OptionalDouble untilT =
                    named(alarm.name(), before).map(CookAlarm::shelvedUntilT).orElse(OptionalDouble.empty());
            if (untilT.isPresent()) {
                double leftMin = (untilT.getAsDouble() - again.timeS()) / 60;
                again.shelve(alarm.id(), Math.max(1, (int) Math.ceil(leftMin)), atNanos);
                aside.add(alarm);
            }
        }
        return aside;
    }

    private static Optional<CookAlarm> named(AlarmName name, List<CookAlarm> alarms) {
        return alarms.stream().filter(one -> one.name() == name).findFirst();
    }

    /** Nobody knows of any alarm of a new cook. */
    public void clear() {
        acknowledged.clear();
    }
}
