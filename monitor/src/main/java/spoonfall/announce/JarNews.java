package spoonfall.announce;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import spoonfall.alarm.AlarmState;
import spoonfall.canner.CannerAlarm;
import spoonfall.kitchen.canner.CannerDesk;

/**
 * Hears of the jars and says their calls, at once, and the urgent ones again while nobody answers. Used by the canner's
 * thread alone.
 */
final class JarNews implements Consumer<CannerDesk.News> {
    private final Waiting waiting;
    private final SpokenText spoken;
    private final Calls calls;

    JarNews(Waiting waiting, SpokenText spoken, LongSupplier nanoClock) {
        this.waiting = waiting;
        this.spoken = spoken;
        calls = new Calls(nanoClock);
    }

    @Override
    public void accept(CannerDesk.News news) {
        List<CannerAlarm> standing = news.view().alarms().stream()
                .filter(alarm -> alarm.state() == AlarmState.UNACKNOWLEDGED)
                .toList();
        calls.keep(standing.stream().map(CannerAlarm::id).toList(), waiting::forget);
        for (CannerAlarm alarm : standing) {
            if (calls.due(alarm.id(), alarm.name().priority())) {
                String text = spoken.of((alarm.title() + " " + alarm.act()).strip(), news.zeroAt());
                waiting.add(new Announcement(alarm.id(), alarm.name().priority(), text));
            }
        }
    }
}
