package spoonfall.words;

import java.util.List;
import java.util.Optional;
import spoonfall.cook.CalmTime;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;
import spoonfall.cook.SetTestsNow;

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
    private final CalmTime window = new CalmTime();
    private final CalmTime gel = new CalmTime();
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
        window.forget();
        gel.forget();
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
        Optional<Expected> expected = status.forecast().map(forecast -> expect(t, forecast));
        if (expected.isEmpty()) {
            window.forget();
            gel.forget();
        }
        boolean slow = climbsSlowly.settle(t, status.ratePerMinC().orElse(1) < HARDLY_MOVES_PER_MIN_C);
        Saying plain = sentences.say(status, alarms, expected, slow);
        return new Outlook(
                TestSayings.over(plain, tests, theNext(t, tests), status, alarms),
                List.of(),
                status.forecast()
                        .map(forecast -> fan.of(status, calmed(t, forecast)))
                        .orElse(List.of()));
    }

    private Expected expect(double t, Forecast forecast) {
        double share = forecast.etaS() > 0 ? forecast.windowS() / forecast.etaS() : 1;
        CalmTime.Shown shown = window.settle(t, forecast.windowS(), share * forecast.lowS(), share * forecast.highS());
        return new Expected(shown.t() - t, Minutes.in(shown.howLong()));
    }

    /** The forecast that is drawn moves no more often than the one that is said. */
    private Forecast calmed(double t, Forecast forecast) {
        CalmTime.Shown shown = gel.settle(t, forecast.etaS(), forecast.lowS(), forecast.highS());
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
