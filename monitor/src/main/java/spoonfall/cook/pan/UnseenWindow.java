package spoonfall.cook.pan;

import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.AlarmName;
import spoonfall.cook.Forecast;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.probe.ProbeWatch;
import spoonfall.series.Track;

/**
 * When the test window opens by what was known while the probe still told of the pan, for when it tells nothing any more or has
 * shifted: the pan boils on, and only a set test can say how far it is. The numbers are judgements, no source.
 */
final class UnseenWindow {
    /** Further ahead than that, in seconds, nobody knows what a pan does that nobody sees. */
    private static final double MOST_S = 1200;

    /** A probe that leaves the pan is known to have left it some seconds later. */
    private static final double LEAVES_S = 30;

    private final AlarmBoard board;
    private final ProbeWatch probe;
    private final Track dueT = new Track(MOST_S);
    private double outSinceT = Double.NaN;

    UnseenWindow(AlarmBoard board, ProbeWatch probe) {
        this.board = board;
        this.probe = probe;
    }

    /** Takes note of what is foreseen while the pan is seen: nothing, where it does not climb. */
    void seen(double t, Optional<Forecast> forecast) {
        dueT.add(t, t + forecast.map(Forecast::windowS).orElse(Double.NaN));
    }

    /** What was foreseen is of no use any more. */
    void forget() {
        dueT.clear();
    }

    /**
     * Since when a pan is not read whose window is open {@code aheadS} from now; empty if it is read, or not open.
     *
     * @param shiftedT since when the readings lie elsewhere than the pan; empty where they do not
     */
    OptionalDouble openSinceT(double t, double aheadS, OptionalDouble shiftedT) {
        OptionalDouble blind = blindSinceT(t);
        boolean shiftedFirst = shiftedT.isPresent() && shiftedT.getAsDouble() < blind.orElse(Double.POSITIVE_INFINITY);
        OptionalDouble since = shiftedFirst ? shiftedT : blind;
        return since.isPresent() && open(t, t + aheadS, since.getAsDouble()) ? since : OptionalDouble.empty();
    }

    private boolean open(double t, double thenT, double sinceT) {
        OptionalDouble due = dueT.valueAt(sinceT);
        return due.isPresent() && thenT >= due.getAsDouble() && t - sinceT <= MOST_S;
    }

    private OptionalDouble blindSinceT(double t) {
        if (!board.present(AlarmName.PROBE_OUT_OF_PAN)) {
            outSinceT = Double.NaN;
        } else if (Double.isNaN(outSinceT)) {
            outSinceT = t - LEAVES_S;
        }
        if (board.present(AlarmName.PROBE_SILENT)) {
            return OptionalDouble.of(probe.heardT());
        }
        if (board.present(AlarmName.PROBE_STUCK)) {
            return OptionalDouble.of(probe.sameSinceT());
        }
        return Double.isNaN(outSinceT) ? OptionalDouble.empty() : OptionalDouble.of(outSinceT);
    }
}
