package spoonfall.words;

import java.util.Locale;
import spoonfall.cook.calm.Lasting;

/** What is said of the service itself, with marks. */
public final class ServiceWords {
    private ServiceWords() {}

    /** The wall clock was set, forward when positive. */
    public static String clockSet(long byMillis) {
        return String.format(
                Locale.ROOT,
                "The clock of this computer was set %s by %s. The times shown here go by the new one.",
                byMillis > 0 ? "forward" : "back",
                Lasting.minutes(Math.abs(byMillis) / 1000.0));
    }

    /** So many readings were not taken, up to second {@code t} of the cook. */
    public static String dropped(long readings, double t) {
        String which = readings == 1 ? "A reading was" : readings + " readings were";
        return String.format(
                Locale.ROOT,
                "%s lost until {clock:%.0f}: more came than this computer could take. Look at the pan yourself.",
                which,
                t);
    }
}
