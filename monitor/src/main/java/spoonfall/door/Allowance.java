package spoonfall.door;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;

/**
 * How often a client may ask: so many at once, and so many a second for long (a bucket that refills). Thread-safe; remembers the clients
 * that asked last.
 */
public final class Allowance {
    private static final int MOST_CLIENTS = 2000;

    private final int atOnce;
    private final double perSecond;
    private final Map<String, Bucket> buckets = new LinkedHashMap<>(16, 0.75f, true);

    private record Bucket(double left, long atMillis) {}

    /**
     * An allowance.
     *
     * @param atOnce how many requests may come at once; a page with all its parts needs about sixty
     * @param perSecond how many may come each second for long
     */
    public Allowance(int atOnce, double perSecond) {
        if (atOnce < 1 || !(perSecond > 0)) {
            throw new IllegalArgumentException("an allowance of " + atOnce + " and " + perSecond + " lets nobody in");
        }
        this.atOnce = atOnce;
        this.perSecond = perSecond;
    }

    /**
     * Takes one request of a client.
     *
     * @param nowMillis milliseconds of a clock that never jumps
     * @return empty if it may; else after how many whole seconds it may ask again
     */
    public synchronized OptionalLong take(String client, long nowMillis) {
        Bucket before = buckets.get(client);
        double left = before == null
                ? atOnce
                : Math.min(atOnce, before.left() + perSecond * Math.max(0, nowMillis - before.atMillis()) / 1000);
        boolean granted = left >= 1;
        buckets.put(client, new Bucket(granted ? left - 1 : left, nowMillis));
        if (buckets.size() > MOST_CLIENTS) {
            buckets.remove(buckets.keySet().iterator().next());
        }
        return granted ? OptionalLong.empty() : OptionalLong.of((long) Math.ceil((1 - left) / perSecond));
    }
}
