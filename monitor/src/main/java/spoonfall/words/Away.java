package spoonfall.words;

import java.util.Locale;
import spoonfall.cook.calm.Lasting;

/** What is said when the watch goes on after nobody watched. */
public final class Away {
    private Away() {}

    /**
     * One sentence or two, with marks.
     *
     * @param t seconds of the cook at which the watch went on
     * @param forS for how many seconds nobody watched
     */
    public static String text(double t, double forS) {
        long seconds = Math.max(1, Math.round(forS));
        String lasting = forS >= 60 ? Lasting.minutes(forS) : seconds == 1 ? "a second" : seconds + " seconds";
        return String.format(
                Locale.ROOT, "Spoonfall was away for %s, until {clock:%.0f}. Nobody watched the pan then.", lasting, t);
    }
}
