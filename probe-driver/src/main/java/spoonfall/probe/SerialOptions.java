package spoonfall.probe;

import java.util.List;
import java.util.Map;
import spoonfall.probe.serial.SerialSettings;

/** The options of a serial line in a {@link ProbeSpec}. */
final class SerialOptions {
    /** Their names. */
    static final List<String> KEYS = List.of("baud", "databits", "parity", "stopbits");

    private SerialOptions() {}

    /** How the port of a probe of a kind is opened; 9600 baud 8N1 unless they say otherwise, and even parity where Modbus is spoken. */
    static SerialSettings settings(ProbeSpec.Kind kind, String place, Map<String, String> options) {
        SerialSettings defaults = SerialSettings.defaults(place);
        return new SerialSettings(
                place,
                number(options, "baud", defaults.baud()),
                number(options, "databits", defaults.dataBits()),
                parity(options.getOrDefault("parity", kind == ProbeSpec.Kind.MODBUS ? "even" : "none")),
                stopBits(options.getOrDefault("stopbits", "1")));
    }

    private static int number(Map<String, String> options, String key, int otherwise) {
        String text = options.get(key);
        if (text == null) {
            return otherwise;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(key + " must be a whole number, not \"" + text + "\"", e);
        }
    }

    private static SerialSettings.Parity parity(String text) {
        for (SerialSettings.Parity parity : SerialSettings.Parity.values()) {
            if (parity.name().equalsIgnoreCase(text)) {
                return parity;
            }
        }
        throw new IllegalArgumentException("parity must be none, odd, even, mark or space, not \"" + text + "\"");
    }

    private static SerialSettings.StopBits stopBits(String text) {
        return switch (text) {
            case "1" -> SerialSettings.StopBits.ONE;
            case "1.5" -> SerialSettings.StopBits.ONE_AND_A_HALF;
            case "2" -> SerialSettings.StopBits.TWO;
            default -> throw new IllegalArgumentException("stopbits must be 1, 1.5 or 2, not \"" + text + "\"");
        };
    }
}
