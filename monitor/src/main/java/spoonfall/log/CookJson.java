package spoonfall.log;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.calibration.Correction;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Pace;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.WaterBoil;
import spoonfall.physics.GelPoint;

/**
 * What the record keeps as JSON, there and back. Numbers come back as the same numbers, so that a cook that is gone
 * through again is the same cook. What cannot be is an {@link IllegalArgumentException} that names the member.
 */
public final class CookJson {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private CookJson() {}

    /** An object with nothing in it. */
    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** An object as text. */
    public static String text(ObjectNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The object that is in a text. */
    public static ObjectNode parse(String text) {
        try {
            if (MAPPER.readTree(text) instanceof ObjectNode node) {
                return node;
            }
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("not JSON: " + e.getOriginalMessage(), e);
        }
        throw new IllegalArgumentException("not a JSON object");
    }

    /** What is known of a cook at its beginning. */
    public static ObjectNode header(CookHeader header) {
        ObjectNode node = object();
        node.put("number", header.number()).put("pan", header.pan());
        node.put("kitchen", header.kitchen()).put("batch", header.batch());
        node.put("source", header.source()).put("speed", header.speed());
        node.put("startedAt", header.startedAt().toString());
        node.set("asked", settings(header.asked()));
        node.set("basis", basis(header.basis()));
        ObjectNode corrections = node.putObject("corrections");
        header.corrections().forEach((probe, one) -> corrections.set(probe, correction(Optional.of(one))));
        return node;
    }

    /** A header that {@link #header(CookHeader)} made. */
    public static CookHeader header(JsonNode node) {
        Map<String, Correction> corrections = new HashMap<>();
        for (Map.Entry<String, JsonNode> one : node.path("corrections").properties()) {
            correction(one.getValue()).ifPresent(correction -> corrections.put(one.getKey(), correction));
        }
        return new CookHeader(
                (int) number(node, "number"),
                text(node, "pan"),
                text(node, "kitchen"),
                text(node, "batch"),
                text(node, "source"),
                number(node, "speed"),
                instant(node, "startedAt"),
                settings(node.path("asked")),
                basis(node.path("basis")),
                corrections);
    }

    /** What a cook is measured against. */
    public static ObjectNode basis(CookBasis basis) {
        ObjectNode node = object();
        node.set("settings", settings(basis.settings()));
        ArrayNode probes = node.putArray("probes");
        for (ProbeTrust trust : basis.trusts()) {
            ObjectNode probe = probes.addObject().put("name", trust.name());
            trust.checkedToC().ifPresent(value -> probe.put("checkedToC", value));
            if (trust.pace() == Pace.BY_HAND) {
                probe.put("byHand", true);
            }
        }
        node.set("declared", waterBoil(basis.declared()));
        basis.measured()
                .ifPresent(measured -> node.putObject("measured")
                        .put("shownC", measured.shownC())
                        .put("plateauDoubtC", measured.plateauDoubtC())
                        .put("at", measured.at().toString()));
        return node;
    }

    /** A basis that {@link #basis(CookBasis)} made. */
    public static CookBasis basis(JsonNode node) {
        List<ProbeTrust> trusts = new ArrayList<>();
        for (JsonNode probe : node.path("probes")) {
            OptionalDouble checkedToC =
                    probe.has("checkedToC") ? OptionalDouble.of(number(probe, "checkedToC")) : OptionalDouble.empty();
            Pace pace = probe.path("byHand").asBoolean(false) ? Pace.BY_HAND : Pace.BY_ITSELF;
            trusts.add(new ProbeTrust(text(probe, "name"), checkedToC, pace));
        }
        JsonNode measured = node.path("measured");
        return new CookBasis(
                settings(node.path("settings")),
                trusts,
                waterBoil(node.path("declared")),
                measured.isMissingNode()
                        ? Optional.empty()
                        : Optional.of(new CookBasis.Measured(
                                number(measured, "shownC"),
                                number(measured, "plateauDoubtC"),
                                instant(measured, "at"))));
    }

    /** What makes a thermometer's readings true; empty if they are taken as they are. */
    public static ObjectNode correction(Optional<Correction> correction) {
        ObjectNode node = object();
        correction.ifPresent(one -> CalibrationBook.putPoints(node, one));
        return node;
    }

    /** A correction that {@link #correction(Optional)} made. */
    public static Optional<Correction> correction(JsonNode node) {
        return node.has("points") ? Optional.of(CalibrationBook.correction(node)) : Optional.empty();
    }

    private static ObjectNode settings(CookSettings settings) {
        ObjectNode node = object().put("riseC", settings.riseC()).put("windowC", settings.windowC());
        node.set("waterBoil", waterBoil(settings.waterBoil()));
        return node;
    }

    private static CookSettings settings(JsonNode node) {
        double windowC = node.has("windowC") ? number(node, "windowC") : GelPoint.WINDOW_C;
        return new CookSettings(waterBoil(node.path("waterBoil")), number(node, "riseC"), windowC);
    }

    private static ObjectNode waterBoil(WaterBoil boil) {
        return object().put("temperatureC", boil.temperatureC())
                .put("pressurePa", boil.pressurePa())
                .put("from", boil.from().wireName())
                .put("detail", boil.detail())
                .put("doubtC", boil.doubtC());
    }

    private static WaterBoil waterBoil(JsonNode node) {
        String wanted = text(node, "from");
        for (WaterBoil.From from : WaterBoil.From.values()) {
            if (from.wireName().equals(wanted)) {
                return new WaterBoil(
                        number(node, "temperatureC"),
                        number(node, "pressurePa"),
                        from,
                        text(node, "detail"),
                        number(node, "doubtC"));
            }
        }
        throw new IllegalArgumentException("a water boil does not come from \"" + wanted + "\"");
    }

    private static Instant instant(JsonNode node, String name) {
        try {
            return Instant.parse(text(node, name));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(name + " is not a time", e);
        }
    }

    /** A number that must be there. */
    public static double number(JsonNode node, String name) {
        double value = node.path(name).doubleValue();
        if (!node.path(name).isNumber() || !Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is not a number");
        }
        return value;
    }

    /** A text that must be there. */
    public static String text(JsonNode node, String name) {
        if (!node.path(name).isTextual()) {
            throw new IllegalArgumentException(name + " is not a text");
        }
        return node.path(name).textValue();
    }
}
