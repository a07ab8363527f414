package spoonfall.cook.alarm;

import java.util.Locale;
import java.util.OptionalDouble;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.Unrecorded;
import spoonfall.cook.calm.Lasting;

/**
 * What an alarm says. Marks such as <code>{temp:98.2}</code> stand for what is shown in the cook's own units.
 *
 * @param title one sentence: what is so
 * @param act one sentence: what to do
 */
public record AlarmText(String title, String act) {
    /** Of an alarm that was never raised. */
    public static final AlarmText NONE = new AlarmText("", "");

    /** The test window has opened. */
    public static AlarmText startSetTests() {
        return new AlarmText(
                "Start the set tests now.", "Take the pan off the heat for each one: a plate needs 60 to 120 seconds.");
    }

    /** Nothing was read of the pan since {@code sinceT}: what was known then says that it is time. */
    public static AlarmText startSetTestsUnseen(double sinceT) {
        return new AlarmText(
                "Start the set tests: it should be time.",
                mark(
                        "Nothing was read since {clock:%.0f}; by what was known then it is time."
                                + " Take the pan off the heat for each one, and go by the plate alone.",
                        sinceT));
    }

    /** The reading has gone on lower since {@code sinceT}, where it dropped. */
    public static AlarmText startSetTestsShifted(double sinceT) {
        return new AlarmText(
                "Start the set tests: it should be time.",
                mark(
                        "The reading dropped suddenly at {clock:%.0f}. If nothing went into the pan, the probe has moved, and it is time:"
                                + " look where the probe is, take the pan off the heat for each test, and go by the plate alone."
                                + " If something went in, take no notice.",
                        sinceT));
    }

    /** The setting point of {@code settings} is reached. */
    public static AlarmText gelPoint(CookSettings settings) {
        return new AlarmText(
                mark("It has reached the setting point, {temp:%.1f}.", settings.gelPointC()),
                "Take it off the heat and test the set.");
    }

    /** It is {@code pastC} past the setting point, in °C. */
    public static AlarmText pastGelPoint(double pastC) {
        return new AlarmText(
                mark("It is {diff:%.1f} past the setting point.", Math.max(0, pastC)),
                "Off the heat now, or it turns bitter.");
    }

    /** It has fallen by {@code byC} since {@code sinceT}, in the test window or short of it. */
    public static AlarmText cooling(double byC, double sinceT, boolean inWindow) {
        return new AlarmText(
                String.format(Locale.ROOT, "It is cooling: {diff:%.1f} down since {clock:%.0f}.", byC, sinceT),
                inWindow ? "Is it set, or should it be back on the heat?" : "Is the heat on?");
    }

    /** It has stood at one height for {@code forS} seconds. */
    public static AlarmText standingStill(double forS) {
        return new AlarmText(
                "No water has left for " + Lasting.minutes(forS) + ".", "Is a lid on, or the heat too low?");
    }

    /** The same {@code byC} short of the gel point, though that was called. */
    public static AlarmText standingShort(double forS, double byC) {
        return new AlarmText(
                String.format(
                        Locale.ROOT,
                        "No water has left for %s, and it is {diff:%.1f} short of the setting point.",
                        Lasting.minutes(forS),
                        byC),
                "If it has not set: is a lid on, or the heat too low?");
    }

    /** Something cold went in {@code agoS} seconds ago; it is {@code shortC} below the boil and needs so much longer. */
    public static AlarmText coldAndSlow(double agoS, double shortC, double untilBoilS) {
        String act = String.format(
                Locale.ROOT,
                "At this pace it takes %s more for the last {diff:%.1f}: turn the heat up?",
                Lasting.minutes(untilBoilS),
                shortC);
        return new AlarmText(stillNotBoiling(agoS), act);
    }

    /** The same where it warms no further. */
    public static AlarmText coldAndNoWarmer(double agoS, double shortC) {
        return new AlarmText(
                stillNotBoiling(agoS), mark("It is {diff:%.1f} short and warms no further: turn the heat up?", shortC));
    }

    private static String stillNotBoiling(double agoS) {
        return "Something cold went in " + Lasting.minutes(agoS) + " ago, and the pan still does not boil.";
    }

    /** It climbs by {@code perMinC} a minute where the water that leaves allows {@code allowedPerMinC}; {@code shakes} if it scatters more besides. */
    public static AlarmText scorchRisk(double perMinC, double allowedPerMinC, boolean shakes) {
        String title = String.format(
                Locale.ROOT,
                "The base may be catching: it climbs {diff:%.1f} a minute%s; the water that leaves allows {diff:%.1f}.",
                perMinC,
                shakes ? " and jumps about more than before" : "",
                Math.max(0.1, allowedPerMinC));
        return new AlarmText(title, "Stir down to the base, and turn the heat down.");
    }

    /** Nothing was heard, or typed where it is read by hand, since {@code lastHeardT}. */
    public static AlarmText probeSilent(double lastHeardT, Pace pace) {
        if (!pace.shows()) {
            return new AlarmText(
                    mark("No reading was typed since {clock:%.0f}.", lastHeardT),
                    "Read the thermometer, and type what it shows.");
        }
        return new AlarmText(
                mark("No word from the probe since {clock:%.0f}.", lastHeardT),
                "Check its cable, and watch the pan yourself.");
    }

    /** The reading fell by {@code fallC} °C, as in the air. */
    public static AlarmText probeOutOfPan(double fallC) {
        return new AlarmText(
                mark("The reading fell {diff:%.0f} in a few seconds.", fallC),
                "Is the probe still in the pan? Or did something cold go in?");
    }

    /** It has shown one value for {@code runS} seconds in a pan at {@code stage}. */
    public static AlarmText probeStuck(double runS, Stage stage) {
        String pan = stage.boiling() ? "though the pan boils" : "though the pan is on its way";
        String title =
                String.format(Locale.ROOT, "The reading has stayed exactly the same for %.0f seconds, %s.", runS, pan);
        return new AlarmText(
                title, "Is the heat on? Else unplug the thermometer and plug it in again, and watch the pan yourself.");
    }

    /** It jumped up by {@code jumpedUpC} at once, or jumps about where that is empty. */
    public static AlarmText probeImplausible(OptionalDouble jumpedUpC) {
        if (jumpedUpC.isPresent()) {
            return new AlarmText(
                    mark("The reading jumped up {diff:%.0f} at once; no pan heats so fast.", jumpedUpC.getAsDouble()),
                    "Is the tip on the base, or the plug loose?");
        }
        return new AlarmText(
                "The reading jumps about, or is one that no preserve can have.",
                "Check the plug and the cable, and watch the pan yourself.");
    }

    /** Two thermometers show what cannot both be so, in °C; {@code belief} says which to believe, and why. */
    public static AlarmText probesDisagree(String first, double firstC, String second, double secondC, String belief) {
        String title = String.format(
                Locale.ROOT,
                "Two thermometers in one pan differ by {diff:%.1f}: %s shows {temp:%.1f}, %s shows {temp:%.1f}.",
                Math.abs(firstC - secondC),
                first,
                firstC,
                second,
                secondC);
        return new AlarmText(title, belief);
    }

    /** What happens cannot be written down. */
    public static AlarmText notRecording(Unrecorded trouble) {
        return new AlarmText("This cook is not being recorded: " + trouble.why() + ".", trouble.act());
    }

    private static String mark(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }
}
