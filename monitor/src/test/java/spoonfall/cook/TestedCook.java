package spoonfall.cook;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.lab.HandledPan;
import spoonfall.lab.PanSettings;
import spoonfall.probe.Reading;
import spoonfall.settest.Taster;
import spoonfall.settest.TestAnswer;
import spoonfall.settest.TestStep;

/** A cook from the cold pan to "set", in a simulated pan, by somebody who does what the real monitor says. */
final class TestedCook {
    private static final double LONGEST_S = 3 * 3600;
    private static final int MOST_TESTS = 8;

    private final SplittableRandom random;
    private final HandledPan pan;
    private final CookMonitor monitor;
    private final Taster taster;
    private final double trueC;
    private final List<CookEvent> events = new ArrayList<>();
    private double t;
    private int tests;
    private double secondPastC;
    private double endPastC;

    /** A cook whose preserve truly sets {@code offC} above or below what its recipe says. */
    TestedCook(SplittableRandom random, double offC) {
        this.random = random;
        PanSettings settings = new PanSettings(
                random.nextDouble(1.5, 3.5),
                random.nextDouble(0.38, 0.5),
                60,
                random.nextDouble(1.0, 1.8),
                random.nextDouble(0, 2000),
                random.nextDouble(4.2, 5.2),
                1,
                random.nextDouble(3, 7),
                random.nextDouble(0.04, 0.15),
                0.1);
        pan = new HandledPan(settings, random.nextLong());
        monitor = new CookMonitor(new CookSettings(WaterBoil.atElevation(settings.elevationM()), settings.riseC()), 0);
        taster = Taster.usual(random.split());
        trueC = settings.riseC() + offC;
    }

    /** Cooks to the end. */
    void cook() {
        boolean done = false;
        while (!done && t < LONGEST_S) {
            if (secondsPass(true, 1) && tests < MOST_TESTS) {
                // somebody was called, and takes as long to be there as people do
                secondsPass(true, random.nextInt(5, 30));
                done = test();
            }
        }
    }

    /** One test; whether it ended the cook. */
    private boolean test() {
        tests++;
        double pastC = pan.syrupRiseC() - trueC;
        secondPastC = tests <= 2 ? pastC : secondPastC;
        endPastC = pastC;
        secondsPass(false, random.nextInt(0, 8));
        String id = "test-" + tests;
        say(TestWord.begun(id, TestWord.USUAL_PLATE_S));
        secondsPass(false, random.nextInt(60, 140));
        TestStep step = taster.sees(-pastC);
        say(TestWord.seen(id, answer(step)));
        secondsPass(false, step == TestStep.SET ? 300 : random.nextInt(2, 10));
        return step == TestStep.SET;
    }

    private static TestAnswer answer(TestStep step) {
        return switch (step) {
            case FAR -> TestAnswer.RUNS;
            case NEAR -> TestAnswer.THICKENS;
            case NOT_YET -> TestAnswer.NOT_YET;
            case SET -> TestAnswer.WRINKLES;
        };
    }

    /** Lets time pass; whether somebody ought to test. */
    private boolean secondsPass(boolean onTheHeat, int seconds) {
        boolean called = false;
        for (int i = 0; i < seconds; i++) {
            t++;
            OptionalDouble shown = pan.second(onTheHeat);
            int before = events.size();
            events.addAll(
                    shown.isPresent()
                            ? monitor.accept(Reading.good("pan", nanos(), shown.getAsDouble(), ""))
                            : monitor.advanceTo(nanos()));
            called |= tests == 0 ? firstTestIsDue() : calledIn(events.subList(before, events.size()));
        }
        return called;
    }

    /** The page names the moment of the first test, within the window. */
    private boolean firstTestIsDue() {
        boolean open = monitor.status().stage() == Stage.TEST_WINDOW
                || monitor.status().stage().atOrPastGelPoint();
        return open && monitor.tests().nextInS().orElse(0) < 15;
    }

    private static boolean calledIn(List<CookEvent> fresh) {
        return fresh.stream()
                .anyMatch(event -> event instanceof CookEvent.AlarmChanged changed
                        && changed.change() == AlarmChange.RAISED
                        && (changed.alarm().name() == AlarmName.START_SET_TESTS
                                || changed.alarm().name() == AlarmName.GEL_POINT));
    }

    private void say(TestWord word) {
        events.addAll(monitor.say(word, nanos()));
    }

    private long nanos() {
        return Math.round(t * 1e9);
    }

    /** How many tests it took. */
    int tests() {
        return tests;
    }

    /** How far past its true set it was at the second test, or at the first if it ended there, in °C. */
    double secondPastC() {
        return secondPastC;
    }

    /** How far past its true set it ended, in °C. */
    double endPastC() {
        return endPastC;
    }

    /** Everything that happened. */
    List<CookEvent> events() {
        return events;
    }

    /** Whether somebody said that it was set. */
    boolean set() {
        return monitor.tests().set();
    }
}
