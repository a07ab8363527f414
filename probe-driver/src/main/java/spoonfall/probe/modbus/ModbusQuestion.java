package spoonfall.probe.modbus;

import java.io.IOException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.line.TemperatureUnit;
import spoonfall.probe.serial.Question;
import spoonfall.probe.serial.SerialLink;

/**
 * Asks an instrument for a register by Modbus RTU. A damaged answer is asked for once more while at least half of the
 * time for an answer is left, so that asking never takes longer than one instrument that keeps silent.
 */
public final class ModbusQuestion implements Question {
    /** For an instrument to make up its mind while others wait; the time on the wire comes on top. */
    private static final long ANSWER_NANOS = TimeUnit.MILLISECONDS.toNanos(600);

    /** Likewise when nobody waits. */
    private static final long ANSWER_ALONE_NANOS = TimeUnit.MILLISECONDS.toNanos(1000);

    /** What adapters and the system may put between two bytes of one frame. */
    private static final long PARCELS_NANOS = TimeUnit.MILLISECONDS.toNanos(100);

    private static final int SETTLE_MOST = 20;
    private static final int HEARD_MOST = 512;
    private static final int SHOWN = 40;
    private static final String CHECK = ". Check its address, rate and parity, and the wires.";

    private final RegisterSettings register;
    private final TemperatureUnit unit;
    private final byte[] request;
    private final long answerNanos;
    private final long silenceNanos;
    private final long gapNanos;

    /** What was heard since the question, and whether the time for an answer ran out meanwhile. */
    @SuppressWarnings("ArrayRecordComponent") // read once, at once
    private record Heard(byte[] bytes, boolean waitedOut) {}

    /**
     * A question for a register.
     *
     * @param register where the number is
     * @param unit the unit of the scaled number
     * @param baud rate of the line, bits per second
     * @param alone whether nothing else is asked on the line, so that there is more time for the answer
     */
    public ModbusQuestion(RegisterSettings register, TemperatureUnit unit, int baud, boolean alone) {
        this.register = register;
        this.unit = unit;
        request = Frames.request(register);
        int characters = request.length + Frames.answerLength(register);
        answerNanos = (alone ? ANSWER_ALONE_NANOS : ANSWER_NANOS) + LineTiming.charactersNanos(characters, baud);
        silenceNanos = LineTiming.betweenFramesNanos(baud);
        gapNanos = PARCELS_NANOS + LineTiming.withinFrameNanos(baud);
    }

    @Override
    public String description() {
        return "register " + register.register() + " of Modbus instrument " + register.instrument() + ", "
                + register.type().wireName() + ", in " + unit.sign();
    }

    @Override
    public int instrument() {
        return register.instrument();
    }

    @Override
    public Outcome ask(SerialLink link, BooleanSupplier closing) throws IOException {
        long begunNanos = System.nanoTime();
        Heard heard = once(link, closing, begunNanos + answerNanos);
        Outcome outcome = outcome(heard);
        boolean damaged = outcome.quality() == Quality.BAD_FRAME && !heard.waitedOut();
        if (damaged && System.nanoTime() - begunNanos < answerNanos / 2 && !closing.getAsBoolean()) {
            Heard repeated = once(link, closing, begunNanos + answerNanos);
            Outcome second = outcome(repeated);
            // That there was an answer, if a damaged one, says more than that its repeat did not come.
            return second.quality() == Quality.NO_ANSWER ? late(outcome) : second;
        }
        return outcome;
    }

    private Heard once(SerialLink link, BooleanSupplier closing, long untilNanos) throws IOException {
        settle(link);
        link.write(request);
        return receive(link, closing, untilNanos);
    }

    /** Throws away what is left of earlier questions until the line has been silent for as long as it must be. */
    private void settle(SerialLink link) throws IOException {
        int thrown = 1;
        for (int i = 0; i < SETTLE_MOST && thrown > 0; i++) {
            long sinceNanos = System.nanoTime();
            for (long left = silenceNanos; left > 0; left = silenceNanos - (System.nanoTime() - sinceNanos)) {
                LockSupport.parkNanos(left);
            }
            thrown = link.discardInput();
        }
    }

    /** Collects bytes until they are an answer, the line falls silent after some that are none, or time is up. */
    private Heard receive(SerialLink link, BooleanSupplier closing, long untilNanos) throws IOException {
        byte[] part = new byte[HEARD_MOST];
        byte[] bytes = new byte[HEARD_MOST];
        int count = 0;
        long lastNanos = System.nanoTime();
        boolean over = false;
        while (!over && System.nanoTime() - untilNanos < 0 && !closing.getAsBoolean()) {
            int more = Math.min(link.read(part), HEARD_MOST - count);
            System.arraycopy(part, 0, bytes, count, more);
            count += more;
            long nowNanos = System.nanoTime();
            lastNanos = more > 0 ? nowNanos : lastNanos;
            Answer answer = Frames.judge(request, bytes, count);
            boolean fallenSilent = nowNanos - lastNanos >= gapNanos;
            over = answer.settled() || count == HEARD_MOST || (answer.broken() && fallenSilent);
        }
        return new Heard(Arrays.copyOf(bytes, count), !over);
    }

    private Outcome outcome(Heard heard) {
        byte[] bytes = heard.bytes();
        String raw =
                HexFormat.of().withUpperCase().withDelimiter(" ").formatHex(bytes, 0, Math.min(bytes.length, SHOWN));
        Answer answer = Frames.judge(request, bytes, bytes.length);
        if (answer instanceof Answer.Data data) {
            double temperatureC = unit.toC(register.value(data.data()));
            Quality quality = Reading.qualityOf(temperatureC);
            OptionalDouble value = quality == Quality.GOOD ? OptionalDouble.of(temperatureC) : OptionalDouble.empty();
            return new Outcome(value, quality, raw, "", false);
        }
        if (answer instanceof Answer.Refused refused) {
            String what = "refuses register " + register.register() + " (exception " + refused.code() + ").";
            return bad(Quality.REFUSED, raw, what, false);
        }
        if (answer instanceof Answer.Wrong wrong) {
            return bad(Quality.BAD_FRAME, raw, wrong.why() + CHECK, heard.waitedOut());
        }
        return answer.broken()
                ? bad(Quality.BAD_FRAME, raw, "answers only in part" + CHECK, heard.waitedOut())
                : bad(Quality.NO_ANSWER, "no answer", "does not answer" + CHECK, heard.waitedOut());
    }

    private Outcome bad(Quality quality, String raw, String what, boolean waitedOut) {
        String trouble = "instrument " + register.instrument() + " " + what;
        return new Outcome(OptionalDouble.empty(), quality, raw, trouble, waitedOut);
    }

    private static Outcome late(Outcome outcome) {
        return new Outcome(outcome.temperatureC(), outcome.quality(), outcome.raw(), outcome.trouble(), true);
    }
}
