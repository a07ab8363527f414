package spoonfall.cook.probe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A reading that stays the same. The limits are those of {@link Stillness}, judgements without a source. */
final class StillnessTest {
    private static final double LOW_C = 101;

    private final Stillness stillness = new Stillness();
    private double everyS = 1;
    private double stepC = 0.125;
    private double highC = LOW_C + 0.3125;
    private OptionalDouble perMinC = OptionalDouble.empty();
    private double growsPerMin;
    private boolean high;
    private double t;

    private void read(double c) {
        stillness.accept(t, c);
        stillness.expect(perMinC, () -> growsPerMin, stepC);
        t += everyS;
    }

    /** So many runs of the same value, each so long, to and fro between two heights. */
    private void flicker(int runs, double lengthS) {
        for (int i = 0; i < runs; i++) {
            for (double s = 0; s < lengthS; s += everyS) {
                read(high ? highC : LOW_C);
            }
            high = !high;
        }
    }

    /** Boils, and has gone through so many steps by the water that left. */
    private void boils(double steps) {
        stillness.newRegime(true);
        OptionalDouble before = perMinC;
        read(LOW_C);
        t += 20; // nothing is heard, so that it stands anew, and fifteen seconds of it count
        perMinC = OptionalDouble.of(4 * steps * stepC);
        read(LOW_C);
        perMinC = before;
        t -= everyS;
    }

    /** Boils, flickers, and then stays at another value; after how many seconds of that it is stuck, or -1. */
    private double stuckAfterS(int runs, double lengthS) {
        boils(2);
        flicker(runs, lengthS);
        return stuckAfterS();
    }

    private double stuckAfterS() {
        double sinceT = t;
        while (t < sinceT + 1000) {
            read(LOW_C + 0.2);
            if (stillness.stuck()) {
                assertThat(stillness.runS()).isEqualTo(t - everyS - sinceT);
                return stillness.runS();
            }
        }
        return -1;
    }

    @Test
    void aReadingThatWasNeverHeard_doesNotStand() {
        assertThat(stillness.runS()).isZero();
        assertThat(stillness.stuck()).isFalse();
        read(LOW_C);
        assertThat(stillness.runS()).isZero();
        read(LOW_C);
        read(LOW_C + 1e-7);
        assertThat(stillness.runS()).isEqualTo(2);
        read(LOW_C + 1e-5);
        assertThat(stillness.runS()).isZero();
    }

    @ParameterizedTest(name = "{0} runs of {1} s: {2} s")
    @CsvSource({"40, 1, 60", "12, 1, 60", "11, 1, 188", "12, 20, 100", "30, 20, 83", "14, 15, 75", "100, 5, 60"})
    void aReadingThatFlickered_isStuckWhenItStaysFarLongerThanItDid(int runs, double lengthS, double expectedS) {
        assertThat(stuckAfterS(runs, lengthS)).isEqualTo(expectedS);
    }

    @Test
    void afterManyRuns_itIsStuckAfterALittleMoreThanTwiceTheLongest() {
        boils(2);
        flicker(1000, 1);
        flicker(2, 40);
        assertThat(stuckAfterS()).isEqualTo(88);
    }

    @Test
    void inAPanThatIsKnownNotToClimb_aReadingThatNeverFlickered_isNotStuck() {
        boils(2);
        assertThat(stuckAfterS()).as("nothing is known of the pan").isEqualTo(300);
        StillnessTest standing = new StillnessTest();
        standing.perMinC = OptionalDouble.of(0);
        standing.boils(2);
        assertThat(standing.stuckAfterS()).isEqualTo(-1);
    }

    @Test
    void theLongestRun_isThatOfTheLastTenMinutes() {
        boils(2);
        flicker(2, 60);
        flicker(595, 1);
        flicker(2, 1);
        assertThat(stuckAfterS()).isEqualTo(132);
        StillnessTest later = new StillnessTest();
        later.boils(2);
        later.flicker(2, 60);
        later.flicker(602, 1);
        assertThat(later.stuckAfterS()).isEqualTo(60);
    }

    @Test
    void theLongestOfSeveralRuns_counts_whicheverCameFirst() {
        boils(2);
        flicker(20, 1);
        flicker(1, 20);
        flicker(9, 10);
        // of 30 runs the longest lasts 20 s
        assertThat(stuckAfterS()).isEqualTo(83);
        StillnessTest other = new StillnessTest();
        other.boils(2);
        other.flicker(20, 1);
        other.flicker(9, 10);
        other.flicker(1, 20);
        assertThat(other.stuckAfterS()).isEqualTo(83);
    }

    @Test
    void aPanThatDoesNotBoil_doesNotFlicker() {
        flicker(40, 1);
        assertThat(stuckAfterS()).isEqualTo(-1);
    }

    @ParameterizedTest(name = "{0} °C in steps of 0.125 °C: {1}")
    @CsvSource({"0.3125, 60", "0.3, -1"})
    void itsFlicker_isSeenOverTwoAndAHalfSteps(double overC, double expectedS) {
        highC = LOW_C + overC;
        assertThat(stuckAfterS(40, 1)).isEqualTo(expectedS);
    }

    @Test
    void sevenReadings_mustBeTheSame() {
        everyS = 12;
        // five times twelve seconds are six readings
        assertThat(stuckAfterS(40, 12)).isEqualTo(72);
    }

    @Test
    void aCoarseReading_mustAlmostHaveHadAStepToTake() {
        stepC = 0.25;
        highC = LOW_C + 1;
        assertThat(stuckAfterS(40, 1)).isEqualTo(-1);
        StillnessTest climbing = new StillnessTest();
        climbing.stepC = 0.25;
        climbing.highC = LOW_C + 1;
        climbing.perMinC = OptionalDouble.of(0.15);
        // nine tenths of a step
        assertThat(climbing.stuckAfterS(40, 1)).isEqualTo(90);
    }

    @ParameterizedTest(name = "{0} °C a minute, growing by {1} a minute: {2} s")
    @CsvSource({"0.15, 0, 90", "0.12, 0.1, 93", "0.06, 0, 200", "3, 0, 60", "0.24, 0, 63", "-0.15, 0, -1"})
    void aReadingThatShouldHaveTakenTwoSteps_isStuckThoughItNeverFlickered(
            double perMin, double grows, double expectedS) {
        perMinC = OptionalDouble.of(perMin);
        growsPerMin = grows;
        assertThat(stuckAfterS(1, 1)).isEqualTo(expectedS);
    }

    /** It takes its steps one by one, so many seconds each, as a thermometer without noise does. */
    private void stepsUp(int steps, double lengthS) {
        for (int i = 0; i < steps; i++) {
            for (double s = 0; s < lengthS; s += everyS) {
                read(LOW_C - i * stepC);
            }
        }
    }

    @ParameterizedTest(name = "steps of {0} °C, each for {1} s, read every {2} s: {3} s")
    @CsvSource({
        "0.125, 31, 1, -1",
        "0.125, 29, 1, 90",
        "0.19, 40, 1, -1",
        "0.21, 40, 1, 168",
        "0.125, 50, 5, -1",
        "0.125, 45, 5, 115"
    })
    void aFineReadingThatGoesFromStepToStepWithoutFlicker_mayStandWithThePan(
            double step, double lengthS, double everyS, double expectedS) {
        this.everyS = everyS;
        stepC = step;
        perMinC = OptionalDouble.of(0.15);
        boils(2);
        stepsUp(2, lengthS);
        assertThat(stuckAfterS()).isEqualTo(expectedS);
    }

    @ParameterizedTest(name = "{0} moves, {1} s each: {2} s")
    @CsvSource({"4, 20, 100", "3, 20, -1", "4, 21, -1"})
    void whatWasSeenToFlicker_isStuckAllTheSame(int moves, double lengthS, double expectedS) {
        perMinC = OptionalDouble.of(0.15);
        boils(2);
        flicker(moves, lengthS);
        stepsUp(2, 40);
        assertThat(stuckAfterS()).isEqualTo(expectedS);
    }

    @ParameterizedTest(name = "{0} runs of {1} s: {2} s")
    @CsvSource({"4, 1, 70", "3, 1, 90", "4, 27, 70", "4, 35, 88", "4, 60, 150", "4, 110, 275"})
    void oneThatStaysTwiceAsLongAsEver_isStuckAlmostAStepSooner_andNoneBeforeFarMoreWasDueThanEver(
            int runs, double lengthS, double expectedS) {
        perMinC = OptionalDouble.of(0.15);
        assertThat(stuckAfterS(runs, lengthS)).isEqualTo(expectedS);
    }

    /** Steps of 0.25 °C at 0.15 °C a minute: one and a half of them take 140 s, two 200. */
    @ParameterizedTest(name = "over {0} °C: {1} s")
    @CsvSource({"0.625, 140", "0.6, 200"})
    void howLongItStayedAtOneEdge_saysNothingOfHowItLiesBetweenTwo(double overC, double expectedS) {
        stepC = 0.25;
        highC = LOW_C + overC;
        perMinC = OptionalDouble.of(0.15);
        assertThat(stuckAfterS(4, 1)).isEqualTo(expectedS);
    }

    /** A step of 0.125 °C at 0.02 °C a minute takes 375 s, at the pace of a pan of which nothing is known 188. */
    @Test
    void aPanKnownToBeSlow_hasItsTimeForAStep() {
        perMinC = OptionalDouble.of(0.02);
        assertThat(stuckAfterS(11, 1)).isEqualTo(375);
    }

    @ParameterizedTest(name = "{0} steps: {1} s")
    @CsvSource({"1.5, 90", "0.4, 140"})
    void aCoarseReadingToo_mustHaveClimbedBefore_forItsFlickerToTell(double steps, double expectedS) {
        stepC = 0.25;
        highC = LOW_C + 1;
        boils(steps);
        perMinC = OptionalDouble.of(0.15);
        t += 20; // so that what is due of the flicker itself is not counted
        flicker(1, 1);
        perMinC = OptionalDouble.of(0);
        flicker(40, 1);
        perMinC = OptionalDouble.of(0.15);
        assertThat(stuckAfterS()).isEqualTo(expectedS);
    }

    /** Steps of 0.25 °C at 0.05 °C a minute: two of them take 600 s, and 45 s are 0.15 of one. */
    @ParameterizedTest(name = "{0} steps, then 12 runs of {1} s: {2} s")
    @CsvSource({"0.5, 10, 120", "0.5, 44, 220", "0.5, 46, 600", "0.25, 10, 600"})
    void oneThatFlickeredAtEveryHeight_wouldAlsoInAPanThatStands(double steps, double lengthS, double expectedS) {
        stepC = 0.25;
        highC = LOW_C + 0.25;
        boils(steps);
        perMinC = OptionalDouble.of(0.05);
        flicker(12, lengthS);
        assertThat(stuckAfterS()).isEqualTo(expectedS);
    }

    /** Nobody knows then at how many heights it was seen. */
    @Test
    void whatFlickeredWhileThePaceWasNotKnown_mayLieQuietlySomewhere() {
        stepC = 0.25;
        highC = LOW_C + 0.25;
        stillness.newRegime(true);
        perMinC = OptionalDouble.empty();
        flicker(60, 5);
        perMinC = OptionalDouble.of(0.05);
        assertThat(stuckAfterS()).isEqualTo(600);
    }

    @Test
    void thePaceWhenItBeganToStand_counts() {
        read(LOW_C);
        perMinC = OptionalDouble.of(60);
        for (int i = 1; i < 5; i++) {
            read(LOW_C);
        }
        perMinC = OptionalDouble.of(0.15);
        read(LOW_C);
        perMinC = OptionalDouble.of(60);
        for (int i = 6; i < 100; i++) {
            read(LOW_C);
            assertThat(stillness.stuck()).isFalse();
        }
        read(LOW_C);
        assertThat(stillness.stuck()).isTrue();
        read(LOW_C + 0.125);
        assertThat(stillness.stuck()).isFalse();
    }

    @ParameterizedTest(name = "runs of {0} s, {1} s of silence: {2}")
    @CsvSource({"1, 15, false", "1, 16, true", "10, 20, false", "10, 21, true"})
    void afterASilence_itStandsAnew(double lengthS, double silentS, boolean anew) {
        boils(2);
        flicker(4, lengthS);
        read(LOW_C + 0.2);
        double heardT = t - 1;
        t = heardT + silentS;
        read(LOW_C + 0.2);
        assertThat(stillness.runS()).isEqualTo(anew ? 0 : silentS);
        read(LOW_C + 0.2);
        assertThat(stillness.runS()).isEqualTo(anew ? 1 : silentS + 1);
    }

    @Test
    void itIsSuspect_afterFourTenthsOfTheTime() {
        boils(2);
        flicker(40, 1);
        for (int i = 0; i < 24; i++) {
            read(LOW_C + 0.2);
            assertThat(stillness.suspect()).isFalse();
        }
        read(LOW_C + 0.2);
        assertThat(stillness.suspect()).isTrue();
        assertThat(stillness.stuck()).isFalse();
    }

    @Test
    void whatWasLearntOfOneRegime_saysNothingOfTheNext() {
        boils(2);
        flicker(40, 1);
        flicker(2, 200);
        flicker(1, 1);
        boils(2);
        flicker(40, 1);
        assertThat(stuckAfterS()).isEqualTo(60);
        StillnessTest other = new StillnessTest();
        other.boils(2);
        other.flicker(40, 1);
        other.boils(2);
        assertThat(other.stuckAfterS()).isEqualTo(188);
    }

    /** It stayed the same for half a minute of a climb by 0.1 °C a minute: 2.5 times that the slowest pan makes in 187.5 s. */
    @Test
    void whereNothingIsKnownOfThePan_theSlowestTellsWhetherItStandsForLongerThanEver() {
        perMinC = OptionalDouble.of(0.1);
        boils(2);
        flicker(40, 30);
        perMinC = OptionalDouble.empty();
        assertThat(stuckAfterS()).isEqualTo(188);
        StillnessTest stands = new StillnessTest();
        stands.perMinC = OptionalDouble.of(0.1);
        stands.boils(2);
        stands.flicker(40, 30);
        stands.perMinC = OptionalDouble.of(0);
        assertThat(stands.stuckAfterS()).as("a pan that is known to stand").isEqualTo(-1);
    }

    @ParameterizedTest(name = "{0} steps: {1} s")
    @CsvSource({"1.5, 60", "1.2, -1"})
    void whatFlickeredOnItsWayUpToTheBoil_mayLieQuietlyBetweenTwoSteps(double steps, double expectedS) {
        boils(steps);
        flicker(40, 1);
        assertThat(stuckAfterS()).isEqualTo(expectedS);
    }

    @Test
    void aPanThatWasAway_boilsAsItDid() {
        boils(2);
        flicker(40, 1);
        stillness.away();
        flicker(3, 200);
        stillness.boils();
        stillness.boils();
        assertThat(stuckAfterS()).isEqualTo(60);
        StillnessTest warmed = new StillnessTest();
        warmed.boils(2);
        warmed.flicker(40, 1);
        warmed.stillness.away();
        warmed.stillness.newRegime(false);
        warmed.stillness.boils();
        assertThat(warmed.stuckAfterS()).isEqualTo(188);
    }

    @ParameterizedTest(name = "by {0} °C: {1}")
    @CsvSource({"0.125, true", "-0.125, true", "0.25, false", "-0.25, false"})
    void whatWasSuspectAndMovesByAStep_stoodWithThePan(double byC, boolean wentOn) {
        boils(2);
        flicker(40, 1);
        assertThat(stillness.wentOn()).isFalse();
        for (int i = 0; i < 40; i++) {
            read(LOW_C + 0.2);
        }
        read(LOW_C + 0.2 + byC);
        assertThat(stillness.wentOn()).isEqualTo(wentOn);
    }
}
