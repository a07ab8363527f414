package spoonfall.kitchen.desk;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.LongFunction;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.cook.AlarmAnswers;
import spoonfall.kitchen.pan.PanKeeper;

/** Where somebody answers the alarms of the pan. Everything is done by the kitchen's thread. */
public final class AlarmDesk {
    private final PanKeeper keeper;
    private final AlarmAnswers alarms;

    AlarmDesk(PanKeeper keeper, AlarmAnswers alarms) {
        this.keeper = keeper;
        this.alarms = alarms;
    }

    /** Somebody says that they know of an alarm; empty if there never was one of that id. */
    public CompletableFuture<Optional<CookAlarm>> acknowledge(String id) {
        return answer(atNanos -> alarms.acknowledge(id, atNanos));
    }

    /**
     * Somebody puts an alarm aside for some minutes; empty if there is none of that id.
     *
     * @param minutes 1 to {@link CookMonitor#MOST_MINUTES_ASIDE}; anything else is answered with a {@link Refusal}
     */
    public CompletableFuture<Optional<CookAlarm>> shelve(String id, int minutes) {
        return answer(atNanos -> {
            try {
                return alarms.shelve(id, minutes, atNanos);
            } catch (IllegalArgumentException e) {
                throw new Refusal(String.valueOf(e.getMessage()), e);
            }
        });
    }

    /** Somebody takes back an alarm that was put aside; empty if there never was one of that id. */
    public CompletableFuture<Optional<CookAlarm>> unshelve(String id) {
        return answer(atNanos -> alarms.unshelve(id, atNanos));
    }

    private CompletableFuture<Optional<CookAlarm>> answer(LongFunction<Optional<CookAlarm>> word) {
        return keeper.ask(() -> {
            Optional<CookAlarm> alarm = word.apply(keeper.tickNanos());
            keeper.publish();
            return alarm;
        });
    }
}
