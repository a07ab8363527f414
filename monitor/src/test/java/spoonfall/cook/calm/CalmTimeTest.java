package spoonfall.cook.calm;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * What is news is a judgement (common practice, no source): 45 s, an eighth of the time to go, half of what the interval reaches to
 * either side, or a quarter minute at the end; and that it stays for a quarter minute.
 */
final class CalmTimeTest {
    private final CalmTime calm = new CalmTime();

    /** The middle of a forecast that is known well. */
    private double settle(double t, double etaS) {
        return calm.settle(t, etaS, etaS - 20, etaS + 20).t();
    }

    private double[] spots(double etaS, double lowS, double highS) {
        CalmTime.Shown shown = calm.settle(0, etaS, lowS, highS);
        return new double[] {shown.t(), shown.fromT(), shown.untilT()};
    }

    /** The same when it has been so for a quarter minute. */
    private double stays(double t, double etaS) {
        settle(t - 15, etaS + 15);
        return settle(t, etaS);
    }

    @Test
    void aForecastThatWobbles_staysPut_andNewsMovesIt() {
        assertThat(settle(100, 300)).isEqualTo(400);
        assertThat(stays(150, 250 + 44)).isEqualTo(400);
        assertThat(stays(150, 250 - 44)).isEqualTo(400);
        assertThat(stays(150, 250 + 45)).isEqualTo(445);
        assertThat(stays(150, 295 - 46)).isEqualTo(399);
    }

    @Test
    void news_isBelievedWhenItStays() {
        assertThat(settle(100, 300)).isEqualTo(400);
        assertThat(settle(110, 390)).isEqualTo(400);
        assertThat(settle(124, 376)).isEqualTo(400);
        assertThat(settle(125, 275)).isEqualTo(400);
        assertThat(settle(126, 374)).isEqualTo(400);
        assertThat(settle(140, 360)).isEqualTo(400);
        assertThat(settle(141, 359)).isEqualTo(500);
    }

    @Test
    void farAhead_itTakesAnEighthOfTheTimeToGo() {
        settle(0, 1000);
        assertThat(stays(15, 1110)).isEqualTo(1000);
        assertThat(stays(15, 1140)).isEqualTo(1155);
    }

    @Test
    void whatIsHardlyKnown_takesMoreToMove() {
        assertThat(calm.settle(0, 600, 300, 900).t()).isEqualTo(600);
        assertThat(calm.settle(0, 740, 440, 1040).t()).isEqualTo(600);
        assertThat(calm.settle(15, 740, 440, 1040).t()).isEqualTo(600);
        assertThat(calm.settle(16, 760, 460, 1060).t()).isEqualTo(600);
        assertThat(calm.settle(31, 760, 460, 1060).t()).isEqualTo(791);
    }

    @Test
    void anInterval_staysUntilAnEndOfItMovesByAQuarterOfIt_orAMinute() {
        assertThat(spots(600, 400, 900)).containsExactly(600, 400, 900);
        assertThat(spots(600, 300, 800)).containsExactly(600, 400, 900);
        assertThat(spots(600, 265, 800)).containsExactly(600, 265, 800);
        assertThat(spots(600, 580, 620)).containsExactly(600, 580, 620);
        assertThat(spots(600, 525, 675)).containsExactly(600, 580, 620);
        assertThat(spots(600, 515, 620)).containsExactly(600, 515, 620);
    }

    @Test
    void anInterval_holdsTheMiddleThatIsShown() {
        assertThat(spots(600, 580, 620)).containsExactly(600, 580, 620);
        assertThat(spots(560, 520, 570)).containsExactly(600, 520, 600);
    }

    @Test
    void inTheLastTwoMinutes_aQuarterMinuteIsNews() {
        settle(0, 110);
        assertThat(stays(40, 84)).isEqualTo(110);
        assertThat(stays(60, 65)).isEqualTo(125);
    }

    @Test
    void twoMinutesToGo_areNotTheLastTwo() {
        settle(0, 110);
        assertThat(stays(15, 120)).isEqualTo(110);
    }

    @Test
    void howLong_isToldOfTheMomentThatIsShown() {
        assertThat(calm.settle(0, 600, 580, 620).howLong()).isEqualTo(new HowLong(10, 10));
        assertThat(calm.settle(60, 580, 560, 600).howLong()).isEqualTo(new HowLong(9, 9));
        assertThat(calm.settle(60, 580, 300, 900).howLong()).isEqualTo(new HowLong(5, 15));
        calm.forget();
        assertThat(calm.settle(60, 580, 560, 600).howLong()).isEqualTo(new HowLong(10, 10));
    }

    @Test
    void withoutAForecast_theNextIsTakenAsItIs() {
        settle(0, 300);
        calm.forget();
        assertThat(settle(1, 300)).isEqualTo(301);
    }
}
