package spoonfall.cook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import spoonfall.alarm.Alarm;
import spoonfall.alarm.AlarmChange;
import spoonfall.alarm.AlarmState;
import spoonfall.alarm.Condition;

/** All alarms of one cook, with the words they were raised with. */
final class AlarmBoard {
    private static final AlarmName[] NAMES = AlarmName.values();

    private final Map<AlarmName, Alarm> alarms = new EnumMap<>(AlarmName.class);
    private final Map<AlarmName, AlarmText> texts = new EnumMap<>(AlarmName.class);
    private final Map<AlarmName, Suppression> suppressions = new EnumMap<>(AlarmName.class);

    AlarmBoard() {
        for (AlarmName name : NAMES) {
            alarms.put(name, new Alarm(name.delays()));
        }
    }

    /** Lets time pass: what was put aside for its time comes back. */
    void pass(double t, List<CookEvent> events) {
        for (AlarmName name : NAMES) {
            tell(t, name, alarm(name).pass(t), events);
        }
    }

    /** Takes note of a condition; {@code text} is asked for only when the alarm begins with it, told or not. */
    void update(double t, AlarmName name, Condition condition, Supplier<AlarmText> text, List<CookEvent> events) {
        Alarm alarm = alarm(name);
        int before = alarm.occurrence();
        Optional<AlarmChange> change = alarm.update(t, condition);
        if (alarm.occurrence() > before) {
            texts.put(name, text.get());
        }
        tell(t, name, change, events);
    }

    /** What {@code name} warned of is settled: it is normal, and begins anew with whatever comes. */
    void over(double t, AlarmName name, List<CookEvent> events) {
        tell(t, name, alarm(name).settle(), events);
    }

    /** Says why {@code name} means nothing just now, or that it means something. */
    void suppress(double t, AlarmName name, Optional<Suppression> reason, List<CookEvent> events) {
        if (reason.isPresent()) {
            suppressions.put(name, reason.get());
            tell(t, name, alarm(name).suppress(), events);
        } else if (suppressions.remove(name) != null) {
            tell(t, name, alarm(name).unsuppress(), events);
        }
    }

    /** Acknowledges the alarm of that id; empty if there never was one. */
    Optional<CookAlarm> acknowledge(double t, String id, List<CookEvent> events) {
        return change(t, id, Alarm::acknowledge, events);
    }

    /** Puts the alarm of that id aside for {@code forS} seconds; empty if there never was one. */
    Optional<CookAlarm> shelve(double t, String id, double forS, List<CookEvent> events) {
        return change(t, id, alarm -> alarm.shelve(t, forS), events);
    }

    /** Takes the alarm of that id back, which may have come and gone since it was put aside; empty if it never was. */
    Optional<CookAlarm> unshelve(double t, String id, List<CookEvent> events) {
        for (AlarmName name : NAMES) {
            for (int i = alarm(name).occurrence(); i > 0; i--) {
                if (id(name, i).equals(id)) {
                    tell(t, name, alarm(name).unshelve(), events);
                    return Optional.of(view(name));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<CookAlarm> change(
            double t, String id, Function<Alarm, Optional<AlarmChange>> act, List<CookEvent> events) {
        for (AlarmName name : NAMES) {
            Alarm alarm = alarm(name);
            if (alarm.occurrence() > 0 && id(name, alarm.occurrence()).equals(id)) {
                tell(t, name, act.apply(alarm), events);
                return Optional.of(view(name));
            }
        }
        return Optional.empty();
    }

    private void tell(double t, AlarmName name, Optional<AlarmChange> change, List<CookEvent> events) {
        if (change.isPresent()) {
            events.add(new CookEvent.AlarmChanged(t, change.get(), view(name)));
        }
    }

    /** Whether what it warns of is so, whether or not the cook is told. */
    boolean present(AlarmName name) {
        return alarm(name).present();
    }

    /** Whether it was raised at {@code t} or later. */
    boolean raisedSince(double t, AlarmName name) {
        return alarm(name).occurrence() > 0 && alarm(name).raisedAtS() >= t;
    }

    /** Those that can be seen, most urgent first: active, then returned, then shelved; then by priority and age. */
    List<CookAlarm> standing() {
        List<CookAlarm> standing = new ArrayList<>();
        for (AlarmName name : NAMES) {
            AlarmState state = alarm(name).state();
            if (state != AlarmState.NORMAL && state != AlarmState.SUPPRESSED) {
                standing.add(view(name));
            }
        }
        standing.sort(Comparator.comparing((CookAlarm alarm) -> alarm.state())
                .thenComparing(alarm -> alarm.name().priority())
                .thenComparing(Comparator.comparing(CookAlarm::raisedT).reversed()));
        return standing;
    }

    private CookAlarm view(AlarmName name) {
        Alarm alarm = alarm(name);
        AlarmText text = texts.getOrDefault(name, AlarmText.NONE);
        return new CookAlarm(
                id(name, alarm.occurrence()),
                name,
                alarm.state(),
                alarm.raisedAtS(),
                text.title(),
                text.act(),
                alarm.shelvedUntilS(),
                Optional.ofNullable(suppressions.get(name)));
    }

    private static String id(AlarmName name, int occurrence) {
        return name.wireName() + "-" + occurrence;
    }

    private Alarm alarm(AlarmName name) {
        Alarm alarm = alarms.get(name);
        if (alarm == null) {
            throw new IllegalStateException("no alarm " + name);
        }
        return alarm;
    }
}
