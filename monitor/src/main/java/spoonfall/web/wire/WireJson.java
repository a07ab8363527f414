package spoonfall.web.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.OptionalDouble;

/** What all JSON on the wire has in common. */
public final class WireJson {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private WireJson() {}

    /** A node as one line of text. */
    public static String text(ObjectNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** To thousandths: of degrees, of seconds. */
    public static double rounded(double value) {
        return Math.round(value * 1000) / 1000.0;
    }

    /** To hundredths: of litres, of kilowatts, or where many numbers are drawn. */
    public static double hundredths(double value) {
        return Math.round(value * 100) / 100.0;
    }

    /** To tenths: of grams, of degrees that are read at a glance. */
    public static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }

    /** Adds a number, null if there is none. */
    public static void put(ObjectNode node, String name, OptionalDouble value) {
        if (value.isPresent()) {
            node.put(name, rounded(value.getAsDouble()));
        } else {
            node.putNull(name);
        }
    }

    /** Adds a number to hundredths, null if there is none. */
    public static void putHundredths(ObjectNode node, String name, OptionalDouble value) {
        value.ifPresentOrElse(number -> node.put(name, hundredths(number)), () -> node.putNull(name));
    }

    /** Adds a number, null if there is none. */
    public static void put(ObjectNode node, String name, Optional<Double> value) {
        put(node, name, value.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }
}
