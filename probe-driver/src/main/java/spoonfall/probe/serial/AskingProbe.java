package spoonfall.probe.serial;

import java.io.IOException;
import java.util.function.LongSupplier;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Reading;

/** A thermometer that speaks only when asked. It is asked once a second. */
public final class AskingProbe implements Probe {
    private static final long ASK_EVERY_MILLIS = 1000;

    private final String name;
    private final SerialSettings settings;
    private final Question question;
    private final LongSupplier nanoClock;
    private final SerialPlug plug;
    private String trouble = "";
    private boolean found;

    /**
     * A probe that has not started.
     *
     * @param name as the kitchen calls it
     * @param settings how to open the port
     * @param question what it is asked
     * @param nanoClock the monotonic clock that stamps readings
     */
    public AskingProbe(String name, SerialSettings settings, Question question, LongSupplier nanoClock) {
        this.name = name;
        this.settings = settings;
        this.question = question;
        this.nanoClock = nanoClock;
        plug = new SerialPlug(name, settings);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String place() {
        return settings.path();
    }

    @Override
    public void start(ProbeListener listener) {
        plug.start(
                open -> {
                    found = false;
                    do {
                        ask(open, listener);
                    } while (plug.pause(ASK_EVERY_MILLIS));
                },
                what -> lose(listener, what));
    }

    @Override
    public void close() {
        plug.close();
    }

    private void ask(SerialLink open, ProbeListener listener) throws IOException {
        Question.Outcome outcome = question.ask(open, plug::closing);
        if (plug.closing()) {
            return;
        }
        long atNanos = nanoClock.getAsLong();
        if (outcome.trouble().isEmpty()) {
            find(listener, atNanos);
        } else {
            lose(listener, settings.path() + " at " + settings.description() + ": " + outcome.trouble());
        }
        listener.reading(new Reading(name, atNanos, outcome.temperatureC(), outcome.raw(), outcome.quality()));
    }

    private void find(ProbeListener listener, long atNanos) {
        if (!found) {
            found = true;
            trouble = "";
            String how = settings.path() + ", " + settings.description() + ": " + question.description();
            listener.found(name, how, atNanos);
        }
    }

    /** Says what is wrong, once until the instrument answers again. */
    private void lose(ProbeListener listener, String what) {
        found = false;
        if (!plug.closing() && trouble.isEmpty()) {
            trouble = what;
            listener.lost(name, what, nanoClock.getAsLong());
        }
    }
}
