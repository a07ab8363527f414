package spoonfall.cook.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.MadeCook;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.cook.WentIn;
import spoonfall.settest.TestAnswer;

/**
 * Fruit and water boil for ten minutes at 0.3 °C above water, drawn by hand; then the sugar goes in, in one of the ways that cooks
 * have, and the syrup climbs from where that took it. Water boils at 100 °C, and it sets at 104 °C.
 */
final class SugarInTest {
    private static final int SUGAR_S = 900;

    private static double bubblesC(double t) {
        return 0.02 * Math.sin(1.7 * t);
    }

    /** It warms for five minutes and boils. */
    private static MadeCook simmering() {
        return MadeCook.begun().watch(SUGAR_S, t -> Math.min(70 + 0.1 * t, 100.3) + bubblesC(t));
    }

    /** So many degrees higher within so many seconds, and then by 0.1 °C a minute. */
    private static DoubleUnaryOperator poured(double byC, double withinS) {
        return t -> {
            double sinceS = t - SUGAR_S;
            return 100.3 + byC * Math.min(1, sinceS / withinS) + 0.1 * Math.max(0, sinceS - withinS) / 60 + bubblesC(t);
        };
    }

    /** Twenty degrees lower within half a minute, there for {@code restsS}, and back within two. */
    private static DoubleUnaryOperator atOnce(double restsS) {
        return t -> {
            double sinceS = t - SUGAR_S;
            double downC = 20 * (Math.min(1, sinceS / 30) - Math.max(0, Math.min(1, (sinceS - 30 - restsS) / 120)));
            double inC = sinceS < 30 ? 0 : 2;
            return 100.3 + inC - downC + 0.1 * Math.max(0, sinceS - 150 - restsS) / 60 + bubblesC(t);
        };
    }

    @Test
    void fruitThatBoilsWithoutSugar_isSaidToSimmer() {
        MadeCook cook = simmering();
        assertThat(cook.status().stage()).isEqualTo(Stage.SIMMERING);
        assertThat(cook.raised()).isEmpty();
    }

    @Test
    void whileTheSugarGoesIn_thatIsSaid() {
        MadeCook cook = simmering();
        assertThat(cook.status().wentIn()).isEqualTo(WentIn.NOTHING);
        assertThat(cook.watch(60, atOnce(60)).status().wentIn()).isEqualTo(WentIn.SUGAR);
        assertThat(cook.silent(30).status().wentIn()).isEqualTo(WentIn.NOTHING);
        assertThat(simmering().watch(900, atOnce(60)).status().wentIn()).isEqualTo(WentIn.NOTHING);
    }

    /** Thin juice under a noisy thermometer went to and fro between the two for minutes. */
    @ParameterizedTest(name = "from {0} °C above water")
    @ValueSource(doubles = {0.4, 0.5, 0.6})
    void thinJuiceThatThickensSlowly_isNotSaidToSimmerAndBoilByTurns(double fromC) {
        Random chance = new Random(1);
        MadeCook cook = MadeCook.begun().watch(3600, t -> {
            double boilsC = 100 + fromC + 0.01 * Math.max(0, t - 400) / 60;
            return Math.min(70 + 0.1 * t, boilsC) + 0.3 * chance.nextGaussian();
        });
        assertThat(cook.events().stream().filter(event -> event instanceof CookEvent.StageEntered))
                .hasSizeLessThanOrEqualTo(6);
    }

    /** A pan that climbs as if its sugar went in until it sets. */
    @Test
    void whoeverSaysThatItIsSet_hasAPanOffTheHeat() {
        MadeCook cook = simmering().watch(540, poured(5, 600));
        assertThat(cook.status().stage()).isEqualTo(Stage.AT_GEL_POINT);
        cook.say(TestWord.begun("a", TestWord.USUAL_PLATE_S)).say(TestWord.seen("a", TestAnswer.SET));
        assertThat(cook.status().stage()).isEqualTo(Stage.OFF_THE_HEAT);
    }

    /** A jam with a third of sugar boils that much higher. */
    @Test
    void whatBoilsWithItsSugar_isSaidToBoil() {
        MadeCook cook = MadeCook.begun().watch(SUGAR_S, t -> Math.min(70 + 0.1 * t, 100.8) + bubblesC(t));
        assertThat(cook.status().stage()).isEqualTo(Stage.ROLLING_BOIL);
    }

    @ParameterizedTest(name = "{0} °C within {1} s")
    @CsvSource({"1.2, 120", "1.7, 45", "1.7, 180", "2.5, 90", "2.5, 420"})
    void sugarPouredIntoTheBoil_isNoBaseThatCatches_andTheClimbAfterItIsKnown(double byC, double withinS) {
        MadeCook cook = simmering().watch((int) withinS + 480, poured(byC, withinS));
        assertThat(cook.raised()).doesNotContain(AlarmName.SCORCH_RISK, AlarmName.GEL_POINT, AlarmName.STALLED);
        assertThat(cook.status().stage().boiling()).isTrue();
        double straightS = (104 - 100.3 - byC) / 0.1 * 60 - 480; // syrup's curve steepens, and this climb does not
        assertThat(cook.status().forecast().orElseThrow().etaS()).isBetween(0.4 * straightS, 1.4 * straightS + 60);
    }

    @Test
    void whileItIsPoured_thePanIsOnItsWay_andNothingIsForeseen() {
        MadeCook cook = simmering().watch(100, poured(2.5, 120));
        assertThat(cook.status().stage()).isEqualTo(Stage.COMING_TO_THE_BOIL);
        assertThat(cook.status().forecast()).isEmpty();
    }

    @Test
    void nobodyIsRemindedOfPlates_whileFruitSimmers_orSugarGoesIn() {
        MadeCook cook = simmering().watch(120, poured(2.5, 120));
        assertThat(cook.events()).noneMatch(event -> event instanceof CookEvent.Reminded);
    }

    /** Cooks take it off the heat to melt the sugar. Before, that was a stall after four minutes. */
    @ParameterizedTest(name = "for {0} s")
    @ValueSource(ints = {0, 300, 700})
    void aPanThatStandsOffTheHeatToMeltItsSugar_warms_andDoesNotStall(int restsS) {
        MadeCook cook = simmering().watch(30 + restsS, atOnce(restsS));
        assertThat(cook.status().stage()).isIn(Stage.WARMING, Stage.SIMMERING);
        cook.watch(420, atOnce(restsS));
        assertThat(cook.raised()).isEmpty();
        assertThat(cook.status().stage()).isEqualTo(Stage.ROLLING_BOIL);
        assertThat(cook.status().forecast()).isPresent();
    }

    /** A pan that has boiled with its sugar for long has no more of it to come: what climbs as fast there is its base. */
    @Test
    void aSweetPanThatClimbsAsFast_catches() {
        MadeCook cook = MadeCook.boiling(600).watch(180, t -> MadeCook.boilsC(t) + 1.5 * (t - 600) / 60);
        assertThat(cook.raised()).startsWith(AlarmName.SCORCH_RISK);
    }
}
