package spoonfall.announce;

import java.io.IOException;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.alarm.Priority;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;

/**
 * Says aloud, through a {@link LocalProgram}, what matters in a kitchen: one sentence at a time, on a thread named {@code announcer}, so
 * that a slow or hanging program holds up nothing but itself. The same sentence is never said twice within a minute.
 */
public final class Announcer implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Announcer.class);
    private static final long SAME_NANOS = TimeUnit.SECONDS.toNanos(60);

    private final LocalProgram program;
    private final SpokenText spoken;
    private final LongSupplier nanoClock;
    private final Waiting waiting = new Waiting();
    private final Map<String, Long> saidAt = new HashMap<>();
    private final Thread thread = new Thread(this::run, "announcer");
    private String trouble = "";

    /**
     * An announcer that has not started.
     *
     * @param program says it
     * @param fahrenheit whether temperatures are said in °F, else in °C
     * @param nanoClock the monotonic clock of our own time
     */
    public Announcer(LocalProgram program, boolean fahrenheit, LongSupplier nanoClock) {
        this.program = program;
        this.nanoClock = nanoClock;
        spoken = new SpokenText(fahrenheit, ZoneId.systemDefault());
    }

    /** Starts, and says so, that a speaker which is off is noticed now rather than at the first call. */
    public void announce(Kitchens kitchens) {
        hear(kitchens);
        waiting.add(new Announcement("start", Priority.LOW, "Spoonfall calls you from here."));
        thread.start();
    }

    /** Hears every pan and the jars; with several pans, it says which it speaks of. */
    private void hear(Kitchens kitchens) {
        boolean several = kitchens.all().size() > 1;
        for (Kitchen kitchen : kitchens.all()) {
            String pan = several ? kitchen.plan().pan() : "";
            kitchen.listen(new PanNews(pan, waiting, spoken, nanoClock));
        }
        kitchens.jars().listen(new JarNews(waiting, spoken, nanoClock));
    }

    /** How many announcements were dropped because too many were waiting. */
    long dropped() {
        return waiting.dropped();
    }

    private void run() {
        try {
            while (!Thread.currentThread().isInterrupted()) {
                say(waiting.take().text());
            }
        } catch (InterruptedException e) {
            LOG.debug("announcer interrupted; closing");
        }
    }

    private void say(String text) throws InterruptedException {
        long now = nanoClock.getAsLong();
        saidAt.values().removeIf(at -> now - at >= SAME_NANOS);
        if (saidAt.putIfAbsent(text, now) != null) {
            return;
        }
        try {
            program.say(text);
            trouble = "";
        } catch (IOException e) {
            String why = String.valueOf(e.getMessage());
            if (!why.equals(trouble)) {
                LOG.warn("--announce: {}: {}. The page calls you all the same.", program, why);
            }
            trouble = why;
        }
    }

    /** Ends a program that is still speaking, and the thread. */
    @Override
    public void close() {
        thread.interrupt();
        try {
            thread.join(2000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
