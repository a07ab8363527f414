package spoonfall.cook.probe;

import java.util.OptionalDouble;
import spoonfall.alarm.Condition;
import spoonfall.cook.CookSettings;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.Stage;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.signal.ThermometerStep;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.series.Track;

/**
 * Another probe in the same pan. It is compared with the one that the cook follows, and never mixed with it: a
 * difference is said, with the one to believe and the reason.
 */
final class SecondProbe {
    private static final double COMPARE_S = 30;
    private static final double SILENT_AFTER_S = 10;
    private static final int LEAST_VALUES = 3;

    /** Two healthy thermometers that nobody checked may well differ by so much. */
    private static final double UNCHECKED_LIMIT_C = 1.5;

    private static final double LEAST_LIMIT_C = 0.5;
    private static final double DEADBAND_SHARE = 0.3;

    /** Boiling syrup is never colder than boiling water: less than this below it and the probe is not in it, or off. */
    private static final double BELOW_WATER_C = 1;

    private final ProbeTrust first;
    private final ProbeTrust second;
    private final ProbeWatch watch;
    private final ThermometerStep step = new ThermometerStep();
    private final double waterBoilC;
    private final Track values = new Track(2 * COMPARE_S);
    private final Track firsts = new Track(2 * COMPARE_S);
    private double lastT = Double.NEGATIVE_INFINITY;
    private OptionalDouble firstC = OptionalDouble.empty();
    private OptionalDouble secondC = OptionalDouble.empty();

    SecondProbe(CookSettings settings, ProbeTrust first, ProbeTrust second) {
        this.first = first;
        this.second = second;
        watch = new ProbeWatch(settings, second.pace());
        waterBoilC = settings.waterBoil().temperatureC();
    }

    String name() {
        return second.name();
    }

    /** Takes a reading; one that is older than the last counts as of the last one's time. */
    void accept(double t, Reading reading, boolean boiling) {
        lastT = Math.max(lastT, t);
        if (reading.quality() != Quality.GOOD) {
            watch.acceptBad(reading.quality());
            return;
        }
        double temperatureC = reading.temperatureC().orElseThrow();
        if (watch.accept(lastT, temperatureC, boiling)) {
            values.add(lastT, temperatureC);
            step.accept(temperatureC);
        }
    }

    /** Its temperature, single wild values taken out; empty when nothing fresh is known. */
    OptionalDouble temperatureC(double t) {
        return watch.freshAt(t) ? values.middleSince(t - SILENT_AFTER_S, LEAST_VALUES) : OptionalDouble.empty();
    }

    /** How far its latest reading can be trusted. */
    Quality quality(double t) {
        return watch.latest(t);
    }

    /** Compares the two at a whole second: whether they are too far apart. */
    Condition compare(double t, Signals main, Stage stage) {
        watch.follow(stage, t);
        watch.steps(step.c());
        firsts.add(t, main.levelC());
        firstC = firsts.middleSince(t - COMPARE_S, LEAST_VALUES);
        secondC = watch.freshAt(t) ? values.middleSince(t - COMPARE_S, LEAST_VALUES) : OptionalDouble.empty();
        if (firstC.isEmpty() || secondC.isEmpty()) {
            return Condition.ABSENT;
        }
        double limitC = limitC();
        double apartC = Math.abs(firstC.getAsDouble() - secondC.getAsDouble());
        return Condition.above(apartC, limitC, DEADBAND_SHARE * limitC);
    }

    /** What is said when they are too far apart. */
    AlarmText text(Stage stage, Quality firstQuality) {
        double oneC = firstC.orElseThrow();
        double otherC = secondC.orElseThrow();
        return AlarmText.probesDisagree(
                first.name(), oneC, second.name(), otherC, belief(oneC, otherC, stage, firstQuality));
    }

    private double limitC() {
        if (first.checkedToC().isEmpty() || second.checkedToC().isEmpty()) {
            return UNCHECKED_LIMIT_C;
        }
        double bothC =
                Math.hypot(first.checkedToC().getAsDouble(), second.checkedToC().getAsDouble());
        return Math.max(LEAST_LIMIT_C, bothC);
    }

    /** Which one to believe, and why, in one sentence. */
    private String belief(double oneC, double otherC, Stage stage, Quality firstQuality) {
        if (firstQuality != Quality.GOOD) {
            return "Believe " + second.name() + ": what " + first.name() + " says cannot be the pan's.";
        }
        if (watch.suspectStuck()) {
            return "Believe " + first.name() + ": " + second.name() + " does not move.";
        }
        if (stage.boiling() && otherC < oneC && otherC < waterBoilC - BELOW_WATER_C) {
            return "Believe " + first.name() + ": " + second.name() + " shows less than boiling water.";
        }
        boolean firstChecked = first.checkedToC().isPresent();
        if (firstChecked != second.checkedToC().isPresent()) {
            ProbeTrust checked = firstChecked ? first : second;
            ProbeTrust other = firstChecked ? second : first;
            return "Believe " + checked.name() + ": it was checked in boiling water, " + other.name() + " was not.";
        }
        return firstChecked
                ? "Both were checked, so one has moved or drifted: check both again in boiling water."
                : "Neither was checked: check both in boiling water. " + first.name() + " is followed until then.";
    }
}
