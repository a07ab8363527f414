package spoonfall.cook.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.series.Track;

/** Falls from 103 °C, a degree deep at 100 s, as Newton's law and mixing draw them. */
final class WaysToFallTest {
    private static final double FROM_C = 103;
    private static final double BEGUN_S = 100;
    private final WaysToFall ways = new WaysToFall();

    /** Out in something so much colder, by a thermometer of that time constant. */
    private static DoubleUnaryOperator out(double byC, double airS) {
        double beginsT = BEGUN_S + airS * Math.log(1 - 1 / byC);
        return t -> byC * (1 - Math.exp(-Math.max(0, t - beginsT) / airS));
    }

    /** Something cold is poured in, evenly for so long, read by a thermometer so late. */
    private static DoubleUnaryOperator poured(double byC, double pourS, double lagS) {
        return t -> {
            double s = Math.max(0, t - BEGUN_S + 3);
            return byC / pourS * (ramp(s, lagS) - ramp(Math.max(0, s - pourS), lagS));
        };
    }

    private static double ramp(double s, double lagS) {
        return s - lagS * (1 - Math.exp(-s / lagS));
    }

    /** How much likelier the air is by such a fall, read so often for so long. */
    private double airOverCold(DoubleUnaryOperator downC, double everyS, double forS, double colderC) {
        Track values = new Track(90);
        for (double t = BEGUN_S - 20; t <= BEGUN_S + forS; t += everyS) {
            values.add(t, FROM_C - downC.applyAsDouble(t));
        }
        ways.begin(BEGUN_S);
        ways.read(values, FROM_C, 0.1);
        return ways.airOverCold(colderC);
    }

    @Test
    void beforeAnythingIsRead_neitherIsLikelier() {
        ways.begin(BEGUN_S);
        assertThat(ways.airOverCold(0)).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest(name = "{0} °C colder, {1} s")
    @CsvSource({"75, 6", "75, 12", "60, 20", "80, 40"})
    void aProbeInTheAir_isOut(double byC, double airS) {
        assertThat(airOverCold(out(byC, airS), 1, 20, 0)).isGreaterThan(1.5);
    }

    @ParameterizedTest(name = "{0} °C within {1} s, {2} s late")
    @CsvSource({"12, 3, 4", "12, 12, 4", "20, 20, 3", "8, 1, 6"})
    void somethingColdInThePan_isNoAir(double byC, double pourS, double lagS) {
        assertThat(airOverCold(poured(byC, pourS, lagS), 1, 30, 0)).isLessThan(-1.5);
    }

    @Test
    void theFallBefore_tellsNothingOfTheNext() {
        double cold = airOverCold(poured(12, 6, 4), 1, 20, 0);
        double air = airOverCold(out(75, 8), 1, 20, 0);
        assertThat(air).isEqualTo(new WaysToFallTest().airOverCold(out(75, 8), 1, 20, 0));
        assertThat(airOverCold(poured(12, 6, 4), 1, 20, 0)).isEqualTo(cold);
    }

    @Test
    void whereItMustBeColder_aShallowFallIsLessLikelyTheAirs() {
        DoubleUnaryOperator steam = out(14, 26);
        assertThat(airOverCold(steam, 1, 30, 15)).isLessThan(airOverCold(steam, 1, 30, 0) - 3);
        DoubleUnaryOperator air = out(30, 6);
        assertThat(airOverCold(air, 1, 20, 15)).isLessThan(airOverCold(air, 1, 20, 0) - 3);
    }

    @Test
    void readingsOfTheSameSecond_tellTheSame() {
        double onceASecond = airOverCold(out(75, 8), 1, 20, 0);
        assertThat(airOverCold(out(75, 8), 0.1, 20, 0)).isBetween(onceASecond / 1.6, onceASecond * 1.6);
    }

    @Test
    void readingsFarApart_tellLess_butTell() {
        double onceASecond = airOverCold(out(75, 12), 1, 24, 0);
        assertThat(airOverCold(out(75, 12), 4, 24, 0)).isBetween(onceASecond / 6, onceASecond);
    }

    @Test
    void whatIsReadAfterFortySeconds_tellsNothingMore() {
        assertThat(airOverCold(out(75, 26), 1, 60, 0)).isEqualTo(airOverCold(out(75, 26), 1, 40, 0));
    }

    @ParameterizedTest(name = "after {0} s: {1}")
    @CsvSource({"5.9, false", "6, true", "40, true", "40.1, false"})
    void itsWayTells_whileTheFallIsYoung(double s, boolean tells) {
        ways.begin(BEGUN_S);
        assertThat(ways.tells(BEGUN_S + s)).isEqualTo(tells);
    }
}
