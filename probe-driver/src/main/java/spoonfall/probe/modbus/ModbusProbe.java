package spoonfall.probe.modbus;

import java.io.IOException;
import java.util.HexFormat;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.ProbeThread;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.line.TemperatureUnit;
import spoonfall.probe.serial.SerialLink;
import spoonfall.probe.serial.SerialSettings;

/**
 * A thermometer that answers Modbus RTU. Asked once a second; a question that gets no answer or a wrong one is
 * asked twice more before that is reported.
 */
public final class ModbusProbe implements Probe {
    private static final long RETRY_OPEN_MILLIS = 400;
    private static final long ASK_EVERY_MILLIS = 1000;
    private static final long ANSWER_NANOS = TimeUnit.MILLISECONDS.toNanos(600);
    private static final int TRIES = 3;
    private static final int LONGEST_FRAME = 256;

    private final String name;
    private final SerialSettings settings;
    private final RegisterSettings register;
    private final TemperatureUnit unit;
    private final LongSupplier nanoClock;
    private final ProbeThread thread;
    private final AtomicReference<@Nullable SerialLink> link = new AtomicReference<>();
    private String trouble = "";
    private boolean found;

    /**
     * A probe that has not started.
     *
     * @param name as the kitchen calls it
     * @param settings how to open the port
     * @param register where the temperature is kept
     * @param unit the unit it is kept in, after scaling
     * @param nanoClock the monotonic clock that stamps readings
     */
    public ModbusProbe(
            String name,
            SerialSettings settings,
            RegisterSettings register,
            TemperatureUnit unit,
            LongSupplier nanoClock) {
        this.name = name;
        this.settings = settings;
        this.register = register;
        this.unit = unit;
        this.nanoClock = nanoClock;
        thread = new ProbeThread(name);
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
        thread.start(() -> run(listener));
    }

    @Override
    public void close() {
        thread.close(() -> {
            SerialLink open = link.getAndSet(null);
            if (open != null) {
                open.close();
            }
        });
    }

    private void run(ProbeListener listener) {
        do {
            found = false;
            try (SerialLink open = SerialLink.open(settings)) {
                link.set(open);
                do {
                    ask(open, listener);
                } while (thread.pause(ASK_EVERY_MILLIS));
            } catch (IOException e) {
                lose(listener, String.valueOf(e.getMessage()));
            }
            link.set(null);
        } while (thread.pause(RETRY_OPEN_MILLIS));
    }

    private void ask(SerialLink open, ProbeListener listener) throws IOException {
        byte[] request = Frames.request(register);
        Reading reading = Reading.bad(name, nanoClock.getAsLong(), "no answer", Quality.NO_ANSWER);
        String why = "does not answer";
        for (int i = 0; i < TRIES && !thread.closing(); i++) {
            open.discardInput();
            open.write(request);
            byte[] bytes = new byte[LONGEST_FRAME];
            int count = receive(open, request, bytes);
            long atNanos = nanoClock.getAsLong();
            String raw = HexFormat.of().withUpperCase().withDelimiter(" ").formatHex(bytes, 0, Math.min(count, 40));
            Frames.Answer answer = Frames.judge(request, bytes, count);
            if (answer instanceof Frames.Answer.Data data) {
                take(listener, data, atNanos, raw);
                return;
            }
            if (answer instanceof Frames.Answer.Refused refused) {
                why = "refuses register " + register.register() + " (exception " + refused.code() + ")";
                reading = Reading.bad(name, atNanos, raw, Quality.REFUSED);
                break;
            }
            if (answer instanceof Frames.Answer.Wrong wrong) {
                why = "answers, but " + wrong.why();
                reading = Reading.bad(name, atNanos, raw, Quality.BAD_FRAME);
            } else if (count > 0) {
                why = "answers only in part";
                reading = Reading.bad(name, atNanos, raw, Quality.BAD_FRAME);
            }
        }
        if (!thread.closing()) {
            lose(
                    listener,
                    settings.path() + ": instrument " + register.instrument() + " " + why + " at "
                            + settings.description() + ". Check its address, rate and parity, and the wires.");
            listener.reading(reading);
        }
    }

    /** Collects bytes until they are an answer or the time for one is over. */
    private int receive(SerialLink open, byte[] request, byte[] bytes) throws IOException {
        byte[] part = new byte[LONGEST_FRAME];
        int count = 0;
        long begun = System.nanoTime();
        while (System.nanoTime() - begun < ANSWER_NANOS && count < LONGEST_FRAME && !thread.closing()) {
            int more = Math.min(open.read(part), LONGEST_FRAME - count);
            System.arraycopy(part, 0, bytes, count, more);
            count += more;
            if (count > 0 && !(Frames.judge(request, bytes, count) instanceof Frames.Answer.Incomplete)) {
                break;
            }
        }
        return count;
    }

    private void take(ProbeListener listener, Frames.Answer.Data data, long atNanos, String raw) {
        double temperatureC = unit.toC(register.value(data.data()));
        Quality quality = Reading.qualityOf(temperatureC);
        if (!found) {
            found = true;
            trouble = "";
            listener.found(
                    name,
                    settings.path() + ", " + settings.description() + ": register " + register.register()
                            + " of Modbus instrument " + register.instrument() + ", "
                            + register.type().wireName() + ", in " + unit.sign(),
                    atNanos);
        }
        OptionalDouble value = quality == Quality.GOOD ? OptionalDouble.of(temperatureC) : OptionalDouble.empty();
        listener.reading(new Reading(name, atNanos, value, raw, quality));
    }

    /** Says what is wrong, once until it changes or the instrument answers again. */
    private void lose(ProbeListener listener, String what) {
        found = false;
        if (!thread.closing() && trouble.isEmpty()) {
            trouble = what;
            listener.lost(name, what, nanoClock.getAsLong());
        }
    }
}
