package spoonfall.announce;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import spoonfall.alarm.Priority;

/** Which calls are to be said: each once, and the urgent ones again while nobody answers. Used by one thread alone. */
final class Calls {
    private static final long AGAIN_NANOS = TimeUnit.SECONDS.toNanos(65);

    private final LongSupplier nanoClock;
    private final Map<String, Long> calledAt = new HashMap<>();

    Calls(LongSupplier nanoClock) {
        this.nanoClock = nanoClock;
    }

    /** Whether a call that stands is to be said now; who asks says it. */
    boolean due(String id, Priority priority) {
        long now = nanoClock.getAsLong();
        Long before = calledAt.get(id);
        boolean again = priority == Priority.HIGH && before != null && now - before >= AGAIN_NANOS;
        if (before == null || again) {
            calledAt.put(id, now);
            return true;
        }
        return false;
    }

    /** Forgets those that stand no more, and tells of each. */
    void keep(Collection<String> standing, Consumer<String> over) {
        calledAt.keySet().removeIf(id -> {
            boolean gone = !standing.contains(id);
            if (gone) {
                over.accept(id);
            }
            return gone;
        });
    }

    /** Forgets all of them, and tells of each. */
    void clear(Consumer<String> over) {
        keep(Set.of(), over);
    }
}
