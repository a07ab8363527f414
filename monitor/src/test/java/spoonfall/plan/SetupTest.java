package spoonfall.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SetupTest {
    private static TypedSetup typed(String pan, String power, String kettle, String ph, String jar) {
        return new TypedSetup(said(pan), said(power), said(kettle), said(ph), said(jar));
    }

    private static Optional<String> said(String text) {
        return Optional.of(text).filter(one -> !one.isEmpty());
    }

    private static PlanSetup setup(TypedSetup typed) {
        return typed.setup(101_325, 99.97, 4.44, Optional.empty());
    }

    @Test
    void aLitreThatTakesFourMinutes_isAHobOfOneAndAHalfKilowatts() {
        // 1 kg of water by 85 °C at 4.19 kJ/(kg °C) in 240 s: 1.48 kW (computed by hand).
        HobPower hob = setup(typed("8L", "", "4min", "", "")).hob().orElseThrow();
        assertThat(hob.kW()).isCloseTo(1.48, within(0.01));
        assertThat(hob.from()).isEqualTo(HobPower.From.LITRE);
        assertThat(hob.waterKgPerMin())
                .isCloseTo(0.0266 * 1.48, within(0.0003)); // docs/science.md: 26.6 g/min for each kW
    }

    @Test
    void whatWasLearnt_isTheMiddleOfEarlierCooks_andServesWhenNothingWasSaid() {
        HobPower learnt = HobPower.learnt(0.040, 0.044, 0.080);
        assertThat(learnt.waterKgPerMin()).isCloseTo(0.044, within(1e-9));
        assertThat(learnt.relativeDoubt()).isGreaterThan(0.3);
        assertThat(HobPower.learnt(0.04).relativeDoubt()).isEqualTo(0.15);
        PlanSetup setup = typed("", "", "", "", "").setup(101_325, 99.97, 4.44, Optional.of(learnt));
        assertThat(setup.hob()).contains(learnt);
        assertThat(setup(typed("", "2kW", "", "", "")).hob().orElseThrow().kW()).isEqualTo(2);
    }

    @Test
    void optionsWinOverNotes_andAKettleOverAPower() {
        TypedSetup both = typed("", "", "5min", "3.2", "").or(typed("8L", "2kW", "", "3.0", "250mL"));
        assertThat(both).isEqualTo(typed("8L", "", "5min", "3.2", "250mL"));
    }

    @ParameterizedTest
    @CsvSource({
        "8,,,,,needs a unit", "900L,,,,,20mL to 200L", "'',50kW,,,,100W to 20kW", "'',2kW,4min,,,not both",
        "'',,10s,,,half a minute", "'',,,sour,,write it like 3.2", "'',,,9,,pH must be 1 to 7",
                "'',,,,bucket,quarter-pint",
        "'',,,,50L,jar"
    })
    void whatCannotBe_isRefused_withAWayOut(
            String pan, String power, String kettle, String ph, String jar, String says) {
        assertThatThrownBy(() -> setup(typed(or(pan), or(power), or(kettle), or(ph), or(jar))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(says);
    }

    private static String or(@org.jspecify.annotations.Nullable String text) {
        return text == null ? "" : text;
    }

    @Test
    void halfAPint_isThatOfNist() {
        // NIST Handbook 44, Appendix C: a US pint is 28.875 cubic inches of 16.387064 mL.
        assertThat(Jar.of("half-pint").litres()).isCloseTo(28.875 / 2 * 0.016387064, within(1e-4));
        assertThat(Jar.of("250mL").name()).isEqualTo("250 mL");
    }
}
