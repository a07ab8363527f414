package spoonfall.probe.line;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * Bytes to lines, ended by CR, LF or both. What comes before the first line end is thrown away, because half a
 * number is a wrong temperature. Memory is bounded whatever comes.
 */
public final class LineSplitter {
    /** Longest line that is kept, in bytes; of a longer one only its length is reported. */
    public static final int LONGEST = 4096;

    /** So many bytes without a line end, some of them no text, are a wrong baud rate and not a line. */
    private static final int NOISE = 200;

    private final byte[] line = new byte[LONGEST];
    private int length;
    private boolean overlong;
    private boolean noise;
    private boolean started;
    private boolean paused;

    /** What came between two line ends. */
    public sealed interface Line {
        /**
         * A line of text.
         *
         * @param text without its end; never blank
         */
        record Text(String text) implements Line {}

        /**
         * Bytes that are no text.
         *
         * @param sample the first of them, unreadable ones replaced
         */
        record NotText(String sample) implements Line {}

        /**
         * A line longer than {@link #LONGEST}.
         *
         * @param start how it began
         */
        record TooLong(String start) implements Line {}
    }

    /** Takes the first {@code count} bytes and hands over the lines that they end. */
    public void feed(byte[] bytes, int count, Consumer<Line> lines) {
        for (int i = 0; i < count; i++) {
            byte b = bytes[i];
            if (b == '\n' || b == '\r') {
                end(lines);
                started = true;
            } else {
                take(b, lines);
            }
        }
    }

    /** Forgets what was begun: the device was lost, and the next bytes belong to another line. */
    public void restart() {
        reset();
        started = false;
    }

    /**
     * Nothing came for so long that whatever is half there will not be ended: a line end may still follow, as from a device
     * that sends it before the next line, but anything else begins in the middle of another line.
     */
    public void pause() {
        paused = length > 0;
    }

    private void take(byte b, Consumer<Line> lines) {
        if (paused) {
            reset();
            started = false;
        }
        boolean strange = isStrange(b);
        noise |= strange || b < 0;
        if (length < LONGEST) {
            line[length++] = b;
        } else if (!overlong) {
            overlong = true;
            lines.accept(new Line.TooLong(sample()));
        }
        boolean due = length == NOISE ? noise : strange && length > NOISE;
        if (due && !overlong && !isText(false)) {
            lines.accept(new Line.NotText(sample()));
            reset();
            // What follows is glued to the noise: half a number is a wrong temperature here too.
            started = false;
        }
    }

    private void end(Consumer<Line> lines) {
        if (length > 0 && started && !overlong) {
            if (!isText(true)) {
                lines.accept(new Line.NotText(sample()));
            } else {
                String text = text().strip();
                if (!text.isEmpty()) {
                    lines.accept(new Line.Text(text));
                }
            }
        }
        reset();
    }

    private void reset() {
        length = 0;
        paused = false;
        overlong = false;
        noise = false;
    }

    /** Whether it is text; of a line that goes on, the last character may be cut. */
    private boolean isText(boolean whole) {
        for (int i = 0; i < length; i++) {
            if (isStrange(line[i])) {
                return false;
            }
        }
        return isUtf8(whole) || onlyDegreeSigns();
    }

    private static boolean isStrange(byte b) {
        return (b >= 0 && b < ' ' && b != '\t') || b == 0x7f;
    }

    private boolean isUtf8(boolean whole) {
        ByteBuffer bytes = ByteBuffer.wrap(line, 0, length);
        return !StandardCharsets.UTF_8
                .newDecoder()
                .decode(bytes, CharBuffer.allocate(length), whole)
                .isError();
    }

    /** Whether the only bytes beyond ASCII are the degree signs of Latin-1, which many instruments send. */
    private boolean onlyDegreeSigns() {
        for (int i = 0; i < length; i++) {
            int b = line[i] & 0xff;
            if (b > 0x7f && b != 0xb0 && b != 0xba) {
                return false;
            }
        }
        return true;
    }

    private String text() {
        return new String(line, 0, length, isUtf8(true) ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
    }

    private String sample() {
        return new String(line, 0, Math.min(length, 60), StandardCharsets.US_ASCII);
    }
}
