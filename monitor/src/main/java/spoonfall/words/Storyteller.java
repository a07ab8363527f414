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

    /** What falls by that over the last two minutes, and is lower than it was a moment ago, is said to fall. */
    private static final double FALLS_PER_MIN_C = -0.2;

    private static final double MOMENT_S = 15;

    private final boolean byHand;
    private final Settled<Boolean> climbsSlowly = new Settled<>(SLOWLY_AFTER_S);
    private double markedC = Double.NaN;
    private double markedT = Double.NEGATIVE_INFINITY;

    /** Where it was one moment to two ago. */
    private double momentAgoC = Double.NaN;

    /** The story of a cook whose thermometer speaks by itself, or is read by hand. */
    public Storyteller(Pace pace) {
        byHand = pace == Pace.BY_HAND;
    }

    /** Takes note of how the pan is where nothing is shown of it, and returns whether it is said to climb slowly. */
    public boolean follow(CookStatus status) {
        status.temperatureC().ifPresent(shownC -> remember(status.t(), shownC));
        return climbsSlowly.settle(status.t(), status.ratePerMinC().orElse(1) < HARDLY_MOVES_PER_MIN_C);
    }

    private Way way(CookStatus status) {
        boolean slow = follow(status);
        if (status.ratePerMinC().orElse(0) < FALLS_PER_MIN_C
                && (byHand || status.temperatureC().orElse(Double.NaN) < momentAgoC)) {
            return Way.FALLS;
        }
        return slow ? Way.SLOWLY : Way.STEADILY;
    }

    private void remember(double t, double shownC) {
        if (t - markedT >= MOMENT_S) {
            momentAgoC = markedC;
            markedC = shownC;
            markedT = t;
        }
    }

    /** What to show now, where nothing is to be prepared. */
    public Outlook tell(
            CookStatus status, Optional<CalmForecast.Shown> foretold, List<CookAlarm> alarms, SetTestsNow tests) {
        return tell(status, foretold, alarms, tests, Optional.empty());
    }

    /**
     * What to show now.
     *
     * @param status how the pan is; not older than the last one
     * @param foretold what is told of the forecast, here and elsewhere
     * @param alarms those that stand, most urgent first
     * @param tests how the set tests stand, and what the cook is measured against by now
     * @param toPrepare what is to be prepared now, such as "Warm the jars"
     */
    public Outlook tell(
            CookStatus status,
            Optional<CalmForecast.Shown> foretold,
            List<CookAlarm> alarms,
            SetTestsNow tests,
            Optional<String> toPrepare) {
        double t = status.t();
        Optional<Expected> expected = foretold.map(CalmForecast.Shown::window)
                .filter(window -> !window.howLong().isUnknown())
                .map(window -> new Expected(window.t() - t, Minutes.in(window.howLong())));
        Way way = way(status);
        Saying plain = new Sentences(tests.aim(), byHand, toPrepare).say(status, alarms, expected, way);
        Optional<CalmTime.Shown> nextTest = foretold.flatMap(CalmForecast.Shown::nextTest);
        return new Outlook(
                TestSayings.over(plain, tests, nextTest, status, way == Way.FALLS, alarms),
                List.of(),
                foretold.map(shown -> new Fan(tests.aim()).of(status, shown.gel()))
                        .orElse(List.of()));
    }
}
