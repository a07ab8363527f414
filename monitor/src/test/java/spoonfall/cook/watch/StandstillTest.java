package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.signal.Signals;

/** What is said of a pan that does not climb: since when, and from where. Its points lie five seconds apart. */
final class StandstillTest {
    private final Standstill standstill = new Standstill();
    private Signals now = MadeSignals.at(0, 0);
    private double t;

    private void stand(int seconds, double c) {
        move(seconds, c, 0);
    }

    private void move(int seconds, double fromC, double perS) {
        for (int i = 0; i < seconds; i++) {
            now = MadeSignals.at(t, fromC + perS * i);
            standstill.endSecond(now);
            t++;
        }
    }

    private String cooling() {
        return standstill.coolingText(now, AlarmText.Cooling.HEAT_IS_OFF).title();
    }

    /** Since when it is said to stand. */
    private double sinceT() {
        String title = standstill.standingText(now).title();
        assertThat(title).matches("No water has left since \\{clock:-?[0-9]+}\\.");
        return Double.parseDouble(title.replaceAll("[^0-9-]", ""));
    }

    @Test
    void aPanThatCools_isToldFromItsHeight_andSinceWhenItLeftIt() {
        stand(101, 102);
        move(151, 102, -0.01);
        // 0.15 °C below its height is no change yet: 115 s, the point before which is that of 115 s itself or of 110 s
        assertThat(cooling())
                .isIn(
                        "It is cooling from {temp:102.0}, since {clock:115}.",
                        "It is cooling from {temp:102.0}, since {clock:110}.");
    }

    @Test
    void aHeightOfMoreThanTenMinutesAgo_isForgotten() {
        stand(6, 104);
        stand(601, 102);
        move(51, 102, -0.02);
        assertThat(cooling()).startsWith("It is cooling from {temp:102.0}");
        StandstillTest sooner = new StandstillTest();
        sooner.stand(6, 104);
        sooner.stand(540, 102);
        sooner.move(51, 102, -0.02);
        assertThat(sooner.cooling()).startsWith("It is cooling from {temp:104.0}, since {clock:5}");
    }

    @Test
    void aPanThatStands_isToldSinceItWasLower() {
        stand(100, 101);
        stand(300, 102);
        assertThat(sinceT()).isBetween(95.0, 100.0);
        stand(60, 102.1);
        assertThat(sinceT()).isBetween(95.0, 100.0);
        stand(60, 102.2);
        assertThat(sinceT()).isBetween(395.0, 430.0);
    }

    @Test
    void aStandstill_isSaidToHaveLastedAMinuteAndAHalfAtLeast() {
        stand(100, 101);
        stand(20, 102);
        assertThat(sinceT()).isEqualTo(119 - 90);
    }

    @Test
    void whoWasNeverLower_isToldOfTheLeastThatCanBeSeen() {
        stand(600, 102);
        assertThat(sinceT()).isEqualTo(599 - 90);
    }

    @Test
    void aCoarseThermometersStep_isNoChange() {
        stand(100, 101);
        stand(300, 101.5);
        stand(120, 102);
        now = new Signals(now.t(), 102, 102, now.quick(), now.steady(), 102, 102, 0.6);
        assertThat(sinceT()).isBetween(95.0, 100.0);
        assertThat(cooling()).contains("since {clock:" + 515 + "}");
    }

    @Test
    void whatWasBeforeTheReadingsBeganAnew_isForgotten() {
        stand(100, 101);
        stand(300, 102);
        standstill.restart();
        assertThat(sinceT()).isEqualTo(399 - 90);
    }
}
