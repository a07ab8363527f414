package spoonfall.probe.trace;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** The metadata half of a trace: CSV on the Web, W3C Recommendation of 17 December 2015. */
final class TraceMetadata {
    static final String TIME = "elapsed_s";
    static final String TEMPERATURE = "temperature_c";

    private static final String OURS = "urn:spoonfall:";
    private static final long LARGEST_BYTES = 1024 * 1024;
    private static final int LONGEST_SHOWN = 60;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private TraceMetadata() {}

    static Path beside(Path csv) {
        return csv.resolveSibling(csv.getFileName() + "-metadata.json");
    }

    static TraceInfo readBeside(Path csv) throws IOException {
        Path file = beside(csv);
        if (!Files.exists(file)) {
            return TraceInfo.titled(String.valueOf(csv.getFileName()));
        }
        if (Files.size(file) > LARGEST_BYTES) {
            throw new TraceException(file + " is larger than 1 MiB; metadata never is");
        }
        JsonNode root;
        try {
            root = MAPPER.readTree(Files.readAllBytes(file));
        } catch (JsonProcessingException e) {
            throw new TraceException(
                    file + ", line " + e.getLocation().getLineNr() + " is not JSON: " + e.getOriginalMessage(), e);
        }
        if (root == null || !root.isObject()) {
            throw new TraceException(file + " must be a JSON object, such as {\"dc:title\": \"A cook\"}");
        }
        return info(file, root, String.valueOf(csv.getFileName()));
    }

    private static TraceInfo info(Path file, JsonNode root, String name) {
        return new TraceInfo(
                root.path("dc:title").asText(name),
                root.path("dc:description").asText(""),
                provenance(file, root),
                number(file, root, "waterBoilC"),
                number(file, root, "elevationM"),
                number(file, root, "pressurePa"),
                number(file, root, "riseC"),
                seed(file, root),
                startedAt(file, root),
                labels(file, root),
                notes(file, root));
    }

    private static String provenance(Path file, JsonNode root) {
        JsonNode node = root.path(OURS + "provenance");
        String provenance = node.asText("recorded");
        if (!provenance.equals("recorded") && !provenance.equals("simulated")) {
            throw new TraceException(
                    file + ": " + OURS + "provenance must be recorded or simulated, not " + shown(node));
        }
        return provenance;
    }

    private static OptionalLong seed(Path file, JsonNode root) {
        JsonNode node = root.path(OURS + "seed");
        if (node.isMissingNode()) {
            return OptionalLong.empty();
        }
        if (!node.isIntegralNumber() || !node.canConvertToLong()) {
            throw new TraceException(file + ": " + OURS + "seed must be a whole number, not " + shown(node));
        }
        return OptionalLong.of(node.longValue());
    }

    private static OptionalDouble number(Path file, JsonNode root, String name) {
        JsonNode node = root.path(OURS + name);
        if (node.isMissingNode()) {
            return OptionalDouble.empty();
        }
        if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
            throw new TraceException(file + ": " + OURS + name + " must be a number, not " + shown(node));
        }
        return OptionalDouble.of(node.doubleValue());
    }

    private static Optional<Instant> startedAt(Path file, JsonNode root) {
        JsonNode node = root.path(OURS + "startedAt");
        if (node.isMissingNode()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Instant.parse(node.asText()));
        } catch (DateTimeException e) {
            throw new TraceException(
                    file + ": " + OURS + "startedAt must be a time such as 2026-01-17T15:20:00Z, not " + shown(node),
                    e);
        }
    }

    private static List<TraceInfo.Label> labels(Path file, JsonNode root) {
        List<TraceInfo.Label> labels = new ArrayList<>();
        JsonNode list = root.path(OURS + "labels");
        if (!list.isMissingNode() && !list.isArray()) {
            throw new TraceException(file + ": " + OURS + "labels must be a list, not " + shown(list));
        }
        for (JsonNode label : list) {
            boolean timed = label.path("t").isNumber()
                    && Double.isFinite(label.path("t").doubleValue());
            if (!timed || !label.path("what").isTextual()) {
                throw new TraceException(file + ": a label needs a number t and a word what, not " + shown(label));
            }
            labels.add(new TraceInfo.Label(
                    label.path("t").doubleValue(), label.path("what").textValue()));
        }
        return labels;
    }

    /** The annotations of CSV on the Web (section 5.4.1 of its metadata vocabulary), as far as they are ours. */
    private static List<TraceInfo.Note> notes(Path file, JsonNode root) {
        List<TraceInfo.Note> notes = new ArrayList<>();
        JsonNode list = root.path("notes");
        if (!list.isMissingNode() && !list.isArray()) {
            throw new TraceException(file + ": notes must be a list, not " + shown(list));
        }
        for (JsonNode note : list) {
            boolean ours =
                    note.path(OURS + "t").isNumber() && note.path(OURS + "text").isTextual();
            if (ours && Double.isFinite(note.path(OURS + "t").doubleValue())) {
                notes.add(new TraceInfo.Note(
                        note.path(OURS + "t").doubleValue(),
                        note.path(OURS + "text").textValue()));
            }
        }
        return notes;
    }

    /** A value as it is shown in a complaint, which is one line. */
    private static String shown(JsonNode node) {
        String text = node.toString();
        return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN - 1) + "…" : text;
    }

    static void writeBeside(Trace trace, Path csv) throws IOException {
        String json = json(trace.info(), String.valueOf(csv.getFileName()));
        Files.writeString(beside(csv), json, StandardCharsets.UTF_8);
    }

    static String json(TraceInfo info, String url) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("@context", "http://www.w3.org/ns/csvw");
        root.put("url", url);
        root.put("dc:title", info.title());
        if (!info.description().isEmpty()) {
            root.put("dc:description", info.description());
        }
        root.put(OURS + "provenance", info.provenance());
        info.waterBoilC().ifPresent(value -> root.put(OURS + "waterBoilC", value));
        info.elevationM().ifPresent(value -> root.put(OURS + "elevationM", value));
        info.pressurePa().ifPresent(value -> root.put(OURS + "pressurePa", value));
        info.riseC().ifPresent(value -> root.put(OURS + "riseC", value));
        info.seed().ifPresent(value -> root.put(OURS + "seed", value));
        info.startedAt().ifPresent(value -> root.put(OURS + "startedAt", value.toString()));
        if (!info.labels().isEmpty()) {
            ArrayNode labels = root.putArray(OURS + "labels");
            info.labels()
                    .forEach(label -> labels.addObject().put("t", label.t()).put("what", label.what()));
        }
        if (!info.notes().isEmpty()) {
            ArrayNode notes = root.putArray("notes");
            info.notes()
                    .forEach(note -> notes.addObject().put(OURS + "t", note.t()).put(OURS + "text", note.text()));
        }
        ArrayNode columns = root.putObject("tableSchema").putArray("columns");
        column(columns, TIME, "seconds since the trace began", "s", true);
        column(columns, TEMPERATURE, "temperature of the pan; empty where a reading was lost", "Cel", false);
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void column(ArrayNode columns, String name, String what, String ucumUnit, boolean required) {
        ObjectNode column = columns.addObject();
        column.put("name", name).put("titles", name).put("dc:description", what);
        column.put("datatype", "decimal").put("required", required).put(OURS + "ucumUnit", ucumUnit);
    }
}
