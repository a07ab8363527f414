package spoonfall.cook.probe;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.alarm.Condition;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.Stage;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.signal.Signals;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** The probes in the pan beside the one that the cook follows: each is compared with it, and changes nothing else. */
public final class OtherProbes {
    private final List<SecondProbe> others;

    /** Those after the first of {@code probes}, which is the one that the cook follows. */
    public OtherProbes(CookSettings settings, List<ProbeTrust> probes) {
        others = probes.stream()
                .skip(1)
                .map(other -> new SecondProbe(settings, probes.get(0), other))
                .toList();
    }

    /** Whether there is no other. */
    public boolean none() {
        return others.isEmpty();
    }

    /** Takes a reading of a probe that is not the first, while the pan boils or not. */
    public void accept(double t, Reading reading, boolean boiling) {
        called(reading.probe()).accept(t, reading, boiling);
    }

    /** What the probe of that name shows at {@code t}, in °C; empty while it says nothing that can be believed. */
    public OptionalDouble temperatureC(String name, double t) {
        return called(name).temperatureC(t);
    }

    /** What its latest reading is worth at {@code t}. */
    public Quality quality(String name, double t) {
        return called(name).quality(t);
    }

    /** Says whether one of them disagrees with the one that the cook follows, of which {@code now} and its quality are. */
    public void compare(double t, Signals now, Stage stage, Quality quality, AlarmBoard board, List<CookEvent> events) {
        Condition apart = Condition.ABSENT;
        Optional<SecondProbe> contrary = Optional.empty();
        for (SecondProbe other : others) {
            Condition condition = other.compare(t, now, stage);
            if (condition == Condition.PRESENT && contrary.isEmpty()) {
                contrary = Optional.of(other);
            }
            apart = condition.compareTo(apart) < 0 ? condition : apart;
        }
        Optional<SecondProbe> said = contrary;
        board.update(
                t, AlarmName.PROBES_DISAGREE, apart, () -> said.orElseThrow().text(stage, quality), events);
    }

    private SecondProbe called(String name) {
        return others.stream()
                .filter(probe -> probe.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no other probe is called " + name));
    }
}
