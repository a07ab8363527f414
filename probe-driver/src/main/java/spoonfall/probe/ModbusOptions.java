package spoonfall.probe;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spoonfall.probe.modbus.RegisterSettings;

/** The options of a Modbus probe. */
final class ModbusOptions {
    static final List<String> KEYS = List.of("id", "function", "register", "type", "words", "scale");

    private ModbusOptions() {}

    /**
     * Where the temperature is kept.
     *
     * @throws IllegalArgumentException with one line naming the option and what is allowed
     */
    static RegisterSettings register(Map<String, String> options) {
        if (!options.containsKey("register")) {
            throw new IllegalArgumentException(
                    "a modbus probe needs the register of the temperature, such as register=0");
        }
        String words = options.getOrDefault("words", "high");
        if (!words.equals("high") && !words.equals("low")) {
            throw new IllegalArgumentException(
                    "words must be high or low, the word that comes first, not \"" + words + "\"");
        }
        return new RegisterSettings(
                whole(options, "id", "1"),
                whole(options, "function", "4"),
                whole(options, "register", ""),
                type(options.getOrDefault("type", "int16")),
                words.equals("low"),
                scale(options.getOrDefault("scale", "1")));
    }

    private static RegisterSettings.Type type(String text) {
        return Arrays.stream(RegisterSettings.Type.values())
                .filter(type -> type.wireName().equals(text))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("type must be "
                        + Arrays.stream(RegisterSettings.Type.values())
                                .map(RegisterSettings.Type::wireName)
                                .collect(Collectors.joining(", "))
                        + ", not \"" + text + "\""));
    }

    private static int whole(Map<String, String> options, String key, String otherwise) {
        String text = options.getOrDefault(key, otherwise);
        try {
            return Integer.decode(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    key + " must be a whole number, such as 1 or 0x6B, not \"" + text + "\"", e);
        }
    }

    private static double scale(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("scale must be a number such as 0.1, not \"" + text + "\"", e);
        }
    }
}
