package spoonfall.words;

import java.util.List;
import java.util.Optional;
import spoonfall.cook.CalmTime;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;

/**
 * Tells the story of one cook: feed it every status, and it says what to show. Remembers which minutes it last named,
 * so that they stay calm. What comes up is the afternoon's to say.
 *
 * <p>Not safe for use by several threads.
 */
public final class Storyteller {
    private final boolean byHand;
    private Fan fan;
    private Sentences sentences;
    private final CalmTime window = new CalmTime();
    private final CalmTime gel = new CalmTime();

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
    }

    /**
     * What to show now.
     *
     * @param status how the pan is; not older than the last one
     * @param alarms those that stand, most urgent first
     */
    public Outlook tell(CookStatus status, List<CookAlarm> alarms) {
        Optional<Expected> expected = status.forecast().map(forecast -> expect(status.t(), forecast));
        if (expected.isEmpty()) {
            window.forget();
            gel.forget();
        }
        return new Outlook(
                sentences.say(status, alarms, expected),
                List.of(),
                status.forecast().map(forecast -> fan.of(status, forecast)).orElse(List.of()));
    }

    private Expected expect(double t, Forecast forecast) {
        double windowT = window.settle(t, forecast.windowS());
        double gelT = gel.settle(t, forecast.etaS());
        double moved = gelT - (t + forecast.etaS());
        return new Expected(windowT, gelT, t + forecast.lowS() + moved, t + forecast.highS() + moved);
    }
}
