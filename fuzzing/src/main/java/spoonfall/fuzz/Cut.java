package spoonfall.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Made-up bytes, taken from the front: first what chooses, then what is parsed. */
public final class Cut {
    private final byte[] bytes;
    private int at;

    /** All of these bytes. */
    @SuppressWarnings("ArrayParameterOrReturn") // the fuzzer's own array, read only
    public Cut(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The next byte, 0 to 255; 0 when none is left. */
    public int next() {
        return at < bytes.length ? bytes[at++] & 0xff : 0;
    }

    /** The next two bytes, 0 to 65535. */
    public int nextTwo() {
        return next() << 8 | next();
    }

    /** One of several, chosen by the next byte. */
    @SafeVarargs
    public final <T> T oneOf(T... several) {
        return several[next() % several.length];
    }

    /** The bytes that are left. */
    public byte[] rest() {
        return Arrays.copyOfRange(bytes, Math.min(at, bytes.length), bytes.length);
    }

    /** The bytes that are left as UTF-8 text, what is none replaced. */
    public String text() {
        return new String(rest(), StandardCharsets.UTF_8);
    }
}
