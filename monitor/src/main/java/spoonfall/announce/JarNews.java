package spoonfall.announce;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import spoonfall.alarm.AlarmState;
import spoonfall.alarm.Priority;
import spoonfall.canner.CannerAlarm;
import spoonfall.kitchen.CannerDesk;

/**
 * Hears of the jars and says their calls, at once, and the urgent ones again while nobody answers. Used by the canner's
 * thread alone.
 */
final class JarNews implements Consumer<CannerDesk.News> {
    private static final long AGAIN_NANOS = TimeUnit.SECONDS.toNanos(65);

    private final Waiting waiting;
    private final SpokenText spoken;
    private final LongSupplier nanoClock;
    private final Map<String, Long> calledAt = new HashMap<>();

    JarNews(Waiting waiting, SpokenText spoken, LongSupplier nanoClock) {
        this.waiting = waiting;
        this.spoken = spoken;
        this.nanoClock = nanoClock;
    }

    @Override
    public void accept(CannerDesk.News news) {
        List<CannerAlarm> calls = news.view().alarms().stream()
                .filter(alarm -> alarm.state() == AlarmState.UNACKNOWLEDGED)
                .toList();
        calledAt.keySet().removeIf(id -> {
            boolean over = calls.stream().noneMatch(alarm -> alarm.id().equals(id));
            if (over) {
                waiting.forget(id);
            }
            return over;
        });
        for (CannerAlarm alarm : calls) {
            long now = nanoClock.getAsLong();
            Long before = calledAt.get(alarm.id());
            boolean again = alarm.name().priority() == Priority.HIGH && before != null && now - before >= AGAIN_NANOS;
            if (before == null || again) {
                calledAt.put(alarm.id(), now);
                String text = spoken.of((alarm.title() + " " + alarm.act()).strip(), news.zeroAt());
                waiting.add(new Announcement(alarm.id(), alarm.name().priority(), text));
            }
        }
    }
}
