package spoonfall.cook.monitor;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Stage;
import spoonfall.cook.TestWord;
import spoonfall.cook.alarm.AlarmBoard;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.pan.PanWatch;
import spoonfall.cook.settest.SetTests;
import spoonfall.cook.settest.SetTestsNow;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;

/** What somebody says of set tests, and what the watch of the pan makes of it. */
public final class PanTalk {
    /** A reading so far below the latest height has fallen, in °C. */
    private static final double FELL_C = 0.5;

    private final PanWatch watch;
    private final AlarmBoard board;

    PanTalk(PanWatch watch, AlarmBoard board) {
        this.watch = watch;
        this.board = board;
    }

    /** Takes a word of {@code t}, which is {@code nowMillis} of the cook; what comes of it goes to {@code events}. */
    void say(double t, long nowMillis, TestWord word, List<CookEvent> events) {
        SetTests tests = watch.tests();
        Stages stages = watch.stages();
        CookSettings before = tests.aim();
        boolean wasSet = tests.set();
        tests.say(t, nowMillis, word, panForATest(t)).ifPresent(events::add);
        if (tests.set() != wasSet) {
            // what the readings do meanwhile is not the pan's way to its set
            watch.probe().breakOff();
            enter(t, tests.set() ? stages.end() : stages.goOn(), events);
        }
        if (!tests.aim().equals(before)) {
            watch.alarms().aim(t, tests.aim(), events);
            watch.forecaster().aim(tests.aim());
            enter(t, stages.aim(tests.aim()), events);
        }
        tests.endSecond(t, board, events);
        watch.alarms().suppress(t, events);
    }

    /** How the set tests stand. */
    SetTestsNow tests(double t) {
        SetTests tests = watch.tests();
        return new SetTestsNow(tests.all(), tests.aim(), tests.nextRiseC(), nextInS(t), tests.goesBack());
    }

    /** Seconds until the next set test is due, by the forecast; empty when that is not known. */
    OptionalDouble nextInS(double t) {
        return watch.forecast(t).isPresent()
                ? watch.forecaster().untilS(t, watch.tests().nextRiseC())
                : OptionalDouble.empty();
    }

    private void enter(double t, boolean changed, List<CookEvent> events) {
        if (changed) {
            watch.tellStage(t, events);
        }
    }

    /** The pan as it came off the heat: whoever says so a little late finds the reading falling already. */
    private SetTests.Pan panForATest(double t) {
        Optional<Signals> trusted = watch.probe().trusted(t);
        if (trusted.isEmpty()) {
            return new SetTests.Pan(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        }
        Signals now = trusted.get();
        Forecaster forecaster = watch.forecaster();
        boolean fell = watch.stages().stage() == Stage.OFF_THE_HEAT || now.peakC() - now.levelC() > FELL_C;
        double temperatureC = forecaster.boiledAtC(t, fell ? now.peakC() : now.trendC());
        double riseC = temperatureC - watch.settings().waterBoil().temperatureC();
        double solids = forecaster.solids(Math.max(0, riseC));
        return new SetTests.Pan(
                OptionalDouble.of(temperatureC), OptionalDouble.of(solids), forecaster.expectedPerMinC(riseC));
    }
}
