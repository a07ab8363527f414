package spoonfall.probe.serial;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.line.LineFormat;
import spoonfall.probe.line.LineSplitter;
import spoonfall.probe.line.Recogniser;
import spoonfall.probe.line.TemperatureUnit;

/**
 * A thermometer that sends lines over a serial port. Opens it, reads it, loses it and finds it again, until it
 * is closed. Without a format it listens for three seconds first and finds out how to read the device.
 */
public final class SerialProbe implements Probe {
    private static final long LISTEN_NANOS = TimeUnit.SECONDS.toNanos(3);
    private static final int READ_MILLIS = 500;
    private static final int HEARD_MOST = 4096;
    private static final int FAINT_AFTER = 5;

    /** A second without a byte, within a line: a line takes a small part of that at any baud rate. */
    private static final int PAUSE_READS = 2;

    /** After so much that is no text, a line that happens to be a number is believed when it is the third in a row. */
    private static final int BELIEVED_AFTER = 3;

    private final String name;
    private final SerialSettings settings;
    private final Optional<TemperatureUnit> unit;
    private final LongSupplier nanoClock;
    private final SerialPlug plug;
    private final LineSplitter splitter = new LineSplitter();
    private final Deque<Heard> heard = new ArrayDeque<>();
    private Optional<LineFormat> format;
    private String how = "";
    private @Nullable ProbeListener listener;
    private String trouble = "";
    private int unreadable;
    private int doubted;

    /** A line and when its last byte came. */
    private record Heard(LineSplitter.Line line, long atNanos) {}

    /**
     * A probe whose lines are read as {@code format}, or recognised when that is empty.
     *
     * @param name as the kitchen calls it
     * @param settings how to open the port
     * @param format how to read its lines
     * @param unit the unit to use when the format must be recognised
     * @param nanoClock the monotonic clock that stamps readings
     */
    public SerialProbe(
            String name,
            SerialSettings settings,
            Optional<LineFormat> format,
            Optional<TemperatureUnit> unit,
            LongSupplier nanoClock) {
        this.name = name;
        this.settings = settings;
        this.format = format;
        this.unit = unit;
        this.nanoClock = nanoClock;
        format.ifPresent(known -> how = known.description());
        plug = new SerialPlug(name, settings, READ_MILLIS);
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
    public void start(ProbeListener newListener) {
        plug.start(
                open -> {
                    listener = newListener;
                    splitter.restart();
                    heard.clear();
                    unreadable = 0;
                    doubted = 0;
                    listen(open);
                },
                what -> {
                    listener = newListener;
                    lose(what);
                });
    }

    @Override
    public void close() {
        plug.close();
    }

    private void listen(SerialLink open) throws IOException {
        byte[] buffer = new byte[4096];
        long openedNanos = nanoClock.getAsLong();
        if (format.isPresent()) {
            find();
        }
        Recogniser recogniser = recogniser();
        int quietReads = 0;
        while (!plug.closing()) {
            int count = open.read(buffer);
            long atNanos = nanoClock.getAsLong();
            quietReads = count == 0 ? quietReads + 1 : 0;
            if (quietReads >= PAUSE_READS) {
                splitter.pause();
            }
            if (format.isPresent()) {
                splitter.feed(buffer, count, line -> emit(line, atNanos));
                continue;
            }
            Recogniser listening = recogniser;
            listening.hear(buffer, count);
            splitter.feed(buffer, count, line -> {
                listening.hear(line);
                if (heard.size() == HEARD_MOST) {
                    heard.removeFirst();
                }
                heard.add(new Heard(line, atNanos));
            });
            if (atNanos - openedNanos >= LISTEN_NANOS && !recognise(recogniser)) {
                openedNanos = atNanos;
                recogniser = recogniser();
            }
        }
    }

    private Recogniser recogniser() {
        return new Recogniser(settings.path(), settings.baud(), unit);
    }

    /** Settles the format if the recogniser can, and hands over what was heard meanwhile. */
    private boolean recognise(Recogniser recogniser) {
        Recogniser.Verdict verdict = recogniser.verdict();
        if (verdict instanceof Recogniser.Verdict.Recognised recognised) {
            format = Optional.of(recognised.format());
            how = recognised.why();
            find();
            heard.forEach(line -> emit(line.line(), line.atNanos()));
            heard.clear();
            return true;
        }
        if (verdict instanceof Recogniser.Verdict.Refused refused) {
            lose(refused.why());
        }
        heard.clear();
        return false;
    }

    private void emit(LineSplitter.Line line, long atNanos) {
        Reading reading = reading(line, atNanos);
        boolean noise = reading.quality() == Quality.NOT_TEXT;
        unreadable = noise ? unreadable + 1 : 0;
        if (noise) {
            doubted = unreadable >= FAINT_AFTER || doubted > 0 ? BELIEVED_AFTER : 0;
        } else if (doubted > 0 && --doubted > 0) {
            listener().reading(Reading.bad(name, atNanos, reading.raw(), Quality.NOT_TEXT));
            return;
        }
        listener().reading(reading);
        if (unreadable == FAINT_AFTER) {
            Recogniser noisy = recogniser();
            noisy.hear(line);
            if (noisy.verdict() instanceof Recogniser.Verdict.Refused refused) {
                lose(refused.why());
            }
        } else if (!noise && !trouble.isEmpty()) {
            find();
        }
    }

    private Reading reading(LineSplitter.Line line, long atNanos) {
        if (line instanceof LineSplitter.Line.Text text) {
            LineFormat.Parsed parsed = format.orElseThrow().parse(text.text());
            return new Reading(name, atNanos, parsed.temperatureC(), text.text(), parsed.quality());
        }
        if (line instanceof LineSplitter.Line.TooLong tooLong) {
            return Reading.bad(name, atNanos, tooLong.start(), Quality.TOO_LONG);
        }
        String sample = line instanceof LineSplitter.Line.NotText notText ? notText.sample() : "";
        return Reading.bad(name, atNanos, sample, Quality.NOT_TEXT);
    }

    private void find() {
        trouble = "";
        listener().found(name, settings.path() + ", " + settings.description() + ": " + how, nanoClock.getAsLong());
    }

    /** Says what is wrong, once until it changes; that a lost device is still not there is no change. */
    private void lose(String what) {
        boolean stillGone = !trouble.isEmpty() && what.equals(Trouble.notThere(settings.path()));
        if (!plug.closing() && !stillGone && !what.equals(trouble)) {
            trouble = what;
            listener().lost(name, what, nanoClock.getAsLong());
        }
    }

    private ProbeListener listener() {
        if (listener == null) {
            throw new IllegalStateException("probe " + name + " was not started");
        }
        return listener;
    }
}
