package spoonfall.cook.watch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import spoonfall.cook.MadeSignals;
import spoonfall.cook.signal.Signals;

/** What is said of a pan that does not climb: since when, and by how much. Its points lie five seconds apart. */
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
        return standstill.text(now, true, false).title();
    }

    private String standing() {
        return standstill.text(now, false, false).title();
    }

    @Test
    void aPanThatCools_isToldFromItsHeight_andSinceWhenItLeftIt() {
        stand(101, 102);
        move(151, 102, -0.01);
        // 0.15 °C below its height is no change yet: 115 s, the point before which is that of 115 s itself or of 110 s
        assertThat(cooling())
                .isIn(
                        "It is cooling: {diff:1.5} down since {clock:115}.",
                        "It is cooling: {diff:1.5} down since {clock:110}.");
    }

    @Test
    void aHeightOfMoreThanTenMinutesAgo_isForgotten() {
        stand(6, 104);
        stand(601, 102);
        move(51, 102, -0.02);
        assertThat(cooling()).startsWith("It is cooling: {diff:1.0} down");
        StandstillTest sooner = new StandstillTest();
        sooner.stand(6, 104);
        sooner.stand(540, 102);
        sooner.move(51, 102, -0.02);
        assertThat(sooner.cooling()).startsWith("It is cooling: {diff:3.0} down since {clock:5}");
    }

    @Test
    void howFarItFell_isToTheLowerOfItsLevelAndItsTrend() {
        stand(100, 102);
        now = MadeSignals.at(t, 100).withTrend(101);
        assertThat(cooling()).startsWith("It is cooling: {diff:2.0} down");
        now = MadeSignals.at(t, 101).withTrend(100);
        assertThat(cooling()).startsWith("It is cooling: {diff:2.0} down");
    }

    @Test
    void aPanThatStands_isToldSinceItWasLower() {
        stand(100, 101);
        stand(300, 102);
        assertThat(standing()).isEqualTo("No water has left for 5 minutes.");
        stand(60, 102.1);
        assertThat(standing()).isEqualTo("No water has left for 6 minutes.");
        stand(60, 102.2);
        assertThat(standing()).isEqualTo("No water has left for 2 minutes.");
    }

    @Test
    void aStandstill_isSaidToHaveLastedAMinuteAndAHalfAtLeast() {
        stand(100, 101);
        stand(20, 102);
        // 90 s, which are told as two minutes
        assertThat(standing()).isEqualTo("No water has left for 2 minutes.");
    }

    @Test
    void whoWasNeverLower_isToldOfTheLeastThatCanBeSeen() {
        stand(600, 102);
        assertThat(standing()).isEqualTo("No water has left for 2 minutes.");
    }

    @Test
    void aCoarseThermometersStep_isNoChange() {
        stand(100, 101);
        stand(300, 101.5);
        stand(120, 102);
        now = new Signals(now.t(), 102, 102, now.quick(), now.steady(), 102, 102, 0.6);
        assertThat(standing()).isEqualTo("No water has left for 7 minutes.");
        assertThat(cooling()).contains("since {clock:" + 515 + "}");
    }

    @Test
    void whatWasBeforeTheReadingsBeganAnew_isForgotten() {
        stand(100, 101);
        stand(300, 102);
        standstill.restart();
        assertThat(standing()).isEqualTo("No water has left for 2 minutes.");
    }
}
