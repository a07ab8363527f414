package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.AlarmState;
import spoonfall.lab.varied.CookKind;
import spoonfall.lab.varied.VariedCook;
import spoonfall.probe.trace.Trace;

/**
 * The gel point is never called long before it is reached: in slow pans under noisy thermometers, in pans that stop unseen, while a
 * base catches, after the reading has jumped. The seeds are tuning ones on which it once was; the same pans without a fault are called in time.
 */
class GelCallTest {
    /** No more than four minutes early (docs/evaluation.md). */
    private static final double TOO_EARLY_S = 240;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {802, 1055, 1137})
    void gelPoint_isNotCalledEarly_inASlowPanUnderANoisyThermometer(long seed) {
        assertThat(calledAfterS(VariedCook.cook(seed)).orElse(0)).isGreaterThan(-TOO_EARLY_S);
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({"SCORCH,394", "SCORCH,507", "SCORCH,1029", "SCORCH,4985", "SCORCH,6465", "JUMP,260"})
    void gelPoint_isNotCalledEarly_whenTheReadingIsHotterThanThePan(CookKind kind, long seed) {
        assertThat(calledAfterS(VariedCook.cook(kind, seed)).orElse(0)).isGreaterThan(-TOO_EARLY_S);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {798, 1201, 2178, 2649, 2883, 3950, 4814})
    void gelPoint_isNotCalledEarly_inAPanThatHasStopped_beforeThatIsSeen(long seed) {
        assertThat(calledAfterS(VariedCook.cook(CookKind.STALL, seed)).orElse(0))
                .isGreaterThan(-TOO_EARLY_S);
    }

    @Test
    void gelPoint_isNotCalledEarly_overABurnerSoSlowThatThePanWasBegunInItsPause() {
        OptionalDouble calledAfterS = calledAfterS(VariedCook.cook(CookKind.HEAT, 6892));

        assertThat(calledAfterS.orElseThrow()).isBetween(-90.0, 90.0);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {802, 1055, 1137, 394, 507, 1029, 4985, 6465, 260, 798, 1201, 2178, 2649, 2883, 3950, 4814})
    void gelPoint_isCalledInTime_inTheSamePanWhenNothingGoesWrong(long seed) {
        assertThat(calledAfterS(VariedCook.cook(CookKind.CLEAN, seed)).orElseThrow())
                .isBetween(-90.0, 90.0);
    }

    /** Before, what stayed up was another pan, into which something had gone, and of which nothing else was known. */
    @ParameterizedTest(name = "{0} °C")
    @ValueSource(doubles = {1.3, 1.7, 2.5})
    void aReadingThatJumpsSoonAfterATest_isNotCalled(double byC) {
        MadeCook cook = MadeCook.boiling(900)
                .watch(70, t -> 99 - (t - 900) * 0.02)
                .watch(40, t -> Math.min(MadeCook.boilsC(t), 98 + (t - 970) * 0.15))
                .watch(150, t -> MadeCook.boilsC(t) + byC);

        assertThat(cook.raised()).containsExactly(AlarmName.START_SET_TESTS);
    }

    /** By itself the pan is there at 1,500 s, and at 1,250 s at the soonest. Before, it was called at 1,087 s, as soon as it was read. */
    @Test
    void aReadingThatClimbsThereMinutesBeforeItWasForeseen_isCalledLater() {
        MadeCook cook = MadeCook.boiling(1000).watch(300, t -> MadeCook.boilsC(t) + (t - 1000) * 0.008);

        assertThat(Cooks.raisedT(cook.events(), AlarmName.GEL_POINT).orElseThrow())
                .isBetween(1120.0, 1180.0);
    }

    /** At 2.4 °C above water cold sugar goes in, and from 1,000 s on it climbs by 0.1 °C a minute from 3.5 °C; it sets at 1,300 s. */
    @Test
    void moreSugarInAPanThatIsHalfDone_isAnotherPan_andCalledInTime() {
        MadeCook cook = MadeCook.begun().watch(1600, t -> {
            double risesC = t < 900
                    ? 0.9 + t / 600
                    : t < 910 ? 2.4 - (t - 900) * 0.34 : t < 1000 ? -1 + (t - 910) * 0.05 : 3.5 + (t - 1000) / 600;
            return 100 + risesC + 0.03 * Math.sin(1.7 * t);
        });

        assertThat(Cooks.raisedT(cook.events(), AlarmName.GEL_POINT).orElseThrow())
                .isBetween(1230.0, 1390.0);
    }

    /** Nothing is known of it but that it climbs as no boiling pan does, straight up from the warming to where it boils. */
    @ParameterizedTest(name = "{0} °C a minute: {2}")
    @CsvSource({"3, 900, 1070", "6, 450, 625", "10, 270, 330"})
    void jamThatIsHeatedAgain_isCalledPastWithinThreeMinutes(double perMinC, double thereT, double latestT) {
        MadeCook cook = MadeCook.begun()
                .watch(
                        (int) thereT + 600,
                        t -> t < thereT
                                ? 60 + perMinC * t / 60
                                : 105 + 0.1 * (t - thereT) / 60 + 0.03 * Math.sin(1.7 * t));

        assertThat(Cooks.raisedT(cook.events(), AlarmName.PAST_GEL_POINT).orElseThrow())
                .isBetween(thereT, latestT);
    }

    /**
     * Its heat was turned down to two fifths, for ten minutes or for good, and meanwhile the reading rises by 0.8 °C within twenty seconds and stays there. What
     * the filters know is taken from the pan before, and no climb makes up for that much.
     */
    @ParameterizedTest(name = "for {0} s, seed {2}")
    @CsvSource({"600, 780, 0", "600, 780, 1", "3000, 900, 1"})
    void aPanThatLostSomeOfItsHeat_isNotTakenToWhereAReadingShifted(int lowForS, int shiftsT, long seed) {
        double gelT = 0;
        while (turnedDownC(gelT, lowForS) < 104) {
            gelT++;
        }
        Random noise = new Random(seed);
        MadeCook cook = MadeCook.begun().watch((int) (gelT - TOO_EARLY_S), t -> {
            double shiftC = Math.max(0, Math.min(0.8, 0.8 * (t - shiftsT) / 20));
            return Math.rint(10 * (turnedDownC(t, lowForS) + shiftC + 0.05 * noise.nextGaussian())) / 10;
        });

        assertThat(cook.raised()).doesNotContain(AlarmName.GEL_POINT, AlarmName.PAST_GEL_POINT);
    }

    private static double turnedDownC(double t, double lowForS) {
        double downS = Math.max(0, Math.min(lowForS, t - 480));
        return 101.5 + 0.12 * (t - 0.6 * downS) / 60;
    }

    /** In a boil past its set the probe slips into the steam or onto the table, or falls silent, and nothing is seen of the pan. */
    @ParameterizedTest(name = "{0} °C with a time constant of {1} s")
    @CsvSource({"22, 15", "22, 30", "80, 20", "60, 60", "NaN, 1"})
    void pastItsSet_aPanThatIsSeenNoMore_isToComeOffTheHeatAllTheSame(double aroundC, double lagS) {
        int slipsT = 780;
        MadeCook cook = MadeCook.begun().watch(slipsT, GelCallTest::boilsOnC);
        assertThat(cook.raised()).contains(AlarmName.PAST_GEL_POINT);

        double fromC = boilsOnC(slipsT);
        if (Double.isNaN(aroundC)) {
            cook.silent(600);
        } else {
            cook.watch(600, t -> aroundC + (fromC - aroundC) * Math.exp(-(t - slipsT) / lagS));
        }

        assertThat(cook.alarm(AlarmName.PAST_GEL_POINT).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(cook.status().stage()).isNotEqualTo(Stage.OFF_THE_HEAT);
        assertThat(cook.raisedSince(slipsT))
                .containsExactly(Double.isNaN(aroundC) ? AlarmName.PROBE_SILENT : AlarmName.PROBE_OUT_OF_PAN);
    }

    /** The same pan, taken off the heat. */
    @Test
    void pastItsSet_aPanThatComesOffTheHeat_isCalledNoMore() {
        int offT = 780;
        MadeCook cook = MadeCook.begun().watch(offT, GelCallTest::boilsOnC);
        double fromC = boilsOnC(offT);
        cook.watch(120, t -> 20 + (fromC - 20) * Math.exp(-(t - offT) / 600));

        assertThat(cook.alarm(AlarmName.PAST_GEL_POINT).state()).isEqualTo(AlarmState.RETURNED);
        assertThat(cook.status().stage()).isEqualTo(Stage.OFF_THE_HEAT);
        assertThat(cook.raisedSince(offT)).isEmpty();
    }

    private static double boilsOnC(double t) {
        return 101.5 + 0.3 * t / 60 + 0.02 * Math.sin(1.7 * t);
    }

    @Test
    void afterTheCall_aPanOffTheHeat_isForeseenNoMore() {
        List<CookEvent> events = Replayed.events(VariedCook.cook(CookKind.CLEAN, 802));
        double calledT = Cooks.raisedT(events, AlarmName.GEL_POINT).orElseThrow();

        List<CookStatus> off = events.stream()
                .filter(CookEvent.StatusTaken.class::isInstance)
                .map(event -> ((CookEvent.StatusTaken) event).status())
                .filter(status -> status.t() > calledT && status.stage() == Stage.OFF_THE_HEAT)
                .toList();

        assertThat(off).isNotEmpty().allMatch(status -> status.forecast().isEmpty());
    }

    /** How many seconds after the true moment either call to it was first raised. */
    private static OptionalDouble calledAfterS(Trace trace) {
        List<CookEvent> events = Replayed.events(trace);
        double trueT = trace.info().firstT("gel").orElseThrow();
        OptionalDouble first = Cooks.raisedT(events, AlarmName.GEL_POINT);
        OptionalDouble past = Cooks.raisedT(events, AlarmName.PAST_GEL_POINT);
        double calledT = Math.min(first.orElse(Double.MAX_VALUE), past.orElse(Double.MAX_VALUE));
        return calledT == Double.MAX_VALUE ? OptionalDouble.empty() : OptionalDouble.of(calledT - trueT);
    }
}
