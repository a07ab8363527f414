package spoonfall.door;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Counts wrong codes, of each client and of all, and makes both wait longer and longer. What is ten minutes old is forgotten. */
final class Guesses {
    private static final long FORGOTTEN_MILLIS = Duration.ofMinutes(10).toMillis();
    private static final int MOST_CLIENTS = 500;
    private static final Limit OF_ONE = new Limit(3, Duration.ofSeconds(5), Duration.ofMinutes(5));
    private static final Limit OF_ALL = new Limit(12, Duration.ofSeconds(2), Duration.ofMinutes(1));

    private final Map<String, Wrong> clients = new Recent();
    private Wrong all = new Wrong(0, 0);

    /** So many are free; then the wait doubles with each, up to the longest. */
    private record Limit(int free, Duration first, Duration longest) {
        long waitMillis(int wrong) {
            if (wrong < free) {
                return 0;
            }
            long doubled = first.toMillis() << Math.min(20, wrong - free);
            return Math.min(longest.toMillis(), doubled);
        }
    }

    /** How many, and when the last one was. */
    private record Wrong(int count, long atMillis) {
        boolean forgotten(long nowMillis) {
            return nowMillis - atMillis >= FORGOTTEN_MILLIS;
        }

        Wrong another(long nowMillis) {
            return new Wrong(forgotten(nowMillis) ? 1 : count + 1, nowMillis);
        }

        long leftMillis(Limit limit, long nowMillis) {
            return forgotten(nowMillis) ? 0 : atMillis + limit.waitMillis(count) - nowMillis;
        }
    }

    /** The clients that tried last; whoever fills it is held by the count of all. */
    private static final class Recent extends LinkedHashMap<String, Wrong> {
        private static final long serialVersionUID = 1L;

        Recent() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Wrong> eldest) {
            return size() > MOST_CLIENTS;
        }
    }

    /** How long a client must still wait. */
    Optional<Duration> wait(String client, long nowMillis) {
        Wrong own = clients.get(client);
        long left = Math.max(own == null ? 0 : own.leftMillis(OF_ONE, nowMillis), all.leftMillis(OF_ALL, nowMillis));
        return left > 0 ? Optional.of(Duration.ofMillis(left)) : Optional.empty();
    }

    /** A client was wrong. */
    void wrong(String client, long nowMillis) {
        clients.merge(client, new Wrong(1, nowMillis), (before, one) -> before.another(nowMillis));
        all = all.another(nowMillis);
    }

    /** A client was right: it is not held up any longer. */
    void forget(String client) {
        clients.remove(client);
    }
}
