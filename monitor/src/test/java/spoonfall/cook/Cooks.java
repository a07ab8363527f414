package spoonfall.cook;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import spoonfall.alarm.AlarmChange;
import spoonfall.lab.PanSettings;
import spoonfall.lab.Scenario;
import spoonfall.lab.Simulator;
import spoonfall.log.TraceReplay;
import spoonfall.probe.trace.Trace;

/** Simulated cooks run through the monitor. */
public final class Cooks {
    private Cooks() {}

    /** The settings of the simulated kitchen. */
    public static CookSettings settings(Trace trace) {
        return new CookSettings(
                WaterBoil.atElevation(trace.info().elevationM().orElseThrow()),
                trace.info().riseC().orElseThrow());
    }

    /** Cooks a scenario and returns the trace. */
    public static Trace trace(Scenario scenario, long seed) {
        return Simulator.cook(scenario, PanSettings.defaults(), seed);
    }

    /** All events of a trace. */
    public static List<CookEvent> events(Trace trace) {
        TraceReplay replay = new TraceReplay(trace, settings(trace));
        List<CookEvent> events = new ArrayList<>();
        while (replay.hasNext()) {
            events.addAll(replay.next());
        }
        return events;
    }

    /** When an alarm was first raised. */
    public static OptionalDouble raisedT(List<CookEvent> events, AlarmName name) {
        return events.stream()
                .filter(event -> event instanceof CookEvent.AlarmChanged changed
                        && changed.change() == AlarmChange.RAISED
                        && changed.alarm().name() == name)
                .mapToDouble(CookEvent::t)
                .findFirst();
    }

    /** The names of the alarms that were raised, in order. */
    public static List<AlarmName> raised(List<CookEvent> events) {
        List<AlarmName> names = new ArrayList<>();
        for (CookEvent event : events) {
            if (event instanceof CookEvent.AlarmChanged changed && changed.change() == AlarmChange.RAISED) {
                names.add(changed.alarm().name());
            }
        }
        return names;
    }

    /** The stages in the order in which they were entered. */
    public static List<Stage> stages(List<CookEvent> events) {
        List<Stage> stages = new ArrayList<>();
        for (CookEvent event : events) {
            if (event instanceof CookEvent.StageEntered entered) {
                stages.add(entered.stage());
            }
        }
        return stages;
    }
}
