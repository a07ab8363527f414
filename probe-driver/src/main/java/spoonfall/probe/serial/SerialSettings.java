package spoonfall.probe.serial;

import java.util.Locale;

/**
 * How to open a serial port.
 *
 * @param path the device's path; a stable link is best, for the system may name the device anew
 * @param baud bits per second, 50 to 4,000,000
 * @param dataBits 5 to 8
 * @param parity parity bit
 * @param stopBits stop bits
 */
public record SerialSettings(String path, int baud, int dataBits, Parity parity, StopBits stopBits) {
    private static final int SLOWEST = 50;
    private static final int FASTEST = 4_000_000;

    /** A parity bit. */
    public enum Parity {
        /** No parity bit. */
        NONE,
        /** Odd parity. */
        ODD,
        /** Even parity. */
        EVEN,
        /** Always one. */
        MARK,
        /** Always zero. */
        SPACE
    }

    /** How many stop bits. */
    public enum StopBits {
        /** One. */
        ONE,
        /** One and a half. */
        ONE_AND_A_HALF,
        /** Two. */
        TWO
    }

    /** Validates the numbers. */
    public SerialSettings {
        if (path.isBlank()) {
            throw new IllegalArgumentException("a serial probe needs a port, such as /dev/ttyUSB0");
        }
        if (baud < SLOWEST || baud > FASTEST) {
            throw new IllegalArgumentException("baud must be 50 to 4000000, such as 9600, not " + baud);
        }
        if (dataBits < 5 || dataBits > 8) {
            throw new IllegalArgumentException("databits must be 5 to 8, not " + dataBits);
        }
    }

    /** 9600 baud, eight data bits, no parity, one stop bit. */
    public static SerialSettings defaults(String path) {
        return new SerialSettings(path, 9600, 8, Parity.NONE, StopBits.ONE);
    }

    /** Such as {@code 9600 baud 8N1}. */
    public String description() {
        String stop = switch (stopBits) {
            case ONE -> "1";
            case ONE_AND_A_HALF -> "1.5";
            case TWO -> "2";
        };
        return baud + " baud " + dataBits + parity.name().substring(0, 1).toUpperCase(Locale.ROOT) + stop;
    }
}
