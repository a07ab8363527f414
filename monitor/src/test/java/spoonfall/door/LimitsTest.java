package spoonfall.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How often clients may ask, how they are told apart, and which hosts are ours. */
final class LimitsTest {
    @Test
    void anAllowance_refillsAtItsPace_eachClientsOwn() {
        Allowance allowance = new Allowance(10, 2);
        for (int i = 0; i < 10; i++) {
            assertThat(allowance.take("a", 0)).isEmpty();
        }
        assertThat(allowance.take("a", 0)).hasValue(1);
        assertThat(allowance.take("b", 0)).isEmpty();
        assertThat(allowance.take("a", 499)).hasValue(1);
        assertThat(allowance.take("a", 500)).isEmpty();
        assertThat(allowance.take("a", 1000)).isEmpty();
        assertThat(allowance.take("a", 1000)).isPresent();
        for (int i = 0; i < 10; i++) {
            assertThat(allowance.take("a", 3_600_000)).isEmpty();
        }
        assertThat(allowance.take("a", 3_600_000)).isPresent();
    }

    @ParameterizedTest
    @CsvSource({
        "192.0.2.7, 192.0.2.7",
        "[::ffff:192.0.2.7], 192.0.2.7",
        "2001:db8:1:2:3:4:5:6, 20010db800010002",
        "[2001:db8:1:2::9], 20010db800010002",
        "fe80::1%eth0, fe80000000000000",
        "not:an:address:at:all, not:an:address:at:all",
    })
    void aClient_isItsAddress_orItsNetworkWhereItCanTakeAnyAddress(String address, String name) {
        assertThat(Clients.named(address)).isEqualTo(name);
    }

    @Test
    void ourHosts_areTheNamesGiven_andTheAddressThatWasReached() {
        HostNames names = new HostNames(Set.of("kitchen.example"));
        assertThat(names.known("Kitchen.Example.", "192.0.2.7")).isTrue();
        assertThat(names.known("192.0.2.7", "192.0.2.7")).isTrue();
        assertThat(names.known("[2001:db8::1]", "2001:db8::1%eth0")).isTrue();
        assertThat(names.known("192.0.2.8", "192.0.2.7")).isFalse();
        assertThat(names.known("kitchen.example.evil.example", "192.0.2.7")).isFalse();
        assertThat(names.known("", "192.0.2.7")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"https://kitchen", "kitchen/door", "*", "a b", "evil.example@kitchen"})
    void aHostNameThatCannotBe_isRefused(String name) {
        assertThatThrownBy(() -> HostNames.ofThisMachine(Set.of(name))).hasMessageContaining("such as kitchen.home");
    }
}
