package spoonfall.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.hummeling.if97.IF97;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import spoonfall.probe.trace.Trace;

final class SimulatorTest {
    @Test
    void vapourPressure_agreesWithIf97() {
        // com.hummeling:if97, an independent implementation of IF97; Wagner and Pruss' equation lies within 0.05 %.
        IF97 reference = new IF97(IF97.UnitSystem.SI);
        for (double celsius = 20; celsius < 130; celsius += 1) {
            double expected = reference.saturationPressureT(celsius + 273.15);
            assertThat(PanPhysics.vapourPressurePa(celsius)).isCloseTo(expected, Offset.offset(5e-4 * expected));
        }
    }

    @ParameterizedTest
    @CsvSource({"40,1.15", "50,1.82", "60,2.94", "65,3.79", "68,4.46", "70,4.99", "75,6.74"})
    void rise_isThatOfStarzakAndPeacock(double percent, double riseC) {
        // Computed beforehand from Starzak and Peacock (1997) on IF97 by the project's science notes.
        double rise = PanPhysics.boilingPointC(101_325, percent / 100) - PanPhysics.boilingPointC(101_325, 0);
        assertThat(rise).isEqualTo(riseC, Offset.offset(0.02));
    }

    @Test
    void theWorkedMarmalade_takesAboutTwentyMinutesAndLosesItsWaterAtThePublishedPace() {
        // NCHFP citrus marmalade: boiled rapidly to 8 °F above boiling water, about 20 minutes; the mass balance of the
        // project's science notes makes that 2.02 kg at 35 % on 1.75 kW net.
        PanSettings nchfp = new PanSettings(2.02, 0.35, 80, 1.75, 0, 8 / 1.8, 1, 5, 0, 0.01);
        Trace trace = Simulator.cook(Scenario.CLEAN, nchfp, 1);
        double boil = trace.info().firstT("boil").orElseThrow();
        double gel = trace.info().firstT("gel").orElseThrow();
        assertThat((gel - boil) / 60).isBetween(18.0, 23.0);
    }

    @ParameterizedTest
    @CsvSource({"0.5,0.06", "0.6,0.16", "0.65,0.26", "0.72,0.56"})
    void climb_isThatOfTheMassBalance(double solids, double perMinuteC) {
        // d(rise)/dt at 1.3 kg of solids and 1.2 kW net, by the project's science notes, whose curve is another one.
        double gramsPerMinute = 26.6 * 1.2;
        double massG = 1300 / solids;
        double after = 1300 / (massG - gramsPerMinute);
        double climb = PanPhysics.boilingPointC(101_325, after) - PanPhysics.boilingPointC(101_325, solids);
        assertThat(climb).isCloseTo(perMinuteC, Offset.offset(0.25 * perMinuteC));
    }

    @ParameterizedTest
    @EnumSource(Scenario.class)
    void theSameSeed_givesTheSameTrace(Scenario scenario) {
        PanSettings pan = PanSettings.defaults();
        String once = Simulator.cook(scenario, pan, 7).csv();
        assertThat(Simulator.cook(scenario, pan, 7).csv()).isEqualTo(once);
        assertThat(Simulator.cook(scenario, pan, 8).csv()).isNotEqualTo(once);
    }

    @ParameterizedTest
    @EnumSource(Scenario.class)
    void theSampleTraces_areWhatTheirCommandMakes(Scenario scenario) {
        Path file = Path.of("../sample-traces/" + scenario.wireName() + ".csv");
        Trace sample = Trace.read(file);
        Trace made = Simulator.cook(scenario, PanSettings.defaults(), 1);
        assertThat(sample.csv()).isEqualTo(made.csv());
        assertThat(sample.info()).isEqualTo(made.info());
        assertThat(sample.info().provenance()).isEqualTo("simulated");
        assertThat(sample.info().title()).contains("simulated");
    }

    @Test
    void aGap_isAGap() {
        Trace trace = Simulator.cook(Scenario.GAP, PanSettings.defaults(), 3);
        OptionalDouble begins = trace.info().firstT("gap-begins");
        OptionalDouble ends = trace.info().firstT("gap-ends");
        for (int i = 0; i < trace.size(); i++) {
            assertThat(trace.elapsedS(i) > begins.orElseThrow() + 1 && trace.elapsedS(i) < ends.orElseThrow() - 1)
                    .isFalse();
        }
    }

    @Test
    void aPanThatCannotBe_isRefused() {
        assertThatThrownBy(() -> new PanSettings(2, 0.4, 60, 50, 0, 4.4, 1, 5, 0.1, 0.1))
                .hasMessageContaining("power in kW must be 0.2 to 10.0, not 50.0");
    }
}
