package spoonfall.probe.modbus;

/**
 * How long things take on a line, by "MODBUS over Serial Line" 1.02, 2.5.1.1: a character is eleven bits, frames are
 * at least 3.5 characters apart, and a gap of more than 1.5 characters within one ends it. Above 19200 baud both gaps
 * are fixed, so that no one has to count microseconds.
 */
final class LineTiming {
    private static final int BITS = 11;
    private static final double NANOS_PER_SECOND = 1e9;
    private static final int FIXED_ABOVE_BAUD = 19_200;
    private static final long FIXED_BETWEEN_FRAMES_NANOS = 1_750_000;
    private static final long FIXED_WITHIN_FRAME_NANOS = 750_000;

    private LineTiming() {}

    /** How long so many characters take, in nanoseconds. */
    static long charactersNanos(double characters, int baud) {
        return Math.round(characters * BITS * NANOS_PER_SECOND / baud);
    }

    /** The least silence between two frames, in nanoseconds. */
    static long betweenFramesNanos(int baud) {
        return baud > FIXED_ABOVE_BAUD ? FIXED_BETWEEN_FRAMES_NANOS : charactersNanos(3.5, baud);
    }

    /** The longest silence within a frame, in nanoseconds. */
    static long withinFrameNanos(int baud) {
        return baud > FIXED_ABOVE_BAUD ? FIXED_WITHIN_FRAME_NANOS : charactersNanos(1.5, baud);
    }
}
