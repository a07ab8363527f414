package spoonfall.log;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

/** A record as a trace. */
public final class RecordedTrace {
    private RecordedTrace() {}

    /**
     * The record as a trace that replays to the same cook.
     *
     * @param record the readings
     * @param settings what the cook was measured against
     * @param batch what was made; may be empty
     * @param startedAt the wall clock at its first reading
     * @param notes what somebody wrote of it
     */
    public static Trace of(
            CookRecord record, CookSettings settings, String batch, Optional<Instant> startedAt, List<CookNote> notes) {
        Trace.Builder rows = new Trace.Builder();
        for (int i = 0; i < record.size(); i++) {
            rows.add(record.t(i), OptionalDouble.of(record.temperatureC(i)));
        }
        boolean measured = settings.waterBoil().from() == WaterBoil.From.MEASURED;
        List<TraceInfo.Note> written = notes.stream()
                .map(note -> new TraceInfo.Note(note.atMillis() / 1000.0, note.text()))
                .toList();
        TraceInfo info = new TraceInfo(
                batch.isEmpty() ? "A cook" : batch,
                "",
                "recorded",
                measured ? OptionalDouble.of(settings.waterBoil().temperatureC()) : OptionalDouble.empty(),
                OptionalDouble.empty(),
                measured
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(settings.waterBoil().pressurePa()),
                OptionalDouble.of(settings.riseC()),
                OptionalLong.empty(),
                startedAt,
                List.of());
        return rows.build(info.with(written));
    }
}
