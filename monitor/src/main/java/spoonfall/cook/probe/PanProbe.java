package spoonfall.cook.probe;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.signal.Senses;
import spoonfall.cook.signal.Signals;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/**
 * The probe that the cook follows: what it reads, whether that is fresh, and whether it is the pan's. A probe that lies on the
 * table, is stuck or says what cannot be tells nothing of the pan, and after it nothing goes on from before.
 */
public final class PanProbe {
    private final Pace pace;
    private final AlarmBoard board;
    private final ProbeWatch watch;
    private final OutOfPan leaving;
    private final Senses senses;
    private Optional<Signals> signals = Optional.empty();
    private boolean misledLately;
    private boolean stuckLately;

    /** Of what the readings tell. */
    public enum Sight {
        /** The pan. */
        PAN,
        /** The pan, from this second on; what was read before does not go on. */
        BACK,
        /** The same, and what was read lately while it stood still was not the pan's. */
        BACK_FROM_STUCK,
        /** Perhaps the pan: one that is stuck may yet turn out to have told where the pan stood. */
        STUCK,
        /** Something else. */
        ELSEWHERE
    }

    /** Of a probe that has not spoken yet; its alarms are kept by {@code board}. */
    public PanProbe(CookSettings settings, Pace pace, AlarmBoard board) {
        this.pace = pace;
        this.board = board;
        senses = new Senses(pace);
        watch = new ProbeWatch(settings, pace);
        leaving = new OutOfPan(settings.waterBoil().temperatureC());
    }

    /** The watch of the thermometer itself. */
    public ProbeWatch watch() {
        return watch;
    }

    /** The lines through its readings. */
    public Senses senses() {
        return senses;
    }

    /** Takes a reading of {@code t} and says whether it tells something of the pan; a bad one does not. */
    public boolean accept(double t, Reading reading, boolean boiling) {
        if (reading.quality() != Quality.GOOD) {
            watch.acceptBad(reading.quality());
            return false;
        }
        double temperatureC = reading.temperatureC().orElseThrow();
        boolean tells = watch.accept(t, temperatureC, boiling && !outOfPan());
        if (tells) {
            take(t, temperatureC);
        }
        return tells;
    }

    private void take(double t, double temperatureC) {
        senses.accept(temperatureC);
        leaving.accept(t, temperatureC);
    }

    /** Ends a second; what the thermometer still shows of the pan, by saying nothing since, counts as read. */
    public OptionalDouble endSecond(double t) {
        OptionalDouble heldC = watch.heldC(t);
        heldC.ifPresent(temperatureC -> take(t, temperatureC));
        signals = senses.endSecond(t);
        return heldC;
    }

    /** Runs the alarms of the thermometer; what it should be showing, {@link ProbeWatch#watch} says. */
    public void runAlarms(
            double t, OptionalDouble expectedPerMinC, DoubleSupplier growsPerMin, List<CookEvent> events) {
        double stepC = signals.isPresent() ? signals.get().stepC() : Signals.NOT_SHOWN_C;
        watch.watch(t, board, expectedPerMinC, growsPerMin, stepC, events);
    }

    /** What was read last, be it long ago; empty while nothing ever was. */
    public Optional<Signals> signals() {
        return signals;
    }

    /** What is read at {@code t}; empty while nothing is. */
    public Optional<Signals> live(double t) {
        return watch.freshAt(t) ? signals : Optional.empty();
    }

    /** The same, unless it does not say where the pan is. */
    public Optional<Signals> trusted(double t) {
        return misled() ? Optional.empty() : live(t);
    }

    /** How far the latest reading can be trusted, with what the alarms know. */
    public Quality quality(double t) {
        Quality latest = watch.latest(t);
        if (latest != Quality.GOOD) {
            return latest;
        }
        if (outOfPan()) {
            return Quality.OUT_OF_PAN;
        }
        return stuck() ? Quality.STUCK : Quality.GOOD;
    }

    /** What the readings do from now on does not go on from before. */
    public void breakOff() {
        misledLately = true;
    }

    /**
     * Of what the readings tell in the second that ends; to be asked once in each in which something is read.
     *
     * @param panC how hot the pan is by what is known of its water; infinite while nothing is known
     * @param sugarMayGo whether the pan simmered without sugar until just now
     */
    public Sight judge(double t, Stage stage, Signals now, double panC, boolean sugarMayGo, List<CookEvent> events) {
        Condition out = pace.shows() ? leaving.judge(t, stage, now, panC, sugarMayGo) : Condition.ABSENT;
        board.update(t, AlarmName.PROBE_OUT_OF_PAN, out, () -> AlarmText.probeOutOfPan(leaving.fromC()), events);
        boolean elsewhere = out == Condition.PRESENT || elsewhere();
        if (elsewhere || stuck()) {
            misledLately = true;
            stuckLately |= stuck();
            return elsewhere ? Sight.ELSEWHERE : Sight.STUCK;
        }
        if (!misledLately) {
            return Sight.PAN;
        }
        // what went on from where it stood was the pan's all the time
        Sight sight = stuckLately && !watch.wentOn() ? Sight.BACK_FROM_STUCK : Sight.BACK;
        misledLately = false;
        stuckLately = false;
        senses.restart();
        return sight;
    }

    /** It has left the pan. */
    public boolean outOfPan() {
        return board.present(AlarmName.PROBE_OUT_OF_PAN);
    }

    /** What it says is not the pan's temperature. */
    public boolean misled() {
        return elsewhere() || stuck();
    }

    private boolean elsewhere() {
        return outOfPan() || board.present(AlarmName.PROBE_IMPLAUSIBLE);
    }

    private boolean stuck() {
        return board.present(AlarmName.PROBE_STUCK);
    }
}
