package spoonfall.cook.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import spoonfall.cook.MadePan;
import spoonfall.cook.Pace;

/** What was foreseen two minutes ago. */
final class ForeseenTest {
    private final Foreseen foreseen = new Foreseen(100);

    private static Forecaster known() {
        return MadePan.climbing(1.5, t -> 0).watch(600).forecaster();
    }

    @Test
    void itIsTakenDownEveryFiveSeconds() {
        Forecaster forecaster = known();
        assertThat(foreseen.remember(600, forecaster)).isTrue();
        assertThat(foreseen.remember(604.9, forecaster)).isFalse();
        assertThat(foreseen.remember(605, forecaster)).isTrue();
        foreseen.waitUntil(620);
        assertThat(foreseen.remember(624, forecaster)).isFalse();
        assertThat(foreseen.remember(625, forecaster)).isTrue();
        assertThat(foreseen.oldestT()).hasValue(600);
    }

    @Test
    void itIsWhereThePanIsDueTwoMinutesLater() {
        Forecaster forecaster = known();
        foreseen.remember(600, forecaster);
        double climb = foreseen.climbPerMinC(600).orElseThrow();
        assertThat(foreseen.heightC(600).orElseThrow())
                .isCloseTo(forecaster.panC(600, Double.NaN) + 2 * climb, Offset.offset(0.05));
        assertThat(foreseen.noiseC(600)).isEqualTo(forecaster.noiseC()).isPositive();
        assertThat(foreseen.heightC(599)).isEmpty();
        assertThat(foreseen.noiseC(599)).isZero();
    }

    @Test
    void ofAPanOfWhichNothingIsKnown_nothingIsForeseen() {
        assertThat(foreseen.remember(600, new Forecaster(MadePan.SETTINGS, Pace.BY_ITSELF)))
                .isTrue();
        assertThat(foreseen.oldestT()).isEmpty();
        assertThat(foreseen.climbPerMinC(600)).isEmpty();
    }

    @Test
    void whatIsForgotten_isUnknown() {
        foreseen.remember(600, known());
        foreseen.forget();
        assertThat(foreseen.oldestT()).isEmpty();
        assertThat(foreseen.heightC(600)).isEmpty();
        assertThat(foreseen.climbPerMinC(600)).isEmpty();
        assertThat(foreseen.noiseC(600)).isZero();
    }
}
