package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.probe.Reading;

/**
 * Thick syrup boils some degrees above water. A slow hob takes more than a minute for those, in which the pan is not yet at the boil,
 * be it its first or the one that it was taken from; a quick hob takes seconds. Drawn by hand; all paces are judgements, no source.
 */
class SlowHobTest {
    private static final double IN_TIME_S = 20;
    private static final double BOILS_S = 900;
    private static final double OFF_AFTER_S = 700;
    private static final double OFF_FOR_S = 480;
    private static final double COOLS_PER_MIN_C = 1.5;

    /** What vapour and sides take of the heat before the boil, as °C a minute. */
    private static final double LOSES_PER_MIN_C = 0.6;

    private static final CookSettings SETTINGS = new CookSettings(WaterBoil.atElevation(0), 4.4444);
    private static final double WATER_C = SETTINGS.waterBoil().temperatureC();

    private final List<CookEvent> events = new ArrayList<>();

    /** Before, the way back was taken for a boil 2 °C lower, and the height it came to for a hot base: nobody was called. */
    @ParameterizedTest(name = "{0} °C a minute")
    @ValueSource(doubles = {1, 1.5, 2, 3, 6})
    void gelPoint_isCalled_whenThePanWarmsBackToTheBoil(double perMinC) {
        double boilC = 2.2;
        double backT = BOILS_S + OFF_AFTER_S + OFF_FOR_S * (1 + COOLS_PER_MIN_C / perMinC);
        double gelT = backT + boiledS(boilC, SETTINGS.riseC()) - OFF_AFTER_S;
        cook(gelT + 60, t -> {
            double untilOffS = BOILS_S + OFF_AFTER_S - t;
            if (untilOffS > 0) {
                return firstC(t, boilC, perMinC);
            }
            double below = Math.min(-untilOffS * COOLS_PER_MIN_C, Math.max(0, backT - t) * perMinC) / 60;
            return boilingC(boilC, OFF_AFTER_S + Math.max(0, t - backT)) - below;
        });
        assertThat(Cooks.raisedT(events, AlarmName.GEL_POINT)).isPresent();
        assertThat(Cooks.raisedT(events, AlarmName.GEL_POINT).orElseThrow()).isCloseTo(gelT, within(IN_TIME_S));
    }

    @ParameterizedTest(name = "{0} °C a minute")
    @ValueSource(doubles = {2, 3, 6})
    void forecast_ofThickSyrup_isNotMisledByTheWayToTheBoil(double perMinC) {
        double boilC = 2.8;
        // Twice the heat boils it down twice as fast; a heat balance would say 6.
        double times = (perMinC + LOSES_PER_MIN_C) / 4.2;
        double gelT = BOILS_S + boiledS(boilC, SETTINGS.riseC()) / times;
        double t = BOILS_S + 180;
        cook(t, s -> s < BOILS_S ? firstC(s, boilC, perMinC) : boilingC(boilC, times * (s - BOILS_S)));
        double etaS = lastStatus().forecast().orElseThrow().etaS();
        assertThat(etaS).isCloseTo(gelT - t, within(0.3 * (gelT - t)));
    }

    /** The rise of a pan that has come to the boil at {@code boilC} by so much a minute. */
    private static double firstC(double t, double boilC, double perMinC) {
        return t < BOILS_S ? boilC - (BOILS_S - t) * perMinC / 60 : boilingC(boilC, t - BOILS_S);
    }

    private static double boilingC(double boilC, double boiledS) {
        double part = boiledS / 1200;
        return boilC + 1.2 * part + 0.6 * part * part;
    }

    /** For how long it has boiled when it has come to {@code riseC}. */
    private static double boiledS(double boilC, double riseC) {
        return 1200 * (Math.sqrt(1 + (riseC - boilC) / 0.6) - 1);
    }

    private CookStatus lastStatus() {
        return events.stream()
                .filter(CookEvent.StatusTaken.class::isInstance)
                .map(event -> ((CookEvent.StatusTaken) event).status())
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    private void cook(double untilS, DoubleUnaryOperator riseC) {
        SplittableRandom random = new SplittableRandom(17);
        CookMonitor monitor = new CookMonitor(SETTINGS, 0);
        for (double t = 0; t < untilS; t++) {
            double c = WATER_C + riseC.applyAsDouble(t) + 0.03 * random.nextGaussian();
            events.addAll(monitor.accept(Reading.good("pan", Math.round(t * 1e9), Math.round(c * 20) / 20.0, "")));
        }
    }
}
