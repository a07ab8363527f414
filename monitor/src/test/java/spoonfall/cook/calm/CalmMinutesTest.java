package spoonfall.cook.calm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** How precise is precise enough, and what is worth another word, are judgements (common practice, no source). */
final class CalmMinutesTest {
    private final CalmMinutes minutes = new CalmMinutes();

    /** What is {@code s} seconds ahead, known to within {@code widthS} around it. */
    private HowLong tell(double t, double s, double widthS) {
        return minutes.tell(t, s, s - widthS / 2, s + widthS / 2);
    }

    private static HowLong about(long minutes) {
        return new HowLong(minutes, minutes);
    }

    private static HowLong between(long least, long most) {
        return new HowLong(least, most);
    }

    @Test
    void minutes_countDown_andGoUpByAlmostAWholeOneOnly() {
        assertThat(tell(0, 540, 200)).isEqualTo(about(9));
        assertThat(tell(10, 570, 200)).isEqualTo(about(9));
        assertThat(tell(20, 593, 200)).isEqualTo(about(9));
        assertThat(tell(30, 595, 200)).isEqualTo(about(10));
        assertThat(tell(90, 500, 200)).isEqualTo(about(8));
        assertThat(tell(90, 700, 200)).isEqualTo(about(12));
    }

    @Test
    void theLastMinutes_goUpByAlmostAWholeOneOnly_too() {
        assertThat(tell(0, 60, 30)).isEqualTo(about(1));
        assertThat(tell(0, 113, 30)).isEqualTo(about(1));
        assertThat(tell(0, 115, 30)).isEqualTo(about(2));
        assertThat(tell(0, 39, 30)).isEqualTo(about(0));
    }

    @Test
    void fives_stayForThreeMinutesEitherWay() {
        assertThat(tell(0, 1250, 600)).isEqualTo(about(20));
        assertThat(tell(10, 1375, 600)).isEqualTo(about(20));
        assertThat(tell(20, 1385, 600)).isEqualTo(about(25));
        assertThat(tell(30, 1325, 600)).isEqualTo(about(25));
        assertThat(tell(40, 1315, 600)).isEqualTo(about(20));
    }

    @Test
    void fives_endWhereTheyWouldMislead() {
        assertThat(tell(0, 460, 320)).isEqualTo(about(10));
        assertThat(tell(10, 400, 200)).isEqualTo(about(5));
        assertThat(tell(20, 120, 60)).isEqualTo(about(2));
    }

    @Test
    void doubt_isToldAtOnce_andThatItIsGoneAfterTwoMinutes() {
        assertThat(tell(0, 1200, 300)).isEqualTo(about(20));
        assertThat(tell(1, 1200, 1000)).isEqualTo(between(10, 30));
        assertThat(tell(2, 1200, 300)).isEqualTo(between(10, 30));
        assertThat(tell(100, 1100, 1000)).isEqualTo(between(10, 30));
        assertThat(tell(101, 1100, 300)).isEqualTo(between(10, 30));
        assertThat(tell(220, 980, 300)).isEqualTo(between(10, 20));
        assertThat(tell(221, 980, 240)).isEqualTo(about(16));
    }

    @Test
    void finerWords_waitForDoubtThatIsClearlyGone() {
        assertThat(tell(0, 1200, 1000)).isEqualTo(between(10, 30));
        assertThat(tell(1, 1200, 700)).isEqualTo(between(10, 30));
        assertThat(tell(600, 1200, 700)).isEqualTo(between(10, 30)); // 840 would do for a number, but not clearly
        assertThat(tell(601, 1200, 620)).isEqualTo(between(10, 30));
        assertThat(tell(720, 1200, 620)).isEqualTo(between(10, 30));
        assertThat(tell(721, 1200, 620)).isEqualTo(about(20));
    }

    @Test
    void minutes_areToldByFives_fromTheFiveThatTheyComeTo() {
        assertThat(tell(0, 780, 200)).isEqualTo(about(13));
        assertThat(tell(1, 780, 400)).isEqualTo(about(13));
        assertThat(tell(60, 720, 400)).isEqualTo(about(12));
        assertThat(tell(180, 600, 400)).isEqualTo(about(10));
        assertThat(tell(181, 640, 400)).isEqualTo(about(10));
        assertThat(tell(182, 770, 400)).isEqualTo(about(10));
    }

    @Test
    void fives_areToldByMinutes_whereThatIsNoStepBack() {
        assertThat(tell(0, 740, 500)).isEqualTo(about(10));
        assertThat(tell(1, 740, 190)).isEqualTo(about(10));
        assertThat(tell(125, 640, 190)).isEqualTo(about(10)); // 11 would go back
        assertThat(tell(150, 610, 190)).isEqualTo(about(10));
        assertThat(tell(210, 550, 190)).isEqualTo(about(9));
    }

    @Test
    void aRangeThatTellsNothing_isToldByItsBeginning() {
        HowLong moreThanFive = new HowLong(5, HowLong.UNKNOWN);
        assertThat(minutes.tell(0, 1200, 320, 2900)).isEqualTo(moreThanFive);
        assertThat(minutes.tell(1, 1200, 320, 2300)).isEqualTo(moreThanFive);
        assertThat(minutes.tell(2, 1200, 320, 1750)).isEqualTo(between(5, 30));
        assertThat(minutes.tell(3, 1200, 320, 2350)).isEqualTo(between(5, 40));
        assertThat(moreThanFive.isOpen()).isTrue();
        assertThat(moreThanFive.isUnknown()).isFalse();
        assertThat(minutes.tell(4, 1200, 30, 2900).isUnknown()).isTrue();
    }

    @Test
    void aRangeThatIsWideButFarAhead_tellsSomething() {
        assertThat(minutes.tell(0, 3600, 1900, 6000)).isEqualTo(between(30, 100));
    }

    @Test
    void aRange_staysWhileItHolds() {
        assertThat(minutes.tell(0, 1200, 700, 1700)).isEqualTo(between(10, 30));
        assertThat(minutes.tell(1, 1200, 541, 1859)).isEqualTo(between(10, 30));
        assertThat(minutes.tell(2, 1200, 539, 1700)).isEqualTo(between(5, 30));
        assertThat(minutes.tell(3, 1200, 899, 1861)).isEqualTo(between(5, 40));
        assertThat(minutes.tell(4, 1250, 901, 1861)).isEqualTo(between(15, 40));
        assertThat(minutes.tell(5, 1250, 901, 1799)).isEqualTo(between(15, 30));
        assertThat(minutes.tell(6, 890, 841, 1799)).isEqualTo(between(10, 30));
    }

    @Test
    void whatWasForgotten_isToldAnew() {
        assertThat(tell(0, 1200, 1000)).isEqualTo(between(10, 30));
        minutes.forget();
        assertThat(tell(1, 1200, 300)).isEqualTo(about(20));
    }

    @Test
    void howLong_isInOrder() {
        assertThat(between(0, 10).isRange()).isTrue();
        assertThat(about(10).isRange()).isFalse();
        assertThatThrownBy(() -> between(10, 5)).hasMessageContaining("10, 5");
    }
}
