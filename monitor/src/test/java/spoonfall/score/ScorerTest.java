package spoonfall.score;

import static org.assertj.core.api.Assertions.assertThat;
import static spoonfall.score.Scenes.call;
import static spoonfall.score.Scenes.label;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

final class ScorerTest {
    private static CookScore score(Trace trace, Observed observed) {
        return Scorer.score("by hand", trace, observed);
    }

    @Test
    void forecasts_areHeldAgainstTheGelPointAtEveryHorizon() {
        CookScore score = score(Scenes.cook(), Scenes.monitor(45, 60));
        assertThat(score.clean()).isTrue();
        assertThat(score.forecasts())
                .extracting(CookScore.ForecastScore::minutesAhead)
                .containsExactly(20, 15, 10, 5, 2);
        assertThat(score.forecasts()).allSatisfy(forecast -> {
            assertThat(forecast.monitorS()).hasValue(45);
            assertThat(forecast.covered()).isTrue();
        });
        assertThat(score(Scenes.cook(), Scenes.monitor(-45, 30)).forecasts()).allSatisfy(forecast -> {
            assertThat(forecast.monitorS()).hasValue(-45);
            assertThat(forecast.covered()).isFalse();
        });
    }

    @Test
    void aMissingForecast_hasNoErrorAndIsNotCovered() {
        CookScore score = score(Scenes.cook(), Scenes.mute());
        assertThat(score.forecasts()).hasSize(5).allSatisfy(forecast -> {
            assertThat(forecast.monitorS()).isEmpty();
            assertThat(forecast.covered()).isFalse();
        });
    }

    @Test
    void aProbeThatFellSilentForGood_isFound_thoughItsTraceEndsThere() {
        Trace whole = Scenes.cook(label(2000, "gap-begins"));
        Trace.Builder rows = new Trace.Builder();
        for (int i = 0; whole.elapsedS(i) < 2000; i++) {
            rows.add(whole.elapsedS(i), whole.temperatureC(i));
        }
        Trace cut = rows.build(whole.info());
        assertThat(score(cut, Observed.of(cut)).detections())
                .singleElement()
                .satisfies(found -> assertThat(found.delayS().orElseThrow()).isLessThan(60));
    }

    @Test
    void horizonsBeforeTheBoil_areNotJudged() {
        Trace shortOne = Scenes.cook();
        assertThat(score(shortOne, Scenes.mute()).forecasts()).hasSize(5);
        Trace late = Scenes.cook().with(boilingAt(1700, shortOne));
        assertThat(score(late, Scenes.mute()).forecasts())
                .extracting(CookScore.ForecastScore::minutesAhead)
                .containsExactly(10, 5, 2);
    }

    private static TraceInfo boilingAt(double t, Trace trace) {
        return new TraceInfo(
                "late",
                "",
                "simulated",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalLong.empty(),
                Optional.empty(),
                trace.info().labels().stream()
                        .map(label -> label.what().equals("boil") ? label(t, "boil") : label)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({"heat-down,1510,10", "water-added,2000,5", "test-begins,2270,0", "probe-out-begins,1000,20"})
    void whatNobodyCanForesee_isNotHeldAgainstAForecast(String what, double t, int firstJudged) {
        CookScore score = score(Scenes.cook(label(t, what)), Scenes.mute());
        List<Integer> judged = score.forecasts().stream()
                .map(CookScore.ForecastScore::minutesAhead)
                .toList();
        switch (firstJudged) {
            case 10 -> assertThat(judged).containsExactly(10, 5, 2);
            case 5 -> assertThat(judged).containsExactly(5, 2);
            case 0 -> assertThat(judged).containsExactly(2);
            // Out of the pan to the end of the cook: no forecast can be had at all.
            default -> assertThat(judged).isEmpty();
        }
    }

    @Test
    void aStall_isFoundWithItsDelay() {
        Trace trace = Scenes.cook(label(1200, "heat-off"), label(1560, "heat-on"));
        CookScore found = score(trace, Scenes.monitor(0, 10, call(1290, "stalled")));
        assertThat(found.detections()).containsExactly(new CookScore.Detection("stalled", 1200, OptionalDouble.of(90)));
        assertThat(found.falseAlarms()).isEmpty();
        assertThat(found.clean()).isFalse();
    }

    @Test
    void aStallWithTwoNames_isOne() {
        Trace trace = Scenes.cook(
                label(1200, "stall-begins"),
                label(1200, "heat-off"),
                label(1560, "stall-ends"),
                label(1560, "heat-on"));
        assertThat(score(trace, Scenes.mute()).detections()).hasSize(1);
    }

    @Test
    void aStallThatNobodyTold_isMissed() {
        Trace trace = Scenes.cook(label(1200, "heat-off"), label(1560, "heat-on"));
        assertThat(score(trace, Scenes.mute()).detections())
                .containsExactly(new CookScore.Detection("stalled", 1200, OptionalDouble.empty()));
        // Told only once it was over: missed, but not false within two minutes.
        CookScore late = score(trace, Scenes.monitor(0, 10, call(1600, "stalled")));
        assertThat(late.detections().get(0).delayS()).isEmpty();
        assertThat(late.falseAlarms()).isEmpty();
    }

    @Test
    void anAlarmForNothing_isFalse() {
        CookScore clean = score(Scenes.cook(), Scenes.monitor(0, 10, call(1300, "stalled"), call(2500, "stalled")));
        assertThat(clean.falseAlarms()).containsExactly(new CookScore.FalseAlarm("stalled", 1300, false));
        Trace scorched = Scenes.cook(label(1200, "scorch-begins"), label(1400, "scorch-ends"));
        CookScore wrongName = score(scorched, Scenes.monitor(0, 10, call(1300, "stalled")));
        assertThat(wrongName.falseAlarms()).containsExactly(new CookScore.FalseAlarm("stalled", 1300, true));
        assertThat(wrongName.detections().get(0).delayS()).isEmpty();
        CookScore stages = score(Scenes.cook(), Scenes.monitor(0, 10, call(2100, "start-set-tests")));
        assertThat(stages.falseAlarms()).isEmpty();
    }

    @Test
    void threeMinutesAfterAFault_itsAlarmIsFalseAgain() {
        Trace trace = Scenes.cook(label(1200, "gap-begins"), label(1300, "gap-ends"));
        CookScore score = score(trace, Scenes.monitor(0, 10, call(1205, "probe-silent"), call(1480, "probe-silent")));
        assertThat(score.detections().get(0).delayS()).hasValue(5);
        assertThat(score.falseAlarms()).extracting(CookScore.FalseAlarm::t).containsExactly(1480.0);
    }

    @ParameterizedTest
    @CsvSource({"2085,true", "2115,true", "2121,false", "2079,false"})
    void setTests_areInTimeWithinTwentySeconds(double calledT, boolean inTime) {
        CookScore score = score(Scenes.cook(), Scenes.monitor(0, 10, call(calledT, "start-set-tests")));
        assertThat(score.windowErrorS()).hasValue(calledT - 2100);
        assertThat(score.windowInTime()).isEqualTo(inTime);
        assertThat(score(Scenes.cook(), Scenes.mute()).windowInTime()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "stuck-begins,2090,stuck-ends,2110,false",
        "stuck-begins,2060,stuck-ends,2090,true",
        "scorch-begins,1800,scorch-ends,1925,false",
        "scorch-begins,1800,scorch-ends,1915,true",
        "spike,2095,spike,2095,false",
        "stall-begins,2050,stall-ends,2099,true"
    })
    void aWindow_isSeenWhereTheProbeTellsTheTruth(String begins, double t, String ends, double endT, boolean seen) {
        CookScore score = score(Scenes.cook(label(t, begins), label(endT, ends)), Scenes.mute());
        assertThat(score.hasWindow()).isTrue();
        assertThat(score.windowSeen()).isEqualTo(seen);
    }

    @Test
    void theGelPointCalledFiveMinutesEarly_isTooEarly() {
        assertThat(score(Scenes.cook(), Scenes.monitor(0, 10, call(2100, "gel-point")))
                        .gelTooEarly())
                .isTrue();
        assertThat(score(Scenes.cook(), Scenes.monitor(0, 10, call(2200, "gel-point")))
                        .gelTooEarly())
                .isFalse();
        Trace scorched = Scenes.cook(label(1900, "scorch-begins"));
        CookScore wrong = score(scorched, Scenes.monitor(0, 10, call(2000, "past-gel-point")));
        assertThat(wrong.gelTooEarly()).isTrue();
        assertThat(wrong.gelOnAWrongReading()).isTrue();
    }

    @Test
    void theMostAlarmsInTenMinutes_areCounted() {
        CookScore score = score(
                Scenes.cook(),
                Scenes.monitor(
                        0,
                        10,
                        call(100, "stalled"),
                        call(500, "stalled"),
                        call(701, "stalled"),
                        call(1000, "stalled")));
        assertThat(score.mostAlarms()).isEqualTo(3);
    }

    @Test
    void prompts_areCalls_butNoAlarms() {
        CookScore score = score(
                Scenes.cook(),
                Scenes.monitor(
                        0,
                        10,
                        call(100, "start-set-tests"),
                        call(200, "plate-ready"),
                        call(300, "gel-point"),
                        call(400, "past-gel-point")));
        assertThat(score.mostCalls()).isEqualTo(4);
        assertThat(score.mostAlarms()).isEqualTo(1);
    }

    @Test
    void theStraightLine_isExactOnAStraightClimb() {
        Trace straight = Scenes.cook();
        double gelPointC = Scenes.SETTINGS.gelPointC();
        assertThat(Extrapolation.LINE.etaS(straight, 600, 1800, gelPointC).orElseThrow())
                .isEqualTo(600, Offset.offset(0.01));
        assertThat(Extrapolation.PARABOLA.etaS(straight, 600, 1800, gelPointC).orElseThrow())
                .isEqualTo(600, Offset.offset(1.0));
    }

    @Test
    void theWayUpToTheBoil_doesNotSpoilTheLine() {
        double gelPointC = Scenes.SETTINGS.gelPointC();
        Trace boilsUp = Scenes.cook(t -> t < 600 ? 20 + t / 10 : gelPointC + (t - Scenes.GEL_T) / 600);
        assertThat(Extrapolation.LINE.etaS(boilsUp, 600, 720, gelPointC).orElseThrow())
                .isEqualTo(1680, Offset.offset(0.1));
    }

    @Test
    void theParabola_isExactOnAParabolaAndTheLineLate() {
        double gelPointC = Scenes.SETTINGS.gelPointC();
        Trace curved = Scenes.cook(t -> gelPointC - 4 + 4 * t * t / Scenes.GEL_T / Scenes.GEL_T);
        assertThat(Extrapolation.PARABOLA.etaS(curved, 600, 1800, gelPointC).orElseThrow())
                .isEqualTo(600, Offset.offset(0.1));
        assertThat(Extrapolation.LINE.etaS(curved, 600, 1800, gelPointC).orElseThrow())
                .isGreaterThan(650);
        Trace falling = Scenes.cook(t -> 100 - t / 1000);
        assertThat(Extrapolation.LINE.etaS(falling, 600, 1800, gelPointC)).isEmpty();
        assertThat(Extrapolation.LINE.etaS(curved, 600, 640, gelPointC)).isEmpty();
    }
}
