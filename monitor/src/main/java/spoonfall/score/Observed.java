package spoonfall.score;

import java.util.List;
import java.util.Optional;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Forecast;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.WaterBoil;
import spoonfall.log.TraceReplay;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

/**
 * What the monitor told of a cook.
 *
 * @param settings what it measured against
 * @param looks a look every ten seconds
 * @param raised when alarms were raised
 * @param cleared when they ended
 */
public record Observed(CookSettings settings, List<Look> looks, List<Call> raised, List<Call> cleared) {
    /**
     * A status.
     *
     * @param t seconds of the cook
     * @param forecast when it will set, if the monitor said
     */
    public record Look(double t, Optional<Forecast> forecast) {}

    /**
     * An alarm.
     *
     * @param t seconds of the cook
     * @param alarm its wire name
     */
    public record Call(double t, String alarm) {}

    /** Keeps the lists as they are now. */
    public Observed {
        looks = List.copyOf(looks);
        raised = List.copyOf(raised);
        cleared = List.copyOf(cleared);
    }

    /** Runs the trace through a monitor that knows what the trace's metadata says. */
    public static Observed of(Trace trace) {
        return of(trace, ProbeTrust.unchecked("pan"));
    }

    /** The same where the trace comes from a thermometer of which that is known. */
    public static Observed of(Trace trace, ProbeTrust probe) {
        CookSettings settings = settings(trace.info());
        Notes notes = new Notes();
        TraceReplay replay = new TraceReplay(trace, settings, probe);
        while (replay.hasNext()) {
            notes.take(replay.next());
        }
        // One that falls silent for good has no row at the cook's end: time passes until then all the same.
        trace.info()
                .firstT("off-the-heat")
                .ifPresent(endT -> notes.take(replay.monitor().advanceTo(Math.round(endT * 1e9))));
        return notes.observed(settings);
    }

    /** The last look at or before {@code t}. */
    Optional<Look> lookAt(double t) {
        return looks.stream().filter(look -> look.t() <= t).reduce((first, second) -> second);
    }

    /** Whether {@code alarm} was on at {@code t}. */
    boolean onAt(double t, String alarm) {
        long ups = raised.stream()
                .filter(c -> c.alarm().equals(alarm) && c.t() <= t)
                .count();
        long downs = cleared.stream()
                .filter(c -> c.alarm().equals(alarm) && c.t() <= t)
                .count();
        return ups > downs;
    }

    /** What a replay of the trace goes by as well. */
    private static CookSettings settings(TraceInfo info) {
        return new CookSettings(
                WaterBoil.known(info.waterBoilC(), info.pressurePa(), info.elevationM()),
                info.riseC().orElse(CookSettings.defaults().riseC()));
    }
}
