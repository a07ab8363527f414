package spoonfall.words;

import java.util.List;
import java.util.Optional;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.cook.calm.CalmTime;
import spoonfall.cook.settest.SetTestsNow;

/**
 * Tells the story of one cook: feed it every status, and it says what to show. Remembers which minutes it last named,
 * so that they stay calm. What comes up is the afternoon's to say.
 *
 * <p>Not safe for use by several threads.
 */
public final class Storyteller {
    /** The pace of a minute wobbles more than the climb does. */
    private static final double SLOWLY_AFTER_S = 90;

    private static final double HARDLY_MOVES_PER_MIN_C = 0.03;

    private final boolean byHand;
    private Fan fan;
    private Sentences sentences;
    private final CalmForecast calm = new CalmForecast();
    private final CalmTime nextTest = new CalmTime();
    private final Settled<Boolean> climbsSlowly = new Settled<>(SLOWLY_AFTER_S);

    /** The story of a cook that is measured against {@code settings}. */
    public Storyteller(CookSettings settings) {
        this(settings, false);
    }

    private Storyteller(CookSettings settings, boolean byHand) {
        this.byHand = byHand;
        fan = new Fan(settings);
        sentences = new Sentences(settings, byHand);
    }

    /** The story of a cook whose thermometer somebody reads by hand. */
    public static Storyteller byHand(CookSettings settings) {
        return new Storyteller(settings, true);
    }

    /** The cook is measured against something else from now on: what comes up is still ahead. */
    public void aim(CookSettings settings) {
        fan = new Fan(settings);
        sentences = new Sentences(settings, byHand);
        calm.forget();
        nextTest.forget();
    }

    /**
     * What to show now.
     *
     * @param status how the pan is; not older than the last one
     * @param alarms those that stand, most urgent first
     * @param tests how the set tests stand
     */
    public Outlook tell(CookStatus status, List<CookAlarm> alarms, SetTestsNow tests) {
        double t = status.t();
        Optional<CalmForecast.Shown> calmed = status.forecast().map(forecast -> calm.settle(t, forecast));
        if (calmed.isEmpty()) {
            calm.forget();
        }
        Optional<Expected> expected = calmed.map(CalmForecast.Shown::window)
                .filter(window -> !window.howLong().isUnknown())
                .map(window -> new Expected(window.t() - t, Minutes.in(window.howLong())));
        boolean slow = climbsSlowly.settle(t, status.ratePerMinC().orElse(1) < HARDLY_MOVES_PER_MIN_C);
        Saying plain = sentences.say(status, alarms, expected, slow);
        return new Outlook(
                TestSayings.over(plain, tests, theNext(t, tests), status, alarms),
                List.of(),
                calmed.map(shown -> fan.of(status, drawn(t, status.forecast().orElseThrow(), shown.gel())))
                        .orElse(List.of()));
    }

    /** The forecast that is drawn moves no more often than the one that is said. */
    private static Forecast drawn(double t, Forecast forecast, CalmTime.Shown shown) {
        return new Forecast(
                forecast.windowS(),
                Math.max(0, shown.t() - t),
                Math.max(0, shown.fromT() - t),
                Math.max(0, shown.untilT() - t),
                forecast.perMinute());
    }

    private Optional<CalmTime.Shown> theNext(double t, SetTestsNow tests) {
        if (tests.nextInS().isEmpty()) {
            nextTest.forget();
            return Optional.empty();
        }
        double s = tests.nextInS().getAsDouble();
        return Optional.of(nextTest.settle(t, s, s, s));
    }
}
