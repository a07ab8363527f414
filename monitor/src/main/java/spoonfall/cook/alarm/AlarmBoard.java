package spoonfall.cook.alarm;

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
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.Suppression;

/** All alarms of one cook, with the words they were raised with. */
public final class AlarmBoard {
    private final Map<AlarmName, Place> places = new EnumMap<>(AlarmName.class);

    /** The same in the names' order, for whoever asks all of them. */
    private final List<Place> all;

    /** Whether any was ever put aside, which is seldom. */
    private boolean anyPutAside;

    /** With none raised. */
    public AlarmBoard() {
        for (AlarmName name : AlarmName.values()) {
            places.put(name, new Place(name));
        }
        all = List.copyOf(places.values());
    }

    /** One alarm's place on the board. */
    private static final class Place {
        final AlarmName name;
        final Alarm alarm;
        AlarmText text = AlarmText.NONE;
        Optional<Suppression> suppressedBy = Optional.empty();

        Place(AlarmName name) {
            this.name = name;
            alarm = new Alarm(name.delays());
        }

        String id(int occurrence) {
            return name.wireName() + "-" + occurrence;
        }

        CookAlarm view() {
            return new CookAlarm(
                    id(alarm.occurrence()),
                    name,
                    alarm.state(),
                    alarm.raisedAtS(),
                    text.title(),
                    text.act(),
                    alarm.shelvedUntilS(),
                    suppressedBy);
        }
    }

    /** Lets time pass: what was put aside for its time comes back. */
    public void pass(double t, List<CookEvent> events) {
        if (!anyPutAside) {
            return;
        }
        for (Place place : all) {
            tell(t, place, place.alarm.pass(t), events);
        }
    }

    /** Takes note of a condition; {@code text} is asked for only when the alarm begins with it, told or not. */
    public void update(
            double t, AlarmName name, Condition condition, Supplier<AlarmText> text, List<CookEvent> events) {
        Place place = place(name);
        if (!place.alarm.stays(condition)) {
            follow(t, place, condition, text, events);
        }
    }

    private static void follow(
            double t, Place place, Condition condition, Supplier<AlarmText> text, List<CookEvent> events) {
        int before = place.alarm.occurrence();
        Optional<AlarmChange> change = place.alarm.update(t, condition);
        if (place.alarm.occurrence() > before) {
            place.text = text.get();
        }
        tell(t, place, change, events);
    }

    /** What {@code name} warned of is settled: it is normal, and begins anew with whatever comes. */
    public void over(double t, AlarmName name, List<CookEvent> events) {
        Place place = place(name);
        tell(t, place, place.alarm.settle(), events);
    }

    /** Says why {@code name} means nothing just now, or that it means something. */
    public void suppress(double t, AlarmName name, Optional<Suppression> reason, List<CookEvent> events) {
        Place place = place(name);
        boolean suppressed = place.suppressedBy.isPresent();
        place.suppressedBy = reason;
        if (reason.isPresent()) {
            tell(t, place, place.alarm.suppress(), events);
        } else if (suppressed) {
            tell(t, place, place.alarm.unsuppress(), events);
        }
    }

    /** Acknowledges the alarm of that id; empty if there never was one. */
    public Optional<CookAlarm> acknowledge(double t, String id, List<CookEvent> events) {
        return change(t, id, Alarm::acknowledge, events);
    }

    /** Puts the alarm of that id aside for {@code forS} seconds; empty if there never was one. */
    public Optional<CookAlarm> shelve(double t, String id, double forS, List<CookEvent> events) {
        anyPutAside = true;
        return change(t, id, alarm -> alarm.shelve(t, forS), events);
    }

    /** Takes the alarm of that id back, which may have come and gone since it was put aside; empty if it never was. */
    public Optional<CookAlarm> unshelve(double t, String id, List<CookEvent> events) {
        for (Place place : all) {
            for (int i = place.alarm.occurrence(); i > 0; i--) {
                if (place.id(i).equals(id)) {
                    tell(t, place, place.alarm.unshelve(), events);
                    return Optional.of(place.view());
                }
            }
        }
        return Optional.empty();
    }

    private Optional<CookAlarm> change(
            double t, String id, Function<Alarm, Optional<AlarmChange>> act, List<CookEvent> events) {
        for (Place place : all) {
            int occurrence = place.alarm.occurrence();
            if (occurrence > 0 && place.id(occurrence).equals(id)) {
                tell(t, place, act.apply(place.alarm), events);
                return Optional.of(place.view());
            }
        }
        return Optional.empty();
    }

    private static void tell(double t, Place place, Optional<AlarmChange> change, List<CookEvent> events) {
        if (change.isPresent()) {
            events.add(new CookEvent.AlarmChanged(t, change.get(), place.view()));
        }
    }

    /** Whether what it warns of is so, whether or not the cook is told. */
    public boolean present(AlarmName name) {
        return place(name).alarm.present();
    }

    /** Whether it was raised at {@code t} or later. */
    public boolean raisedSince(double t, AlarmName name) {
        Alarm alarm = place(name).alarm;
        return alarm.occurrence() > 0 && alarm.raisedAtS() >= t;
    }

    /** Those that can be seen, most urgent first: active, then returned, then shelved; then by priority, what is wrong before prompts, the latest first. */
    public List<CookAlarm> standing() {
        List<CookAlarm> standing = new ArrayList<>();
        for (Place place : all) {
            AlarmState state = place.alarm.state();
            if (state != AlarmState.NORMAL && state != AlarmState.SUPPRESSED) {
                standing.add(place.view());
            }
        }
        standing.sort(Comparator.comparing((CookAlarm alarm) -> alarm.state())
                .thenComparing(alarm -> alarm.name().priority())
                .thenComparing(alarm -> alarm.name().isPrompt())
                .thenComparing(Comparator.comparing(CookAlarm::raisedT).reversed()));
        return standing;
    }

    private Place place(AlarmName name) {
        Place place = places.get(name);
        if (place == null) {
            throw new IllegalStateException("no alarm " + name);
        }
        return place;
    }
}
