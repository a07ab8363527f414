package spoonfall.cook.calm;

/** Says how long something lasted, in minutes. */
public final class Lasting {
    private Lasting() {}

    /** Such as "3 minutes" or "a minute"; {@code s} seconds long. */
    public static String minutes(double s) {
        long minutes = Math.max(1, Math.round(s / 60));
        return minutes == 1 ? "a minute" : minutes + " minutes";
    }
}
