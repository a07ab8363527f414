package spoonfall.probe.line;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Optional;
import java.util.OptionalDouble;

/** Lines that are JSON objects, with the temperature in one field, such as {@code {"temp": 98.4}}. */
public final class JsonLines implements LineFormat {
    private static final int DEEPEST = 20;
    private static final ObjectMapper MAPPER = new ObjectMapper(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxNumberLength(60)
                            .maxStringLength(LineSplitter.LONGEST)
                            .build())
                    // Micro-controllers print NaN for an open sensor: it must be counted as that, not as noise.
                    .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
                    // A field that comes twice, or a second object, would be a choice between two temperatures.
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private final String field;
    private final Meaning meaning;

    /**
     * A format of JSON lines.
     *
     * @param field name of the field; dots lead into objects within objects
     * @param unit unit of the number; empty means °C
     */
    public JsonLines(String field, Optional<TemperatureUnit> unit) {
        this(field, Meaning.temperature(unit));
    }

    /** A format of JSON lines whose field has any meaning. */
    public JsonLines(String field, Meaning meaning) {
        this.field = field;
        this.meaning = meaning;
    }

    @Override
    public Parsed parse(String line) {
        Optional<JsonNode> object = object(line);
        if (object.isEmpty()) {
            return Parsed.NONE;
        }
        JsonNode node = value(object.get(), field);
        if (node.isTextual()) {
            return new TextLines(Optional.empty(), meaning, false).parse(node.textValue());
        }
        return node.isNumber()
                ? meaning.rule().of(node.doubleValue(), Optional.empty(), name -> number(value(object.get(), name)))
                : Parsed.NONE;
    }

    private static OptionalDouble number(JsonNode node) {
        return node.isNumber() ? OptionalDouble.of(node.doubleValue()) : OptionalDouble.empty();
    }

    private static JsonNode value(JsonNode object, String path) {
        JsonNode node = object.path(path);
        if (node.isMissingNode()) {
            node = object;
            for (String name : path.split("\\.", DEEPEST)) {
                node = node.path(name);
            }
        }
        return node;
    }

    @Override
    public String description() {
        return "field " + field + " of JSON lines, " + meaning.description();
    }

    /** The object that a line holds; empty if it holds none. */
    static Optional<JsonNode> object(String line) {
        if (!line.startsWith("{")) {
            return Optional.empty();
        }
        try {
            JsonNode node = MAPPER.readTree(line);
            return node != null && node.isObject() ? Optional.of(node) : Optional.empty();
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }
}
