package spoonfall.cook;

import java.util.ArrayList;
import java.util.List;
import spoonfall.log.TraceReplay;
import spoonfall.probe.trace.Trace;

/** Cooks of the varied lab run through the monitor, measured against what their traces say. */
final class Replayed {
    private Replayed() {}

    static List<CookEvent> events(Trace trace) {
        WaterBoil boil = trace.info().pressurePa().isPresent()
                ? WaterBoil.atPressure(trace.info().pressurePa().getAsDouble())
                : WaterBoil.atElevation(trace.info().elevationM().orElseThrow());
        TraceReplay replay = new TraceReplay(
                trace, new CookSettings(boil, trace.info().riseC().orElseThrow()));
        List<CookEvent> events = new ArrayList<>();
        while (replay.hasNext()) {
            events.addAll(replay.next());
        }
        return events;
    }
}
