package spoonfall.probe.trace;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * What is known of a recorded cook beside its readings.
 *
 * @param title a few words
 * @param description a sentence or two; may be empty
 * @param provenance {@code recorded} or {@code simulated}
 * @param waterBoilC what plain boiling water showed there that day, in °C
 * @param elevationM metres above sea level where it was cooked
 * @param pressurePa air pressure there
 * @param riseC how far above the water boil it was to set
 * @param seed seed of a simulated cook
 * @param startedAt wall clock at its first second
 * @param labels what truly happened, and when
 * @param notes what somebody wrote of it
 */
public record TraceInfo(
        String title,
        String description,
        String provenance,
        OptionalDouble waterBoilC,
        OptionalDouble elevationM,
        OptionalDouble pressurePa,
        OptionalDouble riseC,
        OptionalLong seed,
        Optional<Instant> startedAt,
        List<Label> labels,
        List<Note> notes) {

    /**
     * A line that somebody wrote.
     *
     * @param t seconds since the trace began
     * @param text the line
     */
    public record Note(double t, String text) {}

    /**
     * Something that truly happened.
     *
     * @param t seconds since the trace began
     * @param what a word, such as {@code heat-off}
     */
    public record Label(double t, String what) {}

    /** What is known of a cook of which nobody wrote anything. */
    public TraceInfo(
            String title,
            String description,
            String provenance,
            OptionalDouble waterBoilC,
            OptionalDouble elevationM,
            OptionalDouble pressurePa,
            OptionalDouble riseC,
            OptionalLong seed,
            Optional<Instant> startedAt,
            List<Label> labels) {
        this(
                title,
                description,
                provenance,
                waterBoilC,
                elevationM,
                pressurePa,
                riseC,
                seed,
                startedAt,
                labels,
                List.of());
    }

    /** What is known of a cook whose water boil was not measured. */
    public TraceInfo(
            String title,
            String description,
            String provenance,
            OptionalDouble elevationM,
            OptionalDouble pressurePa,
            OptionalDouble riseC,
            OptionalLong seed,
            Optional<Instant> startedAt,
            List<Label> labels) {
        this(
                title,
                description,
                provenance,
                OptionalDouble.empty(),
                elevationM,
                pressurePa,
                riseC,
                seed,
                startedAt,
                labels);
    }

    /** Keeps copies of the lists. */
    public TraceInfo {
        labels = List.copyOf(labels);
        notes = List.copyOf(notes);
    }

    /** The same with what somebody wrote. */
    public TraceInfo with(List<Note> written) {
        return new TraceInfo(
                title,
                description,
                provenance,
                waterBoilC,
                elevationM,
                pressurePa,
                riseC,
                seed,
                startedAt,
                labels,
                written);
    }

    /** Nothing is known but a title. */
    public static TraceInfo titled(String title) {
        return new TraceInfo(
                title,
                "",
                "recorded",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalLong.empty(),
                Optional.empty(),
                List.of());
    }

    /** When something of that name first happened. */
    public OptionalDouble firstT(String what) {
        return labels.stream()
                .filter(label -> label.what().equals(what))
                .mapToDouble(Label::t)
                .findFirst();
    }
}
