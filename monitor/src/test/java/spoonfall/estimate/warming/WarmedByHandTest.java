package spoonfall.estimate.warming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WarmedByHandTest {
    private static final double PER_MIN_C = 6;

    private final WarmedByHand warmed = new WarmedByHand();

    private double lastC(double fromT, double untilT, double readFromC) {
        double lastC = Double.NaN;
        for (double t = fromT; t <= untilT; t++) {
            double typedC = readFromC + PER_MIN_C * Math.floor((t - fromT) / 60);
            lastC = warmed.riseC(t, typedC, PER_MIN_C);
        }
        return lastC;
    }

    @Test
    void betweenTwoReadings_itGoesOnWarming() {
        assertThat(lastC(0, 150, -30)).isCloseTo(-30 + PER_MIN_C * 2.5, within(0.01));
    }

    @Test
    void whatIsReadFarOff_isWhereItStands() {
        lastC(0, 150, -30);

        assertThat(warmed.riseC(151, -35, PER_MIN_C)).isEqualTo(-35);
    }

    @Test
    void afterAWhileInWhichNothingWasKnown_itBeginsWithWhatIsRead() {
        lastC(0, 150, -30);

        assertThat(warmed.riseC(300, -20, PER_MIN_C)).isEqualTo(-20);
    }
}
