package spoonfall.cook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.lab.varied.CookKind;
import spoonfall.lab.varied.VariedCook;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/**
 * Readings that fall, each drawn by hand: a pan that cools slowly and one that jumped; a probe that left the pan and one whose
 * base had been hot. The pan warms, boils at 1,200 s and climbs by 0.1 °C a minute; all paces are judgements, no source.
 */
class FallsTest {
    private static final double BOILS_S = 1200;
    private static final double FAULT_S = 2700;

    /** Short of the test window. */
    private static final double COLD_S = 2400;

    private static final CookSettings SETTINGS = new CookSettings(WaterBoil.atElevation(0), 4.4444);
    private static final double WATER_C = SETTINGS.waterBoil().temperatureC();

    @ParameterizedTest(name = "{0} °C a minute")
    @ValueSource(doubles = {0.25, 0.4, 0.8})
    void stall_isRaised_whenThePanCoolsSlowly(double perMinC) {
        List<CookEvent> events = cook(3600, 1, t -> -perMinC * since(t, FAULT_S) / 60);
        // 0.8 °C below its height it has fallen, and 85 s more are a set test
        double latestS = 85 + 1.2 * 60 / perMinC + 30;
        assertThat(Cooks.raisedT(events, AlarmName.STALLED).orElseThrow()).isBetween(FAULT_S + 20, FAULT_S + latestS);
    }

    /** Within 0.4 °C of the setting point a cook may be done, and is asked later. */
    @Test
    void stall_isRaised_whenThePanStandsOffTheHeatJustShortOfTheSettingPoint() {
        double offT = nearlySetT();
        OptionalDouble raisedT = Cooks.raisedT(cook(offT + 400, 1, t -> -since(t, offT) / 60), AlarmName.STALLED);
        assertThat(raisedT.orElseThrow()).isBetween(offT + 150, offT + 240);
    }

    @Test
    void stall_isNotRaised_whenThePanIsTestedForTwoMinutesThere() {
        double offT = nearlySetT();
        DoubleUnaryOperator testC = t -> -Math.min(since(t, offT) / 60, Math.max(0, (offT + 150 - t) * 4 / 60));
        assertThat(Cooks.raised(cook(offT + 160, 1, testC))).doesNotContain(AlarmName.STALLED);
    }

    /** The heat of a slow hob fades: the pan stands at first, and then falls. */
    @Test
    void stall_isRaisedSooner_whenThePanStoodBeforeItFell() {
        List<CookEvent> events = cook(3600, 1, t -> panC(Math.min(t, FAULT_S)) - panC(t) - since(t, FAULT_S + 75) / 60);
        assertThat(Cooks.raisedT(events, AlarmName.STALLED).orElseThrow()).isBetween(FAULT_S + 75, FAULT_S + 190);
    }

    @ParameterizedTest(name = "{0} °C")
    @ValueSource(doubles = {1.2, 2.5, 3.5})
    void stall_isNotRaised_whenTheReadingDropsAtOnceAndGoesOn(double byC) {
        List<CookEvent> events = cook(3200, 1, t -> t >= FAULT_S ? -byC : 0);
        assertThat(Cooks.raised(events)).doesNotContain(AlarmName.STALLED);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1043, 1061, 1223, 1417})
    void stall_isNotRaised_whenTheReadingOnlyJumpsUnderANoisyThermometer(long seed) {
        assertThat(Cooks.raised(Replayed.events(VariedCook.cook(CookKind.JUMP, seed))))
                .doesNotContain(AlarmName.STALLED);
    }

    /** It jumps, and later the heat goes off. */
    @Test
    void stall_isRaised_whenThePanCoolsAfterAJump() {
        DoubleUnaryOperator offC = t -> (t >= FAULT_S ? -1.2 : 0) - since(t, FAULT_S + 60) / 60;
        assertThat(Cooks.raisedT(cook(3300, 1, offC), AlarmName.STALLED).orElseThrow())
                .isBetween(FAULT_S + 130, FAULT_S + 260);
    }

    @Test
    void stall_isNotRaised_whenThePanSagsAndComesBackWithinAMinute() {
        List<CookEvent> events = cook(3200, 1, t -> -1.2 * Math.max(0, 1 - Math.abs(t - FAULT_S - 30) / 30));
        assertThat(Cooks.raised(events)).doesNotContain(AlarmName.STALLED);
    }

    @Test
    void probeOut_isRaised_whenASlowThermometerIsFarBelowByItsNextReadings() {
        List<CookEvent> events = cook(3000, 10, t -> t < FAULT_S ? 0 : -56 * (1 - Math.exp(-since(t, FAULT_S) / 15)));
        assertThat(Cooks.raisedT(events, AlarmName.PROBE_OUT_OF_PAN).orElseThrow())
                .isBetween(FAULT_S, FAULT_S + 40);
    }

    @Test
    void probeOut_isNotRaised_whenABaseThatWasHotIsStirredCool() {
        List<CookEvent> events = cook(3200, 1, FallsTest::hotBaseC);
        assertThat(Cooks.raised(events)).contains(AlarmName.SCORCH_RISK).doesNotContain(AlarmName.PROBE_OUT_OF_PAN);
    }

    @Test
    void probeOut_isRaised_whenTheSameFallIsFromThePansOwnHeight() {
        List<CookEvent> events = cook(3200, 1, t -> t < FAULT_S ? 0 : -8 * (1 - Math.exp(-since(t, FAULT_S) / 12)));
        assertThat(Cooks.raisedT(events, AlarmName.PROBE_OUT_OF_PAN).orElseThrow())
                .isBetween(FAULT_S, FAULT_S + 80);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {131, 2318})
    void probeOut_isRaised_whenTheThermometerIsSlow(long seed) {
        Trace trace = VariedCook.cook(CookKind.PROBE_OUT, seed);
        OptionalDouble raisedT = Cooks.raisedT(Replayed.events(trace), AlarmName.PROBE_OUT_OF_PAN);
        assertThat(raisedT.orElseThrow())
                .isBetween(
                        trace.info().firstT("probe-out-begins").orElseThrow(),
                        trace.info().firstT("probe-out-ends").orElseThrow());
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({
        "SET_TESTS, 331",
        "SET_TESTS, 474",
        "SET_TESTS, 2392",
        "SET_TESTS, 5315",
        "PROBE_OUT, 2333",
        "WATER, 38",
        "WATER, 4206",
        "WATER, 4299"
    })
    void stall_isNotRaised_whileThePanComesBackFromATest(CookKind kind, long seed) {
        assertThat(Cooks.raised(Replayed.events(VariedCook.cook(kind, seed)))).doesNotContain(AlarmName.STALLED);
    }

    @Test
    void stall_isNotRaised_whenFruitIsTurnedDownToSimmerBeforeTheSugarGoesIn() {
        assertThat(Cooks.raised(Replayed.events(VariedCook.cook(CookKind.LATE_SUGAR, 2676))))
                .doesNotContain(AlarmName.STALLED);
    }

    @Test
    void probeOut_isNotRaised_whenSugarGoesIntoFruit() {
        DoubleUnaryOperator sugarC = t -> -Math.min(13, 0.65 * since(t, FAULT_S)) + 3 * since(t, FAULT_S + 60) / 60;
        List<CookEvent> events = cook(2900, 1, FallsTest::fruitC, sugarC);
        assertThat(Cooks.raised(events)).doesNotContain(AlarmName.PROBE_OUT_OF_PAN);
    }

    @Test
    void probeOut_isRaised_whenTheProbeLeavesAPanOfFruit() {
        List<CookEvent> events = cook(2900, 1, FallsTest::fruitC, t -> -68 * (1 - Math.exp(-since(t, FAULT_S) / 15)));
        assertThat(Cooks.raisedT(events, AlarmName.PROBE_OUT_OF_PAN).orElseThrow())
                .isBetween(FAULT_S, FAULT_S + 20);
    }

    @ParameterizedTest(name = "{0} °C a minute")
    @CsvSource({"0.9, 7", "1.3, 4"})
    void stall_isRaised_whenSomethingColdTakesThePanOffTheBoilForLong(double perMinC, int minutes) {
        CookAlarm alarm = raised(cook(3000, 1, t -> thinnedC(t, 12, perMinC, 12)), AlarmName.STALLED);
        assertThat(alarm.raisedT()).isBetween(COLD_S + 130, COLD_S + 180);
        assertThat(alarm.title())
                .matches("Something cold went in at \\{clock:24[0-9]{2}}, and the pan still does not boil\\.");
        assertThat(alarm.act()).matches("At this pace it takes until about \\{clock:[0-9]+}: turn the heat up\\?");
        double boilsT = Double.parseDouble(alarm.act().replaceAll("[^0-9]", ""));
        assertThat((boilsT - alarm.raisedT()) / 60).isCloseTo(minutes, within(0.5));
    }

    @ParameterizedTest(name = "{0} °C a minute")
    @ValueSource(doubles = {2, 4})
    void stall_isNotRaised_whenThePanComesBackWithinSixMinutes(double perMinC) {
        List<CookEvent> events = cook(3000, 1, t -> thinnedC(t, 12, perMinC, 12));
        assertThat(Cooks.raised(events)).doesNotContain(AlarmName.STALLED);
    }

    @Test
    void stall_isRaised_whenSomethingColdWentInAndThePanWarmsNoFurther() {
        DoubleUnaryOperator coldC = t -> thinnedC(t, 10, 6, 2) - panC(t) + panC(Math.min(t, COLD_S));
        CookAlarm alarm = raised(cook(3000, 1, coldC), AlarmName.STALLED);
        assertThat(alarm.raisedT()).isBetween(COLD_S + 130, COLD_S + 180);
        assertThat(alarm.act()).matches("It is \\{diff:5\\.[0-9]} short and warms no further: turn the heat up\\?");
    }

    @Test
    void stall_isOver_andNothingElseIsCalled_whenThePanIsBackAtTheBoil() {
        List<CookEvent> events = cook(3400, 1, t -> thinnedC(t, 12, 0.9, 12));
        double clearedT = changes(events, AlarmChange.CLEARED, AlarmName.STALLED)
                .mapToDouble(CookAlarm::raisedT)
                .findFirst()
                .orElseThrow();
        assertThat(clearedT).isLessThan(COLD_S + 180);
        assertThat(Cooks.raised(events)).containsOnlyOnce(AlarmName.STALLED).doesNotContain(AlarmName.SCORCH_RISK);
    }

    @Test
    void nothingIsSaidOfTheProbe_whileAPanOnASmallFlameWarmsAgain() {
        assertThat(Cooks.raised(cook(3000, 1, t -> thinnedC(t, 12, 0.9, 12))))
                .doesNotContain(AlarmName.PROBE_OUT_OF_PAN);
    }

    @Test
    void probeOut_isRaised_whenTheSameFallWarmsNoFurther() {
        assertThat(Cooks.raised(cook(2600, 1, t -> thinnedC(t, 12, 0, 12)))).contains(AlarmName.PROBE_OUT_OF_PAN);
    }

    private static CookAlarm raised(List<CookEvent> events, AlarmName name) {
        return changes(events, AlarmChange.RAISED, name).findFirst().orElseThrow();
    }

    private static Stream<CookAlarm> changes(List<CookEvent> events, AlarmChange change, AlarmName name) {
        return events.stream()
                .filter(CookEvent.AlarmChanged.class::isInstance)
                .map(CookEvent.AlarmChanged.class::cast)
                .filter(changed -> changed.change() == change && changed.alarm().name() == name)
                .map(CookEvent.AlarmChanged::alarm);
    }

    /** Something cold takes the pan down at once, which warms again by so much at most; it is a little thinner then. */
    private static double thinnedC(double t, double byC, double perMinC, double mostC) {
        double fallC = byC * (1 - Math.exp(-since(t, COLD_S) / 8));
        double lowC = fallC - Math.min(mostC, since(t, COLD_S + 20) * perMinC / 60);
        return t < COLD_S ? 0 : -Math.max(Math.min(0.8, fallC), lowC);
    }

    /** Two and a half degrees a minute for four minutes, and then gone within half a minute. */
    private static double hotBaseC(double t) {
        double heatedS = Math.min(240, since(t, FAULT_S));
        double hotC = heatedS * 2.5 / 60;
        return hotC * Math.exp(-since(t, FAULT_S + 240) / 12);
    }

    /** When the pan is a quarter of a degree short of the gel point. */
    private static double nearlySetT() {
        double t = BOILS_S;
        while (panC(t) < SETTINGS.gelPointC() - 0.25) {
            t++;
        }
        return t;
    }

    private static double since(double t, double beginT) {
        return Math.max(0, t - beginT);
    }

    private static double panC(double t) {
        double riseC = t < BOILS_S
                ? 1 - Math.min(40, (BOILS_S - t) * 4 / 60)
                : 1 + 1.2 * (t - BOILS_S) / 1200 + 0.6 * Math.pow((t - BOILS_S) / 1200, 2);
        return WATER_C + riseC;
    }

    /** Fruit and water, which boil hardly hotter than water and do not climb. */
    private static double fruitC(double t) {
        return WATER_C + 0.2 - Math.max(0, Math.min(40, (BOILS_S - t) * 4 / 60));
    }

    private static List<CookEvent> cook(double untilS, double everyS, DoubleUnaryOperator faultC) {
        return cook(untilS, everyS, FallsTest::panC, faultC);
    }

    private static List<CookEvent> cook(
            double untilS, double everyS, DoubleUnaryOperator panC, DoubleUnaryOperator faultC) {
        SplittableRandom random = new SplittableRandom(17);
        CookMonitor monitor = new CookMonitor(SETTINGS, 0);
        List<CookEvent> events = new ArrayList<>();
        for (double t = 0; t < untilS; t += everyS) {
            double c = panC.applyAsDouble(t) + faultC.applyAsDouble(t) + 0.03 * random.nextGaussian();
            events.addAll(monitor.accept(Reading.good("pan", Math.round(t * 1e9), Math.round(c * 50) / 50.0, "")));
        }
        return events;
    }
}
