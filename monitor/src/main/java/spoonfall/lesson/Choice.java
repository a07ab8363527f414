package spoonfall.lesson;

import java.util.List;

/** What somebody who stands at the pan may do; the learner is asked which. */
public enum Choice {
    /** Against catching. */
    STIR("Stir the base and turn the heat down."),
    /** Against standing still. */
    HEAT("See whether the heat is on."),
    /** To know more. */
    TEST("Test the set."),
    /** It may be done. */
    OFF("Take it off the heat."),
    /** What it says may not be so. */
    THERMOMETER("See to the thermometer."),
    /** Wait and watch. */
    NOTHING("Nothing yet.");

    private static final List<Choice> AT_THE_PAN = List.of(STIR, TEST, OFF, NOTHING);
    private static final List<Choice> AT_A_STANDSTILL = List.of(HEAT, STIR, TEST, NOTHING);
    private static final List<Choice> AT_THE_THERMOMETER = List.of(THERMOMETER, STIR, OFF, NOTHING);

    private final String words;

    Choice(String words) {
        this.words = words;
    }

    /** One sentence that says it. */
    public String words() {
        return words;
    }

    /** What to choose from when an alarm of that name on the wire calls; nothing where the pan leaves no choice. */
    static List<Choice> atAlarm(String alarm) {
        return switch (alarm) {
            case "plate-ready", "not-recording" -> List.of();
            case "stalled" -> AT_A_STANDSTILL;
            case "probe-silent", "probe-out-of-pan", "probe-stuck", "probe-implausible", "probes-disagree" ->
                AT_THE_THERMOMETER;
            default -> AT_THE_PAN;
        };
    }

    /** What to choose from when the stage of that name on the wire begins: only the rolling boil is worth a question of its own. */
    static List<Choice> atStage(String stage) {
        return stage.equals("rolling-boil") ? AT_THE_PAN : List.of();
    }
}
