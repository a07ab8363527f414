package spoonfall.cook.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;
import spoonfall.cook.WaterBoil;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.probe.Reading;

/**
 * A pan that stood off the heat and warms again, drawn by hand: it boils at 1,200 s, climbs ever faster, leaves the heat, cools by
 * 1 °C a minute and comes back by 4 °C a minute to where it was, to climb on. All paces are judgements, no source.
 */
class WayBackTest {
    private static final double BOILS_S = 1200;
    private static final double OFF_S = 2700;
    private static final double COOLS_PER_S = 1.0 / 60;
    private static final double TURNED_S = 25;
    private static final double WARMS_PER_S = 4.0 / 60;
    private static final CookSettings SETTINGS = new CookSettings(WaterBoil.atElevation(0), 4.4444);
    private static final double WATER_C = SETTINGS.waterBoil().temperatureC();

    private final List<CookEvent> events = new ArrayList<>();

    @ParameterizedTest(name = "{0} s off the heat")
    @ValueSource(doubles = {150, 240, 420})
    void forecast_countsTheWayBack_whileThePanWarms(double offS) {
        cook(OFF_S + offS + TURNED_S, offS);
        CookStatus before = last(OFF_S);
        CookStatus now = last(OFF_S + offS + TURNED_S);
        double restS = before.forecast().orElseThrow().etaS() - (OFF_S - before.t());
        Forecast forecast = now.forecast().orElseThrow();
        assertThat(forecast.etaS()).isCloseTo(backT(offS) - now.t() + restS, within(30.0));
        assertThat(forecast.highS() - forecast.lowS())
                .isGreaterThan(before.forecast().orElseThrow().highS()
                        - before.forecast().orElseThrow().lowS());
    }

    @Test
    void forecast_isThatOfAPanThatGoesBackNow_whileItMayBeTested() {
        cook(OFF_S + 90, 600);
        CookStatus before = last(OFF_S);
        double restS = before.forecast().orElseThrow().etaS() - (OFF_S - before.t());
        assertThat(last(OFF_S + 90).forecast().orElseThrow().etaS()).isCloseTo(restS, within(60.0));
    }

    @Test
    void forecast_isNotGiven_whileThePanStandsOffTheHeat() {
        cook(OFF_S + 240, 600);
        assertThat(last(OFF_S + 240).forecast()).isEmpty();
    }

    @Test
    void forecast_isNeverMissing_betweenTheWayBackAndTheBoil() {
        double offS = 240;
        double fromT = OFF_S + offS + TURNED_S;
        cook(backT(offS) + 120, offS);
        assertThat(statuses())
                .filteredOn(status -> status.t() > fromT)
                .isNotEmpty()
                .allMatch(status -> status.forecast().isPresent());
    }

    @Test
    void stalled_isOver_onceThePanWarms() {
        double offS = 300;
        cook(backT(offS), offS);
        assertThat(changedT(AlarmChange.RAISED).orElseThrow()).isBetween(OFF_S, OFF_S + offS);
        assertThat(changedT(AlarmChange.CLEARED).orElseThrow()).isBetween(OFF_S + offS, OFF_S + offS + 60);
    }

    @Test
    void stalled_stays_whileThePanCoolsOn() {
        cook(OFF_S + 600, 900);
        assertThat(changedT(AlarmChange.RAISED)).isPresent();
        assertThat(changedT(AlarmChange.CLEARED)).isEmpty();
    }

    private OptionalDouble changedT(AlarmChange change) {
        return events.stream()
                .filter(event -> event instanceof CookEvent.AlarmChanged changed
                        && changed.alarm().name() == AlarmName.STALLED
                        && changed.change() == change)
                .mapToDouble(CookEvent::t)
                .findFirst();
    }

    private List<CookStatus> statuses() {
        return events.stream()
                .filter(CookEvent.StatusTaken.class::isInstance)
                .map(event -> ((CookEvent.StatusTaken) event).status())
                .toList();
    }

    private CookStatus last(double beforeT) {
        return statuses().stream()
                .filter(status -> status.t() <= beforeT)
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    private static double backT(double offS) {
        return OFF_S + offS + offS * COOLS_PER_S / WARMS_PER_S;
    }

    private static double riseC(double t) {
        return t < BOILS_S
                ? 1 - Math.min(40, (BOILS_S - t) * 4 / 60)
                : 1 + 1.2 * (t - BOILS_S) / 1200 + 0.6 * Math.pow((t - BOILS_S) / 1200, 2);
    }

    private void cook(double untilS, double offS) {
        DoubleUnaryOperator rise = t -> {
            if (t < OFF_S) {
                return riseC(t);
            }
            double backT = backT(offS);
            double below = Math.min((t - OFF_S) * COOLS_PER_S, Math.max(0, (backT - t) * WARMS_PER_S));
            return riseC(OFF_S + Math.max(0, t - backT)) - below;
        };
        SplittableRandom random = new SplittableRandom(17);
        CookMonitor monitor = new CookMonitor(SETTINGS, 0);
        for (double t = 0; t < untilS; t++) {
            double c = WATER_C + rise.applyAsDouble(t) + 0.03 * random.nextGaussian();
            events.addAll(monitor.accept(Reading.good("pan", Math.round(t * 1e9), Math.round(c * 50) / 50.0, "")));
        }
    }
}
