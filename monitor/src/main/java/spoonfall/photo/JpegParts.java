package spoonfall.photo;

import java.util.Set;

/** The parts that a JPEG is made of (ISO/IEC 10918-1, from memory). */
final class JpegParts {
    private static final int START = 0xFFD8;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int FIRST_RESTART = 0xD0;
    private static final int LAST_RESTART = 0xD7;

    /** Tables, the frame, the restart interval, and the size of a dot that JFIF puts first: what it takes to draw it. */
    private static final Set<Integer> NEEDED = Set.of(0xDB, 0xC0, 0xC1, 0xC2, 0xC4, 0xDD, 0xE0, SCAN);

    private JpegParts() {}

    /** Whether a file is a JPEG in which there is nothing but what can be seen: no Exif, no comments, nothing behind its end. */
    static boolean onlyAPicture(byte[] file) {
        if (file.length < 4 || at(file, 0) != START) {
            return false;
        }
        int next = 2;
        while (next + 1 < file.length && (file[next] & 0xFF) == 0xFF) {
            int kind = file[next + 1] & 0xFF;
            if (kind == END) {
                return next + 2 == file.length;
            }
            if (!NEEDED.contains(kind) || next + 3 >= file.length) {
                return false;
            }
            next += 2 + at(file, next + 2);
            if (kind == SCAN) {
                next = behindScan(file, next);
            }
        }
        return false;
    }

    /** The next part behind the dots of a scan, in which a byte FF is never alone. */
    private static int behindScan(byte[] file, int from) {
        int next = from;
        while (next + 1 < file.length) {
            int kind = file[next + 1] & 0xFF;
            boolean part = (file[next] & 0xFF) == 0xFF && kind != 0 && (kind < FIRST_RESTART || kind > LAST_RESTART);
            if (part) {
                return next;
            }
            next++;
        }
        return file.length;
    }

    private static int at(byte[] file, int index) {
        return ((file[index] & 0xFF) << 8) | (file[index + 1] & 0xFF);
    }
}
