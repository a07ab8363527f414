package spoonfall.probe.scpi;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.line.LineFormat;
import spoonfall.probe.line.LineSplitter;
import spoonfall.probe.line.TextLines;
import spoonfall.probe.serial.Question;
import spoonfall.probe.serial.SerialLink;

/**
 * Asks an instrument by an SCPI query, such as {@code MEASure:TEMPerature? TC,K}. Answers are numbers like {@code
 * +1.04520000E+02}; 9.9E37 means an overload, such as an open sensor (SCPI-99, 7.2.1).
 */
public final class ScpiQuestion implements Question {
    /** At and beyond this a number means overload or not a number: 9.9E37 and 9.91E37. */
    private static final double OVERLOAD = 9.8e37;

    private static final long ANSWER_NANOS = TimeUnit.MILLISECONDS.toNanos(1500);
    private static final int LONGEST_QUERY = 200;

    private final String query;
    private final TextLines format;

    /**
     * A question by {@code query}.
     *
     * @param query printable ASCII without a line end, 1 to 200 characters
     * @param format how to read the answer
     */
    public ScpiQuestion(String query, TextLines format) {
        boolean printable = query.chars().allMatch(c -> c >= ' ' && c < 0x7f);
        if (query.isBlank() || query.length() > LONGEST_QUERY || !printable) {
            throw new IllegalArgumentException(
                    "ask must be a query of 1 to 200 printable characters, such as MEASure:TEMPerature?");
        }
        this.query = query;
        this.format = format;
    }

    @Override
    public String description() {
        return "the answer to " + query + ", " + format.description();
    }

    /** It is alone on its line. */
    @Override
    public int instrument() {
        return 0;
    }

    @Override
    public Outcome ask(SerialLink link, BooleanSupplier closing) throws IOException {
        link.discardInput();
        link.write((query + "\n").getBytes(StandardCharsets.US_ASCII));
        LineSplitter splitter = new LineSplitter();
        Deque<LineSplitter.Line> lines = new ArrayDeque<>();
        // The line was emptied before the question, so that its answer is whole from its first byte.
        splitter.feed(new byte[] {'\n'}, 1, lines::add);
        byte[] part = new byte[512];
        long begun = System.nanoTime();
        while (System.nanoTime() - begun < ANSWER_NANOS && lines.isEmpty() && !closing.getAsBoolean()) {
            splitter.feed(part, link.read(part), lines::add);
        }
        LineSplitter.Line line = lines.peek();
        if (line == null) {
            return bad(Quality.NO_ANSWER, "no answer", "does not answer " + query);
        }
        if (line instanceof LineSplitter.Line.Text text) {
            return read(text.text());
        }
        return bad(Quality.NOT_TEXT, "", "answers with bytes that are no text");
    }

    /** What an answer says. */
    Outcome read(String text) {
        if (overload(text)) {
            return new Outcome(OptionalDouble.empty(), Quality.SENSOR_FAULT, text, "", false);
        }
        LineFormat.Parsed parsed = format.parse(text);
        if (parsed.quality() == Quality.NO_NUMBER) {
            return bad(Quality.NO_NUMBER, text, "answers \"" + shortened(text) + "\", which is no temperature");
        }
        return new Outcome(parsed.temperatureC(), parsed.quality(), text, "", false);
    }

    private static boolean overload(String text) {
        try {
            double value = Double.parseDouble(text);
            return Double.isFinite(value) && Math.abs(value) >= OVERLOAD;
        } catch (NumberFormatException e) {
            return false; // not a bare number; the format says what it is
        }
    }

    private static String shortened(String text) {
        return text.length() > Reading.MAX_RAW / 2 ? text.substring(0, Reading.MAX_RAW / 2) + "…" : text;
    }

    private static Outcome bad(Quality quality, String raw, String what) {
        String check = ". Check the rate, and that it takes commands over this port.";
        boolean waitedOut = quality == Quality.NO_ANSWER;
        return new Outcome(OptionalDouble.empty(), quality, raw, "the instrument " + what + check, waitedOut);
    }
}
