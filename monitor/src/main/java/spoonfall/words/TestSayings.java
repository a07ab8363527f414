package spoonfall.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookStatus;
import spoonfall.cook.SetTest;
import spoonfall.cook.Stage;
import spoonfall.cook.WentIn;
import spoonfall.cook.calm.CalmTime;
import spoonfall.cook.settest.SetTestsNow;

/** What is said about set tests, where that is more to the point than what the stage says. */
final class TestSayings {
    private static final double SOON_S = 30;

    private TestSayings() {}

    /** What the stage says, or what the set tests say over it; {@code nextAt} is when the next one is due, calmed; {@code falls} whether its reading falls. */
    static Saying over(
            Saying plain,
            SetTestsNow tests,
            Optional<CalmTime.Shown> nextAt,
            CookStatus status,
            boolean falls,
            List<CookAlarm> alarms) {
        return saying(plain, tests, nextAt, status, falls, alarms).orElse(plain);
    }

    private static Optional<Saying> saying(
            Saying plain,
            SetTestsNow tests,
            Optional<CalmTime.Shown> nextAt,
            CookStatus status,
            boolean falls,
            List<CookAlarm> alarms) {
        if (tests.set()) {
            return Optional.of(new Saying(
                    "Set. The boil is over.",
                    "Leave it off the heat.",
                    "Hot sugar sticks and burns: fill the jars with care."));
        }
        Optional<SetTest> open = tests.open();
        if (open.isPresent()) {
            return Optional.of(testing(open.get(), status));
        }
        boolean trouble = alarms.stream()
                .anyMatch(alarm -> alarm.state().active() && Sentences.tellsMoreThanTheStage(alarm.name()));
        if (trouble || !status.fresh()) {
            return Optional.empty();
        }
        Stage stage = status.stage();
        Optional<SetTest.Seen> seen = tests.last().flatMap(SetTest::seen);
        if (tests.goesBack() && !stage.boiling() && status.wentIn() == WentIn.NOTHING) {
            return Optional.of(new Saying(
                    "Not yet. Back on the heat.",
                    next(tests, nextAt, "The next test is") + ".",
                    "Stir the base as it comes back to the boil."));
        }
        boolean early = seen.isEmpty()
                && stage == Stage.TEST_WINDOW
                && nextAt.map(at -> at.t() - status.t()).orElse(0.0) > SOON_S;
        boolean between = seen.isPresent() && stage == Stage.ROLLING_BOIL && !falls;
        if (early || between) {
            String what = early ? "Test the set: it tells most" : "The next test is";
            return Optional.of(new Saying(plain.state(), next(tests, nextAt, what) + ".", plain.note()));
        }
        return Optional.empty();
    }

    private static Saying testing(SetTest test, CookStatus status) {
        if (status.t() < test.plateDueT()) {
            return new Saying(
                    "Testing the set.",
                    "Leave the pan off the heat.",
                    "Hot sugar sticks and burns: take it with a spoon, and let it cool before you touch it.");
        }
        return new Saying("The plate is ready.", "Push it with a finger.", "Then say what you saw.");
    }

    private static String next(SetTestsNow tests, Optional<CalmTime.Shown> nextAt, String what) {
        double atC = tests.aim().waterBoil().temperatureC() + tests.nextRiseC();
        String when = nextAt.map(at -> ", " + Minutes.in(at.howLong())).orElse("");
        return String.format(Locale.ROOT, "%s at {temp:%.1f}%s", what, atC, when);
    }
}
