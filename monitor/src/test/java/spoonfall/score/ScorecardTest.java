package spoonfall.score;

import static org.assertj.core.api.Assertions.assertThat;
import static spoonfall.score.Scenes.call;
import static spoonfall.score.Scenes.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import spoonfall.probe.trace.Trace;

final class ScorecardTest {
    private static final Trace STALL = Scenes.cook(label(1200, "heat-off"), label(1560, "heat-on"));

    private static CookScore score(Trace trace, Observed observed) {
        return Scorer.score("by hand", trace, observed);
    }

    @Test
    void quantiles_areThoseOfCooksAndMissingOnesAreInfinite() {
        List<CookScore> cooks = new ArrayList<>();
        for (int i = 1; i <= 9; i++) {
            cooks.add(score(Scenes.cook(), Scenes.monitor(i % 2 == 0 ? i * 10 : -i * 10, 45)));
        }
        cooks.add(score(Scenes.cook(), Scenes.mute()));
        Scorecard.Horizon ten = new Scorecard(cooks).horizons(cook -> true).get(2);
        assertThat(ten.minutesAhead()).isEqualTo(10);
        assertThat(ten.count()).isEqualTo(10);
        assertThat(ten.missing()).isEqualTo(1);
        // Errors of 10, 20, … 90 s and one that is missing; the first four lie within their 45 s.
        assertThat(ten.errors().get(CookScore.Method.MONITOR)).isEqualTo(new Scorecard.Quantiles(50, 90));
        assertThat(ten.covered()).isEqualTo(4.0 / 9);
        assertThat(ten.widthS()).isEqualTo(90);
        cooks.add(score(Scenes.cook(), Scenes.mute()));
        Scorecard.Horizon more = new Scorecard(cooks).horizons(cook -> true).get(2);
        assertThat(more.errors().get(CookScore.Method.MONITOR))
                .isEqualTo(new Scorecard.Quantiles(60, Double.POSITIVE_INFINITY));
    }

    @Test
    void quantiles_ofNothingAreUnknown() {
        assertThat(Scorecard.Quantiles.of(DoubleStream.empty()).median()).isNaN();
        assertThat(new Scorecard(List.of()).falseAlarmsPer100Hours(cook -> true))
                .isNaN();
    }

    @Test
    void aFoundAndAMissedStall_areHalf() {
        Scorecard card = new Scorecard(List.of(
                score(STALL, Scenes.monitor(0, 10, call(1290, "stalled"))), score(STALL, Scenes.mute())));
        Scorecard.Found stalls = card.found().get(0);
        assertThat(stalls.alarm()).isEqualTo("stalled");
        assertThat(stalls.share()).isEqualTo(0.5);
        assertThat(stalls.delaysS()).isEqualTo(new Scorecard.Quantiles(90, Double.POSITIVE_INFINITY));
    }

    @Test
    void falseAlarms_areCountedPerHundredHoursOfCooking() {
        Scorecard card = new Scorecard(List.of(
                score(Scenes.cook(), Scenes.monitor(0, 10, call(1300, "stalled"))),
                score(Scenes.cook(), Scenes.mute()),
                score(STALL, Scenes.monitor(0, 10, call(1300, "scorch-risk")))));
        // Three cooks of 2,460 s each hold 2.05 h.
        assertThat(card.hours(cook -> true)).isEqualTo(2.05, Offset.offset(1e-9));
        assertThat(card.falseAlarmsPer100Hours(cook -> true)).isEqualTo(2 / 0.0205, Offset.offset(1e-6));
        assertThat(card.falseAlarmsPer100Hours(CookScore::clean)).isEqualTo(1 / 0.0136667, Offset.offset(0.01));
        assertThat(card.falseAlarms(cook -> true, CookScore.FalseAlarm::besideAnotherFault))
                .isEqualTo(Map.of("scorch-risk", 1L));
    }

    @Test
    void theWorst_comesFirst() {
        CookScore good = Scorer.score("good", Scenes.cook(), Scenes.monitor(5, 10));
        CookScore off = Scorer.score("off", Scenes.cook(), Scenes.monitor(500, 10));
        CookScore missed = Scorer.score("missed", STALL, Scenes.monitor(0, 10));
        assertThat(new Scorecard(List.of(good, off, missed)).worst(2))
                .extracting(CookScore::name)
                .containsExactly("missed", "off");
    }

    @Test
    void setTestsInTime_areAShareOfTheCooksWhoseWindowOpened() {
        Scorecard card = new Scorecard(List.of(
                score(Scenes.cook(), Scenes.monitor(0, 10, call(2110, "start-set-tests"))),
                score(Scenes.cook(), Scenes.mute())));
        assertThat(card.windowsInTime(cook -> true)).isEqualTo(0.5);
        assertThat(card.windowErrorsS(cook -> true)).isEqualTo(new Scorecard.Quantiles(10, Double.POSITIVE_INFINITY));
    }
}
