package spoonfall.bench;

import java.util.Arrays;
import java.util.BitSet;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicLongArray;

/**
 * Sends every pan its readings at a steady pace and notes how long each took to a page. Every reading of a pan is a thousandth of a
 * degree above the one before, which names it: a climb of 0.6 °C a minute at ten a second.
 */
final class LoadPace implements AutoCloseable {
    private static final int FROM = 96_000;
    private static final int STEPS = 9_000;
    private static final int MOST_MILLIS = 60_000;

    private final LoadedKitchen kitchen;
    private final double perSecond;
    private final AtomicLongArray sentNanos;
    private final AtomicLongArray tenths = new AtomicLongArray(10 * MOST_MILLIS);
    private final AtomicLong sent = new AtomicLong();
    private final Thread thread = new Thread(this::run, "pace");
    private final BitSet still = new BitSet();
    private volatile boolean running = true;

    LoadPace(LoadedKitchen kitchen, double perSecond) {
        this.kitchen = kitchen;
        this.perSecond = perSecond;
        sentNanos = new AtomicLongArray(kitchen.pans() * STEPS);
    }

    @SuppressWarnings("ThreadPriorityCheck") // it measures: when it is late, so is every figure
    void start() {
        thread.setPriority(Thread.MAX_PRIORITY);
        thread.start();
    }

    /** Whether the pan of that number gets no readings from now on. */
    void still(int pan, boolean yes) {
        synchronized (still) {
            still.set(pan, yes);
        }
    }

    /** How many readings were sent. */
    long sent() {
        return sent.get();
    }

    private void run() {
        long begun = System.nanoTime();
        for (long turn = 0; running; turn++) {
            int step = (int) (turn % STEPS);
            for (int pan = 0; pan < kitchen.pans() && running; pan++) {
                long dueNanos = begun + (long) ((turn + pan / (double) kitchen.pans()) * 1e9 / perSecond);
                sleepUntil(dueNanos);
                send(pan, step);
            }
        }
    }

    private void send(int pan, int step) {
        synchronized (still) {
            if (still.get(pan)) {
                return;
            }
        }
        sentNanos.set(pan * STEPS + step, System.nanoTime());
        kitchen.line(pan).send((FROM + step) / 1000.0 + "\n");
        sent.incrementAndGet();
    }

    private static void sleepUntil(long dueNanos) {
        try {
            TimeUnit.NANOSECONDS.sleep(dueNanos - System.nanoTime());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** A page was sent that reading of that pan. */
    void arrived(int pan, int thousandths, long nowNanos) {
        int step = thousandths - FROM;
        long sentAt = step >= 0 && step < STEPS ? sentNanos.get(pan * STEPS + step) : 0;
        if (sentAt != 0) {
            int index = (int) Math.min(tenths.length() - 1, Math.max(0, (nowNanos - sentAt) / 100_000));
            tenths.incrementAndGet(index);
        }
    }

    /** Forgets what was counted. */
    void forget() {
        for (int i = 0; i < tenths.length(); i++) {
            tenths.set(i, 0);
        }
    }

    /** The latencies that so many per cent stay within, in milliseconds; not a number if none were seen. */
    double[] percentilesMillis(double... perCent) {
        long[] counts = new long[tenths.length()];
        Arrays.setAll(counts, tenths::get);
        long all = Arrays.stream(counts).sum();
        return Arrays.stream(perCent)
                .map(share -> percentile(counts, all, share))
                .toArray();
    }

    private static double percentile(long[] counts, long all, double perCent) {
        long below = 0;
        for (int i = 0; i < counts.length && all > 0; i++) {
            below += counts[i];
            if (below >= Math.ceil(all * perCent / 100)) {
                return (i + 1) / 10.0;
            }
        }
        return Double.NaN;
    }

    /** How many readings reached how many pages. */
    long seen() {
        long all = 0;
        for (int i = 0; i < tenths.length(); i++) {
            all += tenths.get(i);
        }
        return all;
    }

    @Override
    public void close() {
        running = false;
        try {
            thread.join(2000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
