package spoonfall.cook.pan;

import java.util.List;
import java.util.Optional;
import spoonfall.cook.AlarmName;
import spoonfall.cook.CookEvent;
import spoonfall.cook.Suppression;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.settest.SetTests;
import spoonfall.cook.stage.Stages;
import spoonfall.cook.stage.SugarIn;
import spoonfall.cook.watch.ColdAddition;

/** By which design an alarm of the pan means nothing just now, as ISA-18.2 has it. */
final class Suppressions {
    private static final List<AlarmName> OF_THE_PROBE = List.of(
            AlarmName.PROBE_SILENT,
            AlarmName.PROBE_OUT_OF_PAN,
            AlarmName.PROBE_STUCK,
            AlarmName.PROBE_IMPLAUSIBLE,
            AlarmName.PROBES_DISAGREE);

    /** Why each alarm means nothing just now; empty for one that means something. */
    private record Reasons(
            Optional<Suppression> startSetTests,
            Optional<Suppression> gelPoint,
            Optional<Suppression> pastGelPoint,
            Optional<Suppression> stalled,
            Optional<Suppression> scorchRisk,
            Optional<Suppression> ofTheProbe) {
        static final Reasons NONE = new Reasons(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private final AlarmBoard board;
    private final Stages stages;
    private final SetTests tests;
    private final SugarIn sugar;
    private final ColdAddition cold;
    private Reasons reasons = Reasons.NONE;

    Suppressions(AlarmBoard board, Stages stages, SetTests tests, SugarIn sugar, ColdAddition cold) {
        this.board = board;
        this.stages = stages;
        this.tests = tests;
        this.sugar = sugar;
        this.cold = cold;
    }

    /**
     * Suppresses what means nothing by now; to be called when a second has ended.
     *
     * @param setTest whether the pan stands off the heat for a set test, by its readings
     * @param windowUnseen whether the test window is open by what was known before the probe was blind
     * @param gelCalled whether the gel point was called
     */
    void judge(double t, boolean setTest, boolean windowUnseen, boolean gelCalled, List<CookEvent> events) {
        Optional<Suppression> blind = blind();
        Optional<Suppression> atGel = when(gelCalled, Suppression.GEL_POINT);
        Optional<Suppression> past = when(board.present(AlarmName.PAST_GEL_POINT), Suppression.PAST_GEL_POINT);
        Optional<Suppression> tested = when(setTest || tests.away(t, stages.stage()), Suppression.SET_TEST);
        Optional<Suppression> set = when(tests.set(), Suppression.SET);
        Optional<Suppression> testing = either(set, when(tests.testing(t, stages.stage()), Suppression.SET_TEST));
        Optional<Suppression> chilled = when(sugar.going() || (cold.seen() && !cold.late()), Suppression.COLD_ADDED);
        Optional<Suppression> setOrBlind = either(set, blind);
        Optional<Suppression> tooLate = either(testing, past);
        Optional<Suppression> unforeseen = windowUnseen ? Optional.empty() : blind;
        Optional<Suppression> startSetTests = either(either(tooLate, atGel), unforeseen);
        Optional<Suppression> gelPoint = either(tooLate, blind);
        Optional<Suppression> stalled = either(either(setOrBlind, tested), chilled);
        // who sees the pan no more must still be told to take it off: it was past its set when it was seen last
        Reasons now = new Reasons(startSetTests, gelPoint, testing, stalled, setOrBlind, set);
        if (!now.equals(reasons)) {
            reasons = now;
            suppress(t, now, events);
        }
    }

    private void suppress(double t, Reasons why, List<CookEvent> events) {
        board.suppress(t, AlarmName.START_SET_TESTS, why.startSetTests(), events);
        board.suppress(t, AlarmName.GEL_POINT, why.gelPoint(), events);
        board.suppress(t, AlarmName.PAST_GEL_POINT, why.pastGelPoint(), events);
        board.suppress(t, AlarmName.STALLED, why.stalled(), events);
        board.suppress(t, AlarmName.SCORCH_RISK, why.scorchRisk(), events);
        for (AlarmName name : OF_THE_PROBE) {
            board.suppress(t, name, why.ofTheProbe(), events);
        }
    }

    private Optional<Suppression> blind() {
        return either(
                when(board.present(AlarmName.PROBE_SILENT), Suppression.PROBE_SILENT),
                when(board.present(AlarmName.PROBE_OUT_OF_PAN), Suppression.PROBE_OUT_OF_PAN));
    }

    private static Optional<Suppression> when(boolean so, Suppression reason) {
        return so ? Optional.of(reason) : Optional.empty();
    }

    private static Optional<Suppression> either(Optional<Suppression> first, Optional<Suppression> second) {
        return first.isPresent() ? first : second;
    }
}
