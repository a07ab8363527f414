package spoonfall.canner;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoonfall.alarm.Alarm;
import spoonfall.alarm.AlarmChange;
import spoonfall.alarm.AlarmState;
import spoonfall.alarm.Condition;
import spoonfall.alarm.Delays;

/** The alarms of the canner, with the words they were raised with. */
final class CannerAlarms {
    private final Map<CannerAlarmName, Alarm> alarms = new EnumMap<>(CannerAlarmName.class);
    private final Map<CannerAlarmName, Say> texts = new EnumMap<>(CannerAlarmName.class);

    CannerAlarms() {
        for (CannerAlarmName name : CannerAlarmName.values()) {
            alarms.put(name, new Alarm(new Delays(0, 0)));
        }
    }

    /** Takes note of whether what {@code name} warns of is so. */
    void update(double t, CannerAlarmName name, boolean present, Say text, List<CannerEvent> events) {
        Alarm alarm = alarm(name);
        if (present && !alarm.present()) {
            texts.put(name, text);
        }
        tell(t, name, alarm.update(t, Condition.when(present)), events);
    }

    /** Somebody knows of the alarm of that id; empty if there never was one. */
    Optional<CannerAlarm> acknowledge(double t, String id, List<CannerEvent> events) {
        for (CannerAlarmName name : CannerAlarmName.values()) {
            Alarm alarm = alarm(name);
            if (alarm.occurrence() > 0 && id(name).equals(id)) {
                tell(t, name, alarm.acknowledge(), events);
                return Optional.of(view(name));
            }
        }
        return Optional.empty();
    }

    /** Somebody knows of whatever calls. */
    void known(double t, List<CannerEvent> events) {
        alarms.forEach((name, alarm) -> tell(t, name, alarm.acknowledge(), events));
    }

    /** Those that can be seen, the most urgent first. */
    List<CannerAlarm> standing() {
        List<CannerAlarm> standing = new ArrayList<>();
        alarms.forEach((name, alarm) -> {
            if (alarm.state() != AlarmState.NORMAL) {
                standing.add(view(name));
            }
        });
        return standing;
    }

    /** How they stand, for who is to go on with them. */
    List<CannerMemory.Called> memory() {
        List<CannerMemory.Called> called = new ArrayList<>();
        alarms.forEach((name, alarm) -> {
            if (alarm.occurrence() > 0) {
                Say text = texts.getOrDefault(name, Say.NOTHING);
                called.add(new CannerMemory.Called(name, alarm.occurrence(), alarm.state(), alarm.raisedAtS(), text));
            }
        });
        return called;
    }

    /** They stand as an earlier run left them; nobody is told anew. */
    void recall(List<CannerMemory.Called> called) {
        for (CannerMemory.Called one : called) {
            Alarm alarm = alarm(one.name());
            texts.put(one.name(), one.text());
            for (int i = 0; i < one.occurrence(); i++) {
                alarm.update(one.raisedT(), Condition.ABSENT);
                alarm.update(one.raisedT(), Condition.PRESENT);
            }
            boolean known = one.state() == AlarmState.ACKNOWLEDGED || one.state() == AlarmState.NORMAL;
            if (known) {
                alarm.acknowledge();
            }
            if (!one.state().active()) {
                alarm.update(one.raisedT(), Condition.ABSENT);
            }
        }
    }

    private void tell(double t, CannerAlarmName name, Optional<AlarmChange> change, List<CannerEvent> events) {
        change.ifPresent(told -> events.add(new CannerEvent.AlarmChanged(t, told, view(name))));
    }

    private CannerAlarm view(CannerAlarmName name) {
        Alarm alarm = alarm(name);
        Say text = texts.getOrDefault(name, Say.NOTHING);
        return new CannerAlarm(id(name), name, alarm.state(), alarm.raisedAtS(), text.state(), text.act());
    }

    private String id(CannerAlarmName name) {
        return "jars-" + name.wireName() + "-" + alarm(name).occurrence();
    }

    private Alarm alarm(CannerAlarmName name) {
        Alarm alarm = alarms.get(name);
        if (alarm == null) {
            throw new IllegalStateException("no alarm " + name);
        }
        return alarm;
    }
}
