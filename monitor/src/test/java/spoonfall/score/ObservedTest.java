package spoonfall.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

final class ObservedTest {
    @Test
    void whatWasObserved_staysAsItWas_whateverBecomesOfTheListsItCameIn() {
        List<Observed.Call> raised = new ArrayList<>(List.of(new Observed.Call(60, "stalled")));

        Observed observed = new Observed(CookSettings.defaults(), List.of(), raised, List.of());
        raised.clear();

        assertThat(observed.onAt(61, "stalled")).isTrue();
    }

    @Test
    void theCookIsMeasured_byBoilingWaterThatWasMeasured_elseByTheBarometer_elseByTheElevation() {
        OptionalDouble none = OptionalDouble.empty();
        OptionalDouble boilC = OptionalDouble.of(95.6);
        OptionalDouble elevationM = OptionalDouble.of(1240);
        OptionalDouble pressurePa = OptionalDouble.of(88_000);

        assertThat(waterBoil(boilC, elevationM, pressurePa)).isEqualTo(WaterBoil.measured(95.6, 0));
        assertThat(waterBoil(boilC, none, none)).isEqualTo(WaterBoil.measured(95.6, 0));
        assertThat(waterBoil(none, elevationM, pressurePa)).isEqualTo(WaterBoil.atPressure(88_000));
        assertThat(waterBoil(none, elevationM, none)).isEqualTo(WaterBoil.atElevation(1240));
        assertThat(waterBoil(none, none, none)).isEqualTo(WaterBoil.standard());
    }

    private static WaterBoil waterBoil(OptionalDouble boilC, OptionalDouble elevationM, OptionalDouble pressurePa) {
        Trace.Builder rows = new Trace.Builder();
        rows.add(0, OptionalDouble.of(20));
        Trace trace = rows.build(new TraceInfo(
                "A cook whose water boil is stated",
                "",
                "simulated",
                boilC,
                elevationM,
                pressurePa,
                OptionalDouble.empty(),
                OptionalLong.empty(),
                Optional.empty(),
                List.of()));
        return Observed.of(trace).settings().waterBoil();
    }
}
