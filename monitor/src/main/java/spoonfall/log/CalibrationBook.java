package spoonfall.log;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoonfall.calibration.Correction;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;

/**
 * The calibrations of all thermometers in one JSON file, the latest last. None is ever taken out: undoing one marks
 * it, and the one before it counts again.
 */
public final class CalibrationBook {
    private static final int LARGEST_MIB = 4;

    private final Path file;
    private final JsonList list;

    /** The book in {@code file}, which need not be there yet. */
    public CalibrationBook(Path file) {
        this.file = file;
        list = new JsonList(file, "calibrations", LARGEST_MIB);
    }

    /**
     * One calibration.
     *
     * @param probe identity of the thermometer: at best a stable name, else its place
     * @param place where it was when it was made
     * @param at when it was made
     * @param conditions under which, for people
     * @param undone whether it was taken back
     * @param correction what came of it
     */
    public record Entry(
            String probe, String place, Instant at, String conditions, boolean undone, Correction correction) {}

    /** All of them, oldest first. */
    public List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (JsonNode node : list.read()) {
            entries.add(entry(node));
        }
        return entries;
    }

    /** The one that counts for a thermometer. */
    public Optional<Entry> latest(String probe) {
        return entries().stream()
                .filter(entry -> entry.probe().equals(probe) && !entry.undone())
                .reduce((first, second) -> second);
    }

    /**
     * Calibrations for a place that were all made with other devices than the one that is there now.
     *
     * @return the latest of them; empty if there is none, or if one was made with this device
     */
    public Optional<Entry> madeWithAnother(String probe, String place) {
        if (latest(probe).isPresent()) {
            return Optional.empty();
        }
        return entries().stream()
                .filter(entry -> entry.place().equals(place) && !entry.undone())
                .filter(entry -> !device(entry.probe()).equals(device(probe)))
                .reduce((first, second) -> second);
    }

    /** The device without the number of an instrument on its line. */
    private static String device(String probe) {
        int unit = probe.lastIndexOf('#');
        return unit < 0 ? probe : probe.substring(0, unit);
    }

    /** Adds one. */
    public synchronized void add(Entry entry) {
        ArrayNode all = list.read();
        ObjectNode node = all.addObject();
        node.put("probe", entry.probe());
        node.put("place", entry.place());
        node.put("at", entry.at().toString());
        node.put("conditions", entry.conditions());
        putPoints(node, entry.correction());
        list.write(all);
    }

    /** Takes back the latest of a thermometer; empty if there is none. */
    public synchronized Optional<Entry> undo(String probe) {
        ArrayNode all = list.read();
        for (int i = all.size() - 1; i >= 0; i--) {
            Entry entry = entry(all.get(i));
            if (entry.probe().equals(probe) && !entry.undone() && all.get(i) instanceof ObjectNode node) {
                node.put("undone", true);
                list.write(all);
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    private Entry entry(JsonNode node) {
        try {
            return new Entry(
                    node.path("probe").asText(),
                    node.path("place").asText(node.path("probe").asText()),
                    Instant.parse(node.path("at").asText()),
                    node.path("conditions").asText(),
                    node.path("undone").asBoolean(false),
                    correction(node));
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new IllegalArgumentException(file + " holds a calibration that cannot be: " + e.getMessage(), e);
        }
    }

    /** Adds the points of a correction to what is kept of it. */
    static void putPoints(ObjectNode node, Correction correction) {
        ArrayNode points = node.putArray("points");
        for (Point point : correction.points()) {
            points.addObject()
                    .put("reference", point.reference().kind() == Reference.Kind.ICE ? "ice" : "boiling-water")
                    .put("referenceC", point.reference().temperatureC())
                    .put("referenceLimitC", point.reference().limitC())
                    .put("shownC", point.shownC())
                    .put("noiseC", point.noiseC())
                    .put("driftC", point.driftC());
        }
    }

    /** The correction whose points {@link #putPoints} kept. */
    static Correction correction(JsonNode node) {
        List<Point> points = new ArrayList<>();
        for (JsonNode point : node.path("points")) {
            boolean ice = point.path("reference").asText().equals("ice");
            Reference.Kind kind = ice ? Reference.Kind.ICE : Reference.Kind.BOILING_WATER;
            Reference reference = new Reference(kind, number(point, "referenceC"), number(point, "referenceLimitC"));
            points.add(new Point(reference, number(point, "shownC"), noiseC(point), driftC(point)));
        }
        return new Correction(points);
    }

    /** Books of the first version have noise and drift in one. */
    private static double noiseC(JsonNode point) {
        return number(point, point.has("noiseC") ? "noiseC" : "shownUncertaintyC");
    }

    private static double driftC(JsonNode point) {
        return point.has("driftC") ? number(point, "driftC") : 0;
    }

    private static double number(JsonNode point, String name) {
        JsonNode node = point.path(name);
        if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
            throw new IllegalArgumentException(name + " is not a number");
        }
        return node.doubleValue();
    }
}
