package spoonfall.words;

import java.util.List;
import java.util.Optional;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Pace;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.cook.calm.CalmTime;
import spoonfall.cook.settest.SetTestsNow;

/**
 * Tells the story of one cook: feed it every status, and it says what to show. Remembers how the pan climbed lately, so
 * that what it says of that stays calm. What comes up is the afternoon's to say.
 *
 * <p>Not safe for use by several threads.
 */
public final class Storyteller {
    /** The pace of a minute wobbles more than the climb does. */
    private static final double SLOWLY_AFTER_S = 90;

    private static final double HARDLY_MOVES_PER_MIN_C = 0.03;

    private final boolean byHand;
    private final Settled<Boolean> climbsSlowly = new Settled<>(SLOWLY_AFTER_S);

    /** The story of a cook whose thermometer speaks by itself, or is read by hand. */
    public Storyteller(Pace pace) {
        byHand = pace == Pace.BY_HAND;
    }

    /** Takes note of how the pan is where nothing is shown of it, and returns whether it is said to climb slowly. */
    public boolean follow(CookStatus status) {
        return climbsSlowly.settle(status.t(), status.ratePerMinC().orElse(1) < HARDLY_MOVES_PER_MIN_C);
    }

    /**
     * What to show now.
     *
     * @param status how the pan is; not older than the last one
     * @param foretold what is told of the forecast, here and elsewhere
     * @param alarms those that stand, most urgent first
     * @param tests how the set tests stand, and what the cook is measured against by now
     */
    public Outlook tell(
            CookStatus status, Optional<CalmForecast.Shown> foretold, List<CookAlarm> alarms, SetTestsNow tests) {
        double t = status.t();
        Optional<Expected> expected = foretold.map(CalmForecast.Shown::window)
                .filter(window -> !window.howLong().isUnknown())
                .map(window -> new Expected(window.t() - t, Minutes.in(window.howLong())));
        boolean slow = follow(status);
        Saying plain = new Sentences(tests.aim(), byHand).say(status, alarms, expected, slow);
        Optional<CalmTime.Shown> nextTest = foretold.flatMap(CalmForecast.Shown::nextTest);
        return new Outlook(
                TestSayings.over(plain, tests, nextTest, status, alarms),
                List.of(),
                foretold.map(shown -> new Fan(tests.aim()).of(status, shown.gel()))
                        .orElse(List.of()));
    }
}
