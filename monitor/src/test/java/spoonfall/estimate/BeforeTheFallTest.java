package spoonfall.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.filter.SyrupCurve;

/** A pan at u = 2 falls and seems to level lower, at u = 4; five minutes later it reads as high as before. */
final class BeforeTheFallTest {
    private static final double VARIANCE = 0.01;
    private static final double[] DOUBTS = {0.05, 0.01, 0.02, 0.05, 0.1};

    private final SyrupCurve curve = SyrupCurve.under(101_325);
    private final BeforeTheFall before = new BeforeTheFall(curve);
    private final FilterBank bank = new FilterBank(curve);

    private double begunAtC(double u) {
        bank.begin(new double[] {u, -0.02, 0, 1, 1}, DOUBTS, 0);
        return bank.riseC();
    }

    @Test
    void whatComesBack_goesOnFromBefore() {
        double beforeC = begunAtC(2);
        before.keep(1000, bank);
        begunAtC(4);
        assertThat(before.restore(1300, beforeC, VARIANCE, bank)).isTrue();
        assertThat(bank.u()).isCloseTo(2, within(0.2));
    }

    @Test
    void anotherPan_thatBoilsAsHigh_doesNot() {
        double beforeC = begunAtC(2);
        before.keep(1000, bank);
        begunAtC(4);
        before.forget();
        assertThat(before.restore(1300, beforeC, VARIANCE, bank)).isFalse();
        assertThat(bank.u()).isCloseTo(4, within(1e-9));
    }
}
