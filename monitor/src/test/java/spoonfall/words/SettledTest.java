package spoonfall.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class SettledTest {
    private final Settled<Boolean> settled = new Settled<>(90);

    @Test
    void aChange_isSaidWhenItHasLasted() {
        assertThat(settled.settle(0, false)).isFalse();
        assertThat(settled.settle(10, true)).isFalse();
        assertThat(settled.settle(89, true)).isFalse();
        assertThat(settled.settle(90, true)).isTrue();
        assertThat(settled.settle(100, false)).isTrue();
        assertThat(settled.settle(101, true)).isTrue();
        assertThat(settled.settle(190, false)).isTrue();
        assertThat(settled.settle(191, false)).isFalse();
    }
}
