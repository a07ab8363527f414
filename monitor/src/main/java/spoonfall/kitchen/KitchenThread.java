package spoonfall.kitchen;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The thread that owns a kitchen's cook: it does what it is given, in order, and ticks in between. */
final class KitchenThread {
    private static final Logger LOG = LoggerFactory.getLogger(KitchenThread.class);
    private static final int QUEUE = 20_000;
    private static final int JOIN_MILLIS = 2000;

    private final BlockingQueue<Runnable> inbox = new ArrayBlockingQueue<>(QUEUE);
    private final Work work;
    private final long tickNanos;
    private final Thread thread;
    private volatile boolean running = true;
    private volatile boolean failed;

    /**
     * A thread that has not started.
     *
     * @param name what it is called
     * @param work what it does besides what it is given
     * @param tickMillis how often it ticks
     */
    KitchenThread(String name, Work work, long tickMillis) {
        this.work = work;
        tickNanos = TimeUnit.MILLISECONDS.toNanos(tickMillis);
        thread = new Thread(this::run, name);
    }

    /** Starts it. */
    void start() {
        thread.start();
    }

    /** Whether it is at work. */
    boolean healthy() {
        return thread.isAlive() && !failed;
    }

    /** Whether whoever asks is that thread. */
    boolean isCurrent() {
        return Thread.currentThread() == thread;
    }

    /** Gives it something to do; false if it is too far behind to take it. */
    boolean offer(Runnable task) {
        return inbox.offer(task);
    }

    /** Gives it something to do; an {@link IllegalStateException} if it is too far behind to take it. */
    void submit(Runnable task) {
        if (!offer(task)) {
            throw new IllegalStateException("the kitchen is too busy to answer");
        }
    }

    /** Gives it something to do, and waits until there is room for it. */
    void put(Runnable task) throws InterruptedException {
        inbox.put(task);
    }

    /** Does what was given to it by now; by that thread alone. */
    void doWaiting() {
        for (Runnable next = inbox.poll(); next != null && running; next = inbox.poll()) {
            next.run();
        }
    }

    /** What {@link #close} ends from now on: nothing more is begun. */
    void stop() {
        running = false;
    }

    /** Stops it. Returns when it has ended. */
    void close() {
        stop();
        thread.interrupt();
        try {
            thread.join(JOIN_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        try {
            work.begin();
            long nextTick = System.nanoTime();
            while (running) {
                long waitNanos = nextTick - System.nanoTime();
                Runnable task = inbox.poll(Math.max(0, waitNanos), TimeUnit.NANOSECONDS);
                if (task != null) {
                    for (Runnable next = task; next != null && running; next = inbox.poll()) {
                        work.beforeTask();
                        next.run();
                    }
                    work.afterTasks();
                }
                if (System.nanoTime() - nextTick >= 0) {
                    nextTick = System.nanoTime() + tickNanos;
                    work.tick();
                }
            }
        } catch (InterruptedException e) {
            LOG.debug("kitchen interrupted; closing");
        } catch (RuntimeException e) {
            LOG.error("the kitchen stopped watching", e);
            throw e;
        } finally {
            failed = running;
        }
    }

    /** What the thread does besides what it is given. */
    interface Work {
        /** Before anything else. */
        void begin();

        /** Before each thing that it was given. */
        void beforeTask();

        /** When nothing more waits. */
        void afterTasks();

        /** Every so often. */
        void tick();
    }
}
