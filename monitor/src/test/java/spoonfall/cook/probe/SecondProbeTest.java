package spoonfall.cook.probe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.alarm.Condition;
import spoonfall.cook.CookEvent;
import spoonfall.cook.MadePan;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.Stage;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.signal.Signals;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** Another probe in the same pan: when the two are too far apart, and which is to be believed. */
final class SecondProbeTest {
    private static final double FIRST_C = 102;

    private double t;

    private static SecondProbe probe(OptionalDouble firstToC, OptionalDouble secondToC) {
        return new SecondProbe(MadePan.SETTINGS, new ProbeTrust("pan", firstToC), new ProbeTrust("clip", secondToC));
    }

    private static SecondProbe unchecked() {
        return probe(OptionalDouble.empty(), OptionalDouble.empty());
    }

    private Condition watch(SecondProbe probe, int seconds, double firstC, DoubleUnaryOperator secondC, Stage stage) {
        Condition last = Condition.ABSENT;
        for (int i = 0; i < seconds; i++) {
            probe.accept(t, Reading.good("clip", nanos(t), secondC.applyAsDouble(t), ""), stage.boiling());
            t++;
            last = probe.compare(t, MadeSignals.at(t, firstC), stage);
        }
        return last;
    }

    /** A second probe so much above the first, flickering a little. */
    private Condition apart(SecondProbe probe, double byC) {
        return watch(probe, 60, FIRST_C, at -> FIRST_C + byC, Stage.ROLLING_BOIL);
    }

    private static long nanos(double t) {
        return Math.round(t * 1e9);
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({
        "1.5, PRESENT",
        "-1.5, PRESENT",
        "1.49, UNDECIDED",
        "-1.49, UNDECIDED",
        "1.06, UNDECIDED",
        "1.04, ABSENT",
        "0, ABSENT"
    })
    void twoThatNobodyChecked_mayDifferByADegreeAndAHalf(double byC, Condition expected) {
        assertThat(apart(unchecked(), byC)).isEqualTo(expected);
        assertThat(apart(probe(OptionalDouble.of(0.1), OptionalDouble.empty()), byC))
                .isEqualTo(expected);
        assertThat(apart(probe(OptionalDouble.empty(), OptionalDouble.of(0.1)), byC))
                .isEqualTo(expected);
    }

    @ParameterizedTest(name = "checked to {0} and {1} °C, {2} °C apart: {3}")
    @CsvSource({
        "0.1, 0.1, 0.5, PRESENT",
        "0.1, 0.1, 0.49, UNDECIDED",
        "0.6, 0.8, 1.01, PRESENT",
        "0.6, 0.8, 0.99, UNDECIDED"
    })
    void twoThatWereChecked_areHeldToIt(double firstToC, double secondToC, double byC, Condition expected) {
        assertThat(apart(probe(OptionalDouble.of(firstToC), OptionalDouble.of(secondToC)), byC))
                .isEqualTo(expected);
    }

    @Test
    void oneThatWasNeverHeard_disagreesWithNobody() {
        SecondProbe probe = unchecked();
        assertThat(probe.compare(1, MadeSignals.at(1, FIRST_C), Stage.ROLLING_BOIL))
                .isEqualTo(Condition.ABSENT);
        assertThat(probe.temperatureC(1)).isEmpty();
        assertThat(probe.quality(1)).isEqualTo(Quality.SILENT);
    }

    @Test
    void oneThatFallsSilent_disagreesNoMore_andHasNoTemperature() {
        SecondProbe probe = unchecked();
        assertThat(apart(probe, 3)).isEqualTo(Condition.PRESENT);
        double heardT = t - 1;
        Signals first = MadeSignals.at(t, FIRST_C);
        assertThat(probe.temperatureC(heardT + 8)).hasValue(FIRST_C + 3);
        assertThat(probe.compare(heardT + 8, first, Stage.ROLLING_BOIL)).isEqualTo(Condition.PRESENT);
        assertThat(probe.temperatureC(heardT + 9)).isEmpty();
        assertThat(probe.quality(heardT + 9)).isEqualTo(Quality.SILENT);
        assertThat(probe.compare(heardT + 9, first, Stage.ROLLING_BOIL)).isEqualTo(Condition.ABSENT);
    }

    @Test
    void itsTemperature_isOfItsLastTenSeconds_andTheComparisonOfHalfAMinute() {
        SecondProbe probe = unchecked();
        watch(probe, 60, FIRST_C, at -> FIRST_C, Stage.ROLLING_BOIL);
        watch(probe, 4, FIRST_C, at -> FIRST_C + 3, Stage.ROLLING_BOIL);
        assertThat(probe.temperatureC(t).orElseThrow()).isBetween(FIRST_C + 1, FIRST_C + 2);
        Condition after = watch(probe, 6, FIRST_C, at -> FIRST_C + 3, Stage.ROLLING_BOIL);
        assertThat(probe.temperatureC(t)).hasValue(FIRST_C + 3);
        assertThat(after).isEqualTo(Condition.ABSENT);
        assertThat(watch(probe, 20, FIRST_C, at -> FIRST_C + 3, Stage.ROLLING_BOIL))
                .isEqualTo(Condition.PRESENT);
    }

    @Test
    void theFirstIsComparedOverHalfAMinuteToo() {
        SecondProbe probe = unchecked();
        watch(probe, 60, FIRST_C, at -> FIRST_C, Stage.ROLLING_BOIL);
        assertThat(watch(probe, 10, FIRST_C + 3, at -> FIRST_C, Stage.ROLLING_BOIL))
                .isEqualTo(Condition.ABSENT);
        assertThat(watch(probe, 20, FIRST_C + 3, at -> FIRST_C, Stage.ROLLING_BOIL))
                .isEqualTo(Condition.PRESENT);
    }

    @Test
    void aBadReading_isNoTemperature_andAnOlderOneCountsAsOfTheLast() {
        SecondProbe probe = unchecked();
        apart(probe, 0);
        probe.accept(t, Reading.bad("clip", nanos(t), "NaN", Quality.NOT_FINITE), true);
        assertThat(probe.quality(t)).isEqualTo(Quality.NOT_FINITE);
        assertThat(probe.temperatureC(t)).hasValue(FIRST_C);
        probe.accept(10, Reading.good("clip", nanos(10), FIRST_C, ""), true);
        assertThat(probe.quality(t + 5)).isEqualTo(Quality.GOOD);
        assertThat(probe.temperatureC(t + 5)).hasValue(FIRST_C);
    }

    @Test
    void aSpike_isNoTemperature() {
        SecondProbe probe = unchecked();
        for (double c : new double[] {FIRST_C, 180, FIRST_C}) {
            probe.accept(t, Reading.good("clip", nanos(t), c, ""), true);
            t++;
        }
        assertThat(probe.temperatureC(t)).hasValue(FIRST_C);
    }

    private static String act(SecondProbe probe, Stage stage, Quality first) {
        return probe.text(stage, first).act();
    }

    @Test
    void whatIsSaid_namesBothAndTheirReadings() {
        SecondProbe probe = unchecked();
        apart(probe, 3);
        assertThat(probe.name()).isEqualTo("clip");
        assertThat(probe.text(Stage.ROLLING_BOIL, Quality.GOOD).title())
                .isEqualTo("Two thermometers in one pan differ by {diff:3.0}: "
                        + "pan shows {temp:102.0}, clip shows {temp:105.0}.");
    }

    @Test
    void whoWasChecked_isBelieved() {
        SecondProbe first = probe(OptionalDouble.of(0.1), OptionalDouble.empty());
        apart(first, 3);
        assertThat(act(first, Stage.ROLLING_BOIL, Quality.GOOD))
                .isEqualTo("Believe pan: it was checked in boiling water, clip was not.");
        SecondProbe second = probe(OptionalDouble.empty(), OptionalDouble.of(0.1));
        apart(second, 3);
        assertThat(act(second, Stage.ROLLING_BOIL, Quality.GOOD))
                .isEqualTo("Believe clip: it was checked in boiling water, pan was not.");
        SecondProbe both = probe(OptionalDouble.of(0.1), OptionalDouble.of(0.1));
        apart(both, 3);
        assertThat(act(both, Stage.ROLLING_BOIL, Quality.GOOD)).startsWith("Both were checked");
        SecondProbe neither = unchecked();
        apart(neither, 3);
        assertThat(act(neither, Stage.ROLLING_BOIL, Quality.GOOD))
                .isEqualTo("Neither was checked: check both in boiling water. pan is followed until then.");
    }

    @Test
    void whatCannotBe_isNotBelievedWhoeverWasChecked() {
        SecondProbe probe = probe(OptionalDouble.of(0.1), OptionalDouble.empty());
        apart(probe, 3);
        assertThat(act(probe, Stage.ROLLING_BOIL, Quality.OUT_OF_PAN))
                .isEqualTo("Believe clip: what pan says cannot be the pan's.");
    }

    @ParameterizedTest(name = "{0} °C, {1}: {2}")
    @CsvSource({"98.9, ROLLING_BOIL, true", "99, ROLLING_BOIL, false", "98.9, WARMING, false"})
    void whatShowsLessThanBoilingWaterInABoilingPan_isNotBelieved(double secondC, Stage stage, boolean below) {
        SecondProbe probe = probe(OptionalDouble.empty(), OptionalDouble.of(0.1));
        watch(probe, 60, FIRST_C, at -> secondC, stage);
        assertThat(act(probe, stage, Quality.GOOD))
                .isEqualTo(
                        below
                                ? "Believe pan: clip shows less than boiling water."
                                : "Believe clip: it was checked in boiling water, pan was not.");
    }

    @Test
    void whoShowsMoreThanTheOther_isNotToldToShowTooLittle() {
        SecondProbe probe = probe(OptionalDouble.empty(), OptionalDouble.of(0.1));
        watch(probe, 60, 95, at -> 98, Stage.ROLLING_BOIL);
        assertThat(act(probe, Stage.ROLLING_BOIL, Quality.GOOD)).startsWith("Believe clip");
    }

    @Test
    void oneThatDoesNotMoveInABoilingPan_isNotBelieved() {
        SecondProbe probe = probe(OptionalDouble.empty(), OptionalDouble.of(0.1));
        // it flickers by several steps for two minutes, and is then the same for one
        watch(probe, 120, FIRST_C, at -> 105 + 0.05 * (at % 5), Stage.ROLLING_BOIL);
        assertThat(act(probe, Stage.ROLLING_BOIL, Quality.GOOD)).startsWith("Believe clip");
        watch(probe, 90, FIRST_C, at -> 105, Stage.ROLLING_BOIL);
        assertThat(act(probe, Stage.ROLLING_BOIL, Quality.GOOD)).isEqualTo("Believe pan: clip does not move.");
    }

    @Test
    void ofSeveralOthers_theFirstThatIsTooFarOffIsNamed() {
        List<ProbeTrust> trusts = List.of(
                new ProbeTrust("pan", OptionalDouble.empty()),
                new ProbeTrust("clip", OptionalDouble.empty()),
                new ProbeTrust("stick", OptionalDouble.empty()),
                new ProbeTrust("spare", OptionalDouble.empty()));
        OtherProbes others = new OtherProbes(MadePan.SETTINGS, trusts);
        AlarmBoard board = new AlarmBoard();
        List<CookEvent> events = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            others.accept(i, Reading.good("clip", nanos(i), FIRST_C + 1.2, ""), true);
            others.accept(i, Reading.good("stick", nanos(i), FIRST_C - 2, ""), true);
            others.accept(i, Reading.good("spare", nanos(i), FIRST_C + 5, ""), true);
            others.compare(i + 1, MadeSignals.at(i + 1, FIRST_C), Stage.ROLLING_BOIL, Quality.GOOD, board, events);
        }
        assertThat(board.standing())
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.title()).contains("stick shows {temp:100.0}"));
        assertThat(others.temperatureC("clip", 60)).hasValue(FIRST_C + 1.2);
        assertThat(others.quality("spare", 60)).isEqualTo(Quality.GOOD);
        assertThat(others.quality("spare", 90)).isEqualTo(Quality.SILENT);
    }
}
