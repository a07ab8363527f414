package spoonfall.announce;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import spoonfall.alarm.AlarmState;
import spoonfall.alarm.Priority;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.kitchen.KitchenChange;
import spoonfall.kitchen.KitchenListener;
import spoonfall.kitchen.KitchenState;
import spoonfall.kitchen.PanView;
import spoonfall.words.Saying;

/**
 * Hears one pan and says what is worth hearing of it: calls, at once, and the urgent ones again while nobody answers; reminders; and what
 * to do, when that changes and no call stands. Used by the kitchen's thread alone.
 */
final class PanNews implements KitchenListener {
    private static final long AGAIN_NANOS = TimeUnit.SECONDS.toNanos(65);

    private final String pan;
    private final Waiting waiting;
    private final SpokenText spoken;
    private final LongSupplier nanoClock;
    private final Map<String, Long> calledAt = new HashMap<>();
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
        this.nanoClock = nanoClock;
    }

    @Override
    public void begin(KitchenState state) {
        if (state.cookNumber() != cookNumber) {
            cookNumber = state.cookNumber();
            calledAt.keySet().forEach(id -> waiting.forget(topic(id)));
            calledAt.clear();
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
        List<CookAlarm> calls = view.alarms().stream()
                .filter(alarm -> alarm.state() == AlarmState.UNACKNOWLEDGED)
                .toList();
        forgetAllBut(calls.stream().map(CookAlarm::id).collect(Collectors.toSet()));
        calls.forEach(this::call);
        Saying saying = view.outlook().saying();
        boolean news = sentence.isNews(saying);
        if (news && !first && calls.isEmpty()) {
            say("sentence", Priority.LOW, (saying.state() + " " + saying.act()).strip());
        } else if (!calls.isEmpty()) {
            waiting.forget(topic("sentence"));
        }
        first = false;
    }

    private void call(CookAlarm alarm) {
        long now = nanoClock.getAsLong();
        Long before = calledAt.get(alarm.id());
        boolean again = alarm.name().priority() == Priority.HIGH && before != null && now - before >= AGAIN_NANOS;
        if (before == null || again) {
            calledAt.put(alarm.id(), now);
            say(alarm.id(), alarm.name().priority(), alarm.text());
        }
    }

    private void forgetAllBut(Set<String> standing) {
        calledAt.keySet().removeIf(id -> {
            boolean over = !standing.contains(id);
            if (over) {
                waiting.forget(topic(id));
            }
            return over;
        });
    }

    private void say(String about, Priority priority, String marked) {
        String whose = pan.isEmpty() ? "" : pan.substring(0, 1).toUpperCase(Locale.ROOT) + pan.substring(1) + ": ";
        waiting.add(new Announcement(topic(about), priority, whose + spoken.of(marked, startedAt)));
    }

    private String topic(String about) {
        return pan + "/" + about;
    }
}
