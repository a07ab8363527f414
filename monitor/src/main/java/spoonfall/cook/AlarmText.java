package spoonfall.cook;

import java.util.Locale;

/**
 * What an alarm says. Marks such as <code>{temp:98.2}</code> stand for what is shown in the cook's own units.
 *
 * @param title one sentence: what is so
 * @param act one sentence: what to do
 */
record AlarmText(String title, String act) {
    static final AlarmText NONE = new AlarmText("", "");

    static AlarmText startSetTests() {
        return new AlarmText("Start the set tests now.", "Take the pan off the heat for each one.");
    }

    static AlarmText gelPoint(CookSettings settings) {
        return new AlarmText(
                mark("It has reached the setting point, {temp:%.1f}.", settings.gelPointC()),
                "Take it off the heat and test the set.");
    }

    static AlarmText pastGelPoint() {
        return new AlarmText("It is past the setting point.", "Off the heat now, or it turns bitter.");
    }

    static AlarmText stalled(CookSettings settings, Signals signals, boolean cooling) {
        double shortC = Math.max(0, settings.gelPointC() - signals.levelC());
        String title = cooling
                ? "It is cooling, {diff:%.1f} short of setting."
                : "It has stopped climbing, {diff:%.1f} short of setting.";
        return new AlarmText(mark(title, shortC), "Is the heat on?");
    }

    static AlarmText scorchRisk() {
        return new AlarmText(
                "The base may be catching: it climbs faster than water can leave.",
                "Stir down to the base, and turn the heat down.");
    }

    static AlarmText probeSilent(double lastHeardT) {
        return new AlarmText(
                mark("No word from the probe since {clock:%.0f}.", lastHeardT),
                "Check its cable, and watch the pan yourself.");
    }

    static AlarmText probeOutOfPan(Signals signals) {
        return new AlarmText(
                mark("The reading fell {diff:%.0f} in a few seconds.", signals.fallC()),
                "Is the probe still in the pan?");
    }

    private static String mark(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }
}
