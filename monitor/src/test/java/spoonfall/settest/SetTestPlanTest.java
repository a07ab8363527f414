package spoonfall.settest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a set test teaches, and how well that finds the set of preserves that do not keep to the rule. */
final class SetTestPlanTest {
    private static final double WANTED_C = 8 / 1.8;
    private static final int COOKS = 1000;
    private static final int MOST_TESTS = 8;

    /** How somebody tests. */
    private record Way(double firstC, boolean onlySaysNotYet, Function<SplittableRandom, Taster> who) {
        static Way asPlanned() {
            return new Way(SetTestPlan.of(WANTED_C).nextRiseC(), false, Taster::usual);
        }
    }

    /** One cook: test where the plan says, a little early or late as people are, until somebody says that it is set. */
    private static void cook(SplittableRandom random, double trueC, Way way, SetTestStudy study) {
        Taster taster = way.who().apply(random.split());
        double firstC = way.firstC();
        SetTestPlan plan = SetTestPlan.of(WANTED_C);
        double atC = firstC;
        double secondC = firstC;
        for (int test = 1; test <= MOST_TESTS; test++) {
            double panC = Math.max(test == 1 ? 0 : secondC, atC + random.nextDouble(-0.1, 0.1));
            secondC = test <= 2 ? panC : secondC;
            TestStep seen = taster.sees(trueC - panC);
            if (seen == TestStep.SET || test == MOST_TESTS) {
                study.count(secondC - trueC, panC - trueC, test);
                return;
            }
            double readC = panC + 0.05 * random.nextGaussian();
            plan = plan.tested(readC, way.onlySaysNotYet() ? TestStep.NOT_YET : seen);
            atC = Math.max(panC, plan.nextRiseC());
        }
    }

    private static SetTestStudy study(String what, long seed, Function<SplittableRandom, Double> offC, Way way) {
        SetTestStudy study = new SetTestStudy(what + ", seed " + seed);
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < COOKS; i++) {
            SplittableRandom mine = random.split();
            cook(mine, WANTED_C + offC.apply(mine), way, study);
        }
        System.out.println(study);
        return study;
    }

    @Test
    void aTestThatCameFarTooEarly_teachesNothing() {
        SetTestPlan before = SetTestPlan.of(WANTED_C);
        SetTestPlan after = before.tested(1.5, TestStep.NOT_YET);
        assertThat(after.nextRiseC()).isEqualTo(before.nextRiseC());
        assertThat(after.tests()).isZero();
        assertThat(before.tested(WANTED_C - 2 / 1.8, TestStep.NOT_YET).tests()).isEqualTo(1);
        assertThat(before.tested(1.5, TestStep.SET).nextRiseC()).isEqualTo(1.5);
    }

    private static double uniform(SplittableRandom random) {
        return random.nextDouble(-1, 1);
    }

    private static double normal(SplittableRandom random) {
        return 0.5 * random.nextGaussian();
    }

    @ParameterizedTest
    @CsvSource({"1000001", "1000002", "1000003"})
    void fourInFive_areAtTheirSetByTheSecondTest_andFewerThanOneInTenIsOvercooked(long seed) {
        Way way = Way.asPlanned();
        SetTestStudy even = study("true set evenly within 1 °C", seed, SetTestPlanTest::uniform, way);
        SetTestStudy bell = study("true set normal, sd 0.5 °C", seed, SetTestPlanTest::normal, way);
        for (SetTestStudy study : List.of(even, bell)) {
            assertThat(study.reachedByTheSecond()).as(study.toString()).isGreaterThanOrEqualTo(0.8);
            assertThat(study.overshot()).as(study.toString()).isLessThan(0.1);
        }
    }

    /** What is not in the target and must not surprise: it takes a test more, but few are overcooked. */
    @Test
    void otherWaysToTest_takeATestMoreButOvercookFew() {
        long seed = 1_000_004;
        Way planned = Way.asPlanned();
        List<Way> ways = List.of(
                new Way(WANTED_C - 2 / 1.8, false, Taster::usual),
                new Way(planned.firstC(), true, Taster::usual),
                new Way(planned.firstC(), false, Taster::careless));
        List<String> names = List.of("first test where the window opens", "only ever \"not yet\"", "careless tasters");
        for (int i = 0; i < ways.size(); i++) {
            SetTestStudy even = study(names.get(i) + ", evenly", seed, SetTestPlanTest::uniform, ways.get(i));
            SetTestStudy bell = study(names.get(i) + ", normal", seed, SetTestPlanTest::normal, ways.get(i));
            assertThat(even.overshot()).as(even.toString()).isLessThan(0.16);
            assertThat(bell.overshot()).as(bell.toString()).isLessThan(0.16);
        }
    }

    @Test
    void theFirstTest_isAFewTenthsBelowTheWantedRise() {
        assertThat(SetTestPlan.of(WANTED_C).nextRiseC()).isBetween(WANTED_C - 0.6, WANTED_C - 0.3);
    }

    @Test
    void theFurtherItIsFromSetting_theFurtherTheNextTest() {
        SetTestPlan plan = SetTestPlan.of(WANTED_C);
        double atC = plan.nextRiseC();
        double farC = plan.tested(atC, TestStep.FAR).nextRiseC();
        double notYetC = plan.tested(atC, TestStep.NOT_YET).nextRiseC();
        double nearC = plan.tested(atC, TestStep.NEAR).nextRiseC();
        assertThat(nearC).isBetween(atC + 0.1, atC + 0.6);
        assertThat(notYetC).isGreaterThan(nearC);
        assertThat(farC).isGreaterThan(notYetC).isBetween(atC + 0.7, atC + 1.2);
    }

    @ParameterizedTest
    @EnumSource(
            value = TestStep.class,
            names = {"FAR", "NEAR", "NOT_YET"})
    void everyNotYet_leadsFurther_howeverOftenAndWherever(TestStep step) {
        for (double atC : new double[] {WANTED_C - 20, WANTED_C - 3, WANTED_C, WANTED_C + 3, WANTED_C + 20}) {
            SetTestPlan plan = SetTestPlan.of(WANTED_C);
            double lastC = atC;
            for (int i = 0; i < 30; i++) {
                plan = plan.tested(lastC, step);
                assertThat(plan.nextRiseC())
                        .as("%s at %s", step, lastC)
                        .isFinite()
                        .isGreaterThan(lastC);
                lastC = plan.nextRiseC();
            }
        }
    }

    @Test
    void set_isWhereItWasSeen() {
        SetTestPlan plan = SetTestPlan.of(WANTED_C).tested(4.1, TestStep.FAR).tested(4.9, TestStep.SET);
        assertThat(plan.nextRiseC()).isEqualTo(4.9);
        assertThat(plan.tests()).isEqualTo(2);
    }

    @Test
    void aRiseThatIsNoNumber_isRefused() {
        assertThatThrownBy(() -> SetTestPlan.of(WANTED_C).tested(Double.NaN, TestStep.FAR))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a rise must be a number, not NaN");
    }

    @Test
    void names_areThoseOfTheWire() {
        assertThat(TestAnswer.named(TestAnswer.Kind.SHEET, "drops-join")).contains(TestAnswer.DROPS_JOIN);
        assertThat(TestAnswer.named(TestAnswer.Kind.PLATE, "drops-join")).isEmpty();
        assertThat(TestAnswer.named(TestAnswer.Kind.VERDICT, "set")).contains(TestAnswer.SET);
    }
}
