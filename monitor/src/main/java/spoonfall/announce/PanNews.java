package spoonfall.announce;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.function.LongSupplier;
import spoonfall.alarm.AlarmState;
import spoonfall.alarm.Priority;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenListener;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.told.PanView;
import spoonfall.words.Saying;

/**
 * Hears one pan and says what is worth hearing of it: calls, at once, and the urgent ones again while nobody answers; reminders; and what
 * to do, when that changes and no call stands. Used by the kitchen's thread alone.
 */
final class PanNews implements KitchenListener {
    private final String pan;
    private final Waiting waiting;
    private final SpokenText spoken;
    private final Calls calls;
    private Newsworthy sentence = new Newsworthy();
    private Instant startedAt = Instant.EPOCH;
    private int cookNumber;
    private boolean first = true;

    /**
     * News of a pan that was not heard yet.
     *
     * @param pan the pan's name when there are several, else empty
     */
    PanNews(String pan, Waiting waiting, SpokenText spoken, LongSupplier nanoClock) {
        this.pan = pan;
        this.waiting = waiting;
        this.spoken = spoken;
        calls = new Calls(nanoClock);
    }

    @Override
    public void begin(KitchenState state) {
        if (state.cookNumber() != cookNumber) {
            cookNumber = state.cookNumber();
            calls.clear(id -> waiting.forget(topic(id)));
            sentence = new Newsworthy();
            first = true;
        }
        pan(state.pan());
    }

    @Override
    public void changed(KitchenChange change) {
        if (change instanceof KitchenChange.Cook cook && cook.event() instanceof CookEvent.Reminded reminded) {
            say(reminded.reminder().wireName(), Priority.LOW, reminded.text());
        } else if (change instanceof KitchenChange.Reminded reminded) {
            say(reminded.name(), Priority.LOW, reminded.text());
        }
    }

    @Override
    public void pan(PanView view) {
        startedAt = view.startedAt().orElse(startedAt);
        List<CookAlarm> standing = view.alarms().stream()
                .filter(alarm -> alarm.state() == AlarmState.UNACKNOWLEDGED)
                .toList();
        calls.keep(standing.stream().map(CookAlarm::id).toList(), id -> waiting.forget(topic(id)));
        standing.forEach(this::call);
        Saying saying = view.outlook().saying();
        boolean news = sentence.isNews(saying);
        if (news && !first && standing.isEmpty()) {
            say("sentence", Priority.LOW, (saying.state() + " " + saying.act()).strip());
        } else if (!standing.isEmpty()) {
            waiting.forget(topic("sentence"));
        }
        first = false;
    }

    private void call(CookAlarm alarm) {
        if (calls.due(alarm.id(), alarm.name().priority())) {
            say(alarm.id(), alarm.name().priority(), alarm.text());
        }
    }

    private void say(String about, Priority priority, String marked) {
        String whose = pan.isEmpty() ? "" : pan.substring(0, 1).toUpperCase(Locale.ROOT) + pan.substring(1) + ": ";
        waiting.add(new Announcement(topic(about), priority, whose + spoken.of(marked, startedAt)));
    }

    private String topic(String about) {
        return pan + "/" + about;
    }
}
