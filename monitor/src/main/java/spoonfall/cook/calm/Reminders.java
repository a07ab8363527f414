package spoonfall.cook.calm;

import java.util.List;
import java.util.Optional;
import spoonfall.cook.CookEvent;
import spoonfall.cook.Forecast;
import spoonfall.cook.ReminderName;
import spoonfall.cook.Stage;
import spoonfall.cook.signal.Signals;

/** Reminds the cook of what is to be done ahead. The numbers are common practice, no source. */
public final class Reminders {
    /** Syrup so thick sticks to the base. */
    private static final double THICK = 0.58;

    private static final double UNSTIRRED_S = 4 * 60;
    private static final double STIR_EVERY_S = 5 * 60;

    /** So often without seeing whether anybody stirs. */
    private static final double BLIND_EVERY_S = 6 * 60;

    private final Due plates = new Due(ReminderName.CHILL_PLATES.leadS());
    private final Due jars = new Due(ReminderName.WARM_JARS.leadS());
    private final StirWatch stirs = new StirWatch();
    private final Quiet quiet = new Quiet();
    private double thickT = Double.NaN;
    private double saidStirT = Double.NEGATIVE_INFINITY;

    /** Forgets the way here, but not what was said. */
    public void restart() {
        stirs.restart();
        thickT = Double.NaN;
    }

    /** Ends a second in which the pan was seen to boil or not; {@code solids} is a fraction by mass. */
    public void endSecond(
            Signals now, Stage stage, double solids, Optional<Forecast> forecast, List<CookEvent> events) {
        double t = now.t();
        stirs.endSecond(now);
        quiet.follow(t, stage, forecast);
        if (stage != Stage.ROLLING_BOIL) {
            thickT = Double.NaN;
        } else if (Double.isNaN(thickT) && solids >= THICK) {
            thickT = t;
        }
        if (forecast.isPresent() && plates.comes(t, forecast.get().windowS())) {
            String at = clock(t + forecast.get().windowS());
            String text = "Put the plates in the freezer now: set tests at about " + at + ".";
            say(t, ReminderName.CHILL_PLATES, text, events); // the set tests need them: they wait for nothing
        }
        if (quiet.isAt(t)) {
            return;
        }
        if (forecast.isPresent() && jars.comes(t, forecast.get().etaS())) {
            String at = clock(t + forecast.get().etaS());
            say(t, ReminderName.WARM_JARS, "Warm the jars now: it sets at about " + at + ".", events);
        } else if (!Double.isNaN(thickT) && solids >= THICK) {
            remindOfStirring(t, stirs.sees(now), events);
        }
    }

    private void remindOfStirring(double t, boolean sees, List<CookEvent> events) {
        double sinceT = Math.max(thickT, sees ? stirs.stirredT() : saidStirT);
        double everyS = sees ? STIR_EVERY_S : BLIND_EVERY_S;
        if (t - sinceT < (sees ? UNSTIRRED_S : BLIND_EVERY_S) || t - saidStirT < everyS) {
            return;
        }
        saidStirT = t;
        String text = sees
                ? "Stir down to the base: nobody seems to have since " + clock(sinceT) + "."
                : "Stir down to the base now and then: it is thick by now.";
        say(t, ReminderName.STIR, text, events);
    }

    private void say(double t, ReminderName name, String text, List<CookEvent> events) {
        quiet.told(t);
        events.add(new CookEvent.Reminded(t, name, text));
    }

    /** The mark of a moment, to be told as the reader's time of day. */
    private static String clock(double t) {
        return "{clock:" + Math.round(t) + "}";
    }
}
