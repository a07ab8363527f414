package spoonfall.cook.alarm;

import java.util.Locale;
import java.util.OptionalDouble;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Pace;
import spoonfall.cook.Stage;
import spoonfall.cook.Unrecorded;

/**
 * What an alarm says. It stands for minutes and must not grow untrue meanwhile: it says since when and from where, not for how
 * long and how far. Marks such as <code>{temp:98.2}</code> stand for what is shown in the cook's own units.
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
                mark("It is more than {diff:%.1f} past the setting point.", Math.max(0, pastC)),
                "Off the heat now, or it turns bitter.");
    }

    /** What is likely of a pan that cools, and asked. */
    public enum Cooling {
        /** It was not close to setting. */
        HEAT_IS_OFF("Is the heat on?"),
        /** It was in the test window. */
        MAY_BE_SET("Is it set, or should it be back on the heat?"),
        /** A test found it not set yet. */
        WAS_NOT_SET("The last test was not set: back on the heat?");

        private final String act;

        Cooling(String act) {
            this.act = act;
        }
    }

    /** It has been cooling since {@code sinceT}, from {@code fromC}. */
    public static AlarmText cooling(double fromC, double sinceT, Cooling likely) {
        return new AlarmText(
                String.format(Locale.ROOT, "It is cooling from {temp:%.1f}, since {clock:%.0f}.", fromC, sinceT),
                likely.act);
    }

    /** It has stood at one height since {@code sinceT}. */
    public static AlarmText standingStill(double sinceT) {
        return new AlarmText(
                mark("No water has left since {clock:%.0f}.", sinceT), "Is a lid on, or the heat too low?");
    }

    /** The same {@code byC} short of the gel point, though that was called. */
    public static AlarmText standingShort(double sinceT, double byC) {
        return new AlarmText(
                String.format(
                        Locale.ROOT,
                        "No water has left since {clock:%.0f}, and it is {diff:%.1f} short of the setting point.",
                        sinceT,
                        byC),
                "If it has not set: is a lid on, or the heat too low?");
    }

    /** Something cold went in at {@code sinceT}; at its pace the pan boils again at {@code boilsT}. */
    public static AlarmText coldAndSlow(double sinceT, double boilsT) {
        return new AlarmText(
                stillNotBoiling(sinceT),
                mark("At this pace it takes until about {clock:%.0f}: turn the heat up?", boilsT));
    }

    /** The same of one that is {@code shortC} below the boil and warms no further. */
    public static AlarmText coldAndNoWarmer(double sinceT, double shortC) {
        return new AlarmText(
                stillNotBoiling(sinceT),
                mark("It is {diff:%.1f} short and warms no further: turn the heat up?", shortC));
    }

    private static String stillNotBoiling(double sinceT) {
        return mark("Something cold went in at {clock:%.0f}, and the pan still does not boil.", sinceT);
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

    /** The reading fell from {@code fromC} as no pan does, as in the air. */
    public static AlarmText probeOutOfPan(double fromC) {
        return new AlarmText(
                mark("The reading fell from {temp:%.1f} faster than a pan can cool.", fromC),
                "Is the probe still in the pan? Or did something cold go in?");
    }

    /** It has shown one value since {@code sinceT} in a pan at {@code stage}. */
    public static AlarmText probeStuck(double sinceT, Stage stage) {
        String pan = stage.boiling() ? "though the pan boils" : "though the pan is on its way";
        String title = String.format(
                Locale.ROOT, "The reading has stayed exactly the same since {clock:%.0f}, %s.", sinceT, pan);
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
