package spoonfall.probe.modbus;

import java.io.IOException;
import java.util.HexFormat;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.line.TemperatureUnit;
import spoonfall.probe.serial.Question;
import spoonfall.probe.serial.SerialLink;

/** Asks an instrument for a register by Modbus RTU; no answer or a wrong one is asked for twice more. */
public final class ModbusQuestion implements Question {
    private static final long ANSWER_NANOS = TimeUnit.MILLISECONDS.toNanos(600);
    private static final int TRIES = 3;
    private static final int LONGEST_FRAME = 256;
    private static final int SHOWN = 40;
    private static final String CHECK = ". Check its address, rate and parity, and the wires.";

    private final RegisterSettings register;
    private final TemperatureUnit unit;

    /** A question for {@code register}, whose scaled number is in {@code unit}. */
    public ModbusQuestion(RegisterSettings register, TemperatureUnit unit) {
        this.register = register;
        this.unit = unit;
    }

    @Override
    public String description() {
        return "register " + register.register() + " of Modbus instrument " + register.instrument() + ", "
                + register.type().wireName() + ", in " + unit.sign();
    }

    @Override
    public Outcome ask(SerialLink link, BooleanSupplier closing) throws IOException {
        byte[] request = Frames.request(register);
        Outcome outcome = bad(Quality.NO_ANSWER, "no answer", "does not answer" + CHECK);
        for (int i = 0; i < TRIES && !closing.getAsBoolean(); i++) {
            link.discardInput();
            link.write(request);
            byte[] bytes = new byte[LONGEST_FRAME];
            int count = receive(link, request, bytes, closing);
            String raw = HexFormat.of().withUpperCase().withDelimiter(" ").formatHex(bytes, 0, Math.min(count, SHOWN));
            Frames.Answer answer = Frames.judge(request, bytes, count);
            if (answer instanceof Frames.Answer.Data data) {
                return good(data, raw);
            }
            if (answer instanceof Frames.Answer.Refused refused) {
                String what = "refuses register " + register.register() + " (exception " + refused.code() + ").";
                return bad(Quality.REFUSED, raw, what);
            }
            if (answer instanceof Frames.Answer.Wrong wrong) {
                outcome = bad(Quality.BAD_FRAME, raw, "answers, but " + wrong.why() + CHECK);
            } else if (count > 0) {
                outcome = bad(Quality.BAD_FRAME, raw, "answers only in part" + CHECK);
            }
        }
        return outcome;
    }

    private Outcome good(Frames.Answer.Data data, String raw) {
        double temperatureC = unit.toC(register.value(data.data()));
        Quality quality = Reading.qualityOf(temperatureC);
        OptionalDouble value = quality == Quality.GOOD ? OptionalDouble.of(temperatureC) : OptionalDouble.empty();
        return new Outcome(value, quality, raw, "");
    }

    private Outcome bad(Quality quality, String raw, String what) {
        return new Outcome(OptionalDouble.empty(), quality, raw, "instrument " + register.instrument() + " " + what);
    }

    /** Collects bytes until they are an answer or the time for one is over. */
    private static int receive(SerialLink link, byte[] request, byte[] bytes, BooleanSupplier closing)
            throws IOException {
        byte[] part = new byte[LONGEST_FRAME];
        int count = 0;
        long begun = System.nanoTime();
        while (System.nanoTime() - begun < ANSWER_NANOS && count < LONGEST_FRAME && !closing.getAsBoolean()) {
            int more = Math.min(link.read(part), LONGEST_FRAME - count);
            System.arraycopy(part, 0, bytes, count, more);
            count += more;
            if (count > 0 && !(Frames.judge(request, bytes, count) instanceof Frames.Answer.Incomplete)) {
                break;
            }
        }
        return count;
    }
}
