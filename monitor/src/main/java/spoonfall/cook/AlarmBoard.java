package spoonfall.cook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import spoonfall.alarm.Alarm;
import spoonfall.alarm.AlarmChange;
import spoonfall.alarm.AlarmState;
import spoonfall.alarm.Condition;

/** All alarms of one cook, with the words they were raised with. */
final class AlarmBoard {
    private final Map<AlarmName, Alarm> alarms = new EnumMap<>(AlarmName.class);
    private final Map<AlarmName, AlarmText> texts = new EnumMap<>(AlarmName.class);

    AlarmBoard() {
        for (AlarmName name : AlarmName.values()) {
            alarms.put(name, new Alarm(name.delays()));
        }
    }

    /** Takes note of a condition; {@code text} is asked for only when the alarm is raised by it. */
    void update(double t, AlarmName name, Condition condition, Supplier<AlarmText> text, List<CookEvent> events) {
        alarm(name).update(t, condition).ifPresent(change -> {
            if (change == AlarmChange.RAISED) {
                texts.put(name, text.get());
            }
            events.add(new CookEvent.AlarmChanged(t, change, view(name)));
        });
    }

    /** Ends {@code name} at once because another alarm says more. */
    void supersede(double t, AlarmName name, List<CookEvent> events) {
        if (alarm(name).state() != AlarmState.NORMAL) {
            alarm(name).supersede().ifPresent(change -> events.add(new CookEvent.AlarmChanged(t, change, view(name))));
        }
    }

    /** Acknowledges the alarm of that id; empty if there never was one. */
    Optional<CookAlarm> acknowledge(double t, String id, List<CookEvent> events) {
        for (AlarmName name : AlarmName.values()) {
            if (alarm(name).occurrence() > 0 && view(name).id().equals(id)) {
                alarm(name)
                        .acknowledge()
                        .ifPresent(change -> events.add(new CookEvent.AlarmChanged(t, change, view(name))));
                return Optional.of(view(name));
            }
        }
        return Optional.empty();
    }

    boolean active(AlarmName name) {
        return alarm(name).state().active();
    }

    boolean everRaised(AlarmName name) {
        return alarm(name).occurrence() > 0;
    }

    /** Those that are not normal, most urgent first: active before returned, then by priority and age. */
    List<CookAlarm> standing() {
        List<CookAlarm> standing = new ArrayList<>();
        alarms.forEach((name, alarm) -> {
            if (alarm.state() != AlarmState.NORMAL) {
                standing.add(view(name));
            }
        });
        standing.sort(Comparator.comparing((CookAlarm alarm) -> alarm.state())
                .thenComparing(alarm -> alarm.name().priority())
                .thenComparing(Comparator.comparing(CookAlarm::raisedT).reversed()));
        return standing;
    }

    private CookAlarm view(AlarmName name) {
        Alarm alarm = alarm(name);
        AlarmText text = texts.getOrDefault(name, AlarmText.NONE);
        String id = name.wireName() + "-" + alarm.occurrence();
        return new CookAlarm(id, name, alarm.state(), alarm.raisedAtS(), text.title(), text.act());
    }

    private Alarm alarm(AlarmName name) {
        Alarm alarm = alarms.get(name);
        if (alarm == null) {
            throw new IllegalStateException("no alarm " + name);
        }
        return alarm;
    }
}
