package spoonfall.lesson;

/** What the record says was done, in words. */
final class Told {
    private static final double SECONDS_UNTIL_S = 100;

    private Told() {}

    /** What a stage of that name on the wire is, in one sentence. */
    static String stage(String stage) {
        return switch (stage) {
            case "warming" -> "It is warming up.";
            case "simmering" -> "It simmers.";
            case "coming-to-the-boil" -> "It comes to the boil.";
            case "rolling-boil" -> "It boils hard.";
            case "test-window" -> "It is close to setting.";
            case "at-gel-point" -> "It is at the setting point.";
            case "past-gel-point" -> "It is past the setting point.";
            case "off-the-heat" -> "It is off the heat.";
            default -> "The cook went on.";
        };
    }

    /** What was done, and how long after; empty if that is not worth telling. */
    static String done(String what, double afterS) {
        String after = after(afterS);
        return switch (what) {
            case "acknowledged" -> "The call was answered " + after + ".";
            case "shelved" -> "The call was put aside " + after + ".";
            case "cleared" -> "It was no longer so " + after + ".";
            case "tested" -> "The set was tested " + after + ".";
            case "off" -> "The pan came off the heat " + after + ".";
            default -> "";
        };
    }

    /** What was seen in a set test. */
    static String seen(double afterS, String answer) {
        return "What was seen " + after(afterS) + ": " + answer.replace('-', ' ') + ".";
    }

    private static String after(double s) {
        if (s < 1.5) {
            return "at once";
        }
        if (s < SECONDS_UNTIL_S) {
            return "after " + Math.round(s) + " seconds";
        }
        long minutes = Math.round(s / 60);
        return "after " + minutes + " minutes";
    }
}
