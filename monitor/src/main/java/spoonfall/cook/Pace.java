package spoonfall.cook;

/**
 * At what pace a thermometer speaks, and over how long its readings must be looked at. One that is read by hand says
 * something every minute or two, rounded to a mark of its scale: nothing that takes a moving reading (stuck, out of the
 * pan, catching) can be told from it. The numbers are common practice, no source.
 */
public enum Pace {
    /** It speaks by itself, every 0.1 to 10 s. */
    BY_ITSELF(8, 4, 45, 120, 0.6, 0.6, 8),
    /** Somebody types what it shows, every minute or two. */
    BY_HAND(0, 1, 400, 600, 1.2, 1.0, 0);

    /** So long after a reading by hand the pan is taken to have gone on as it did. */
    private static final double CARRIES_S = 150;

    private static final double HAND_INTERVALS = 2.5;
    private static final double HAND_FIRST_S = 300;
    private static final double HAND_LEAST_S = 180;
    private static final double HAND_MOST_S = 600;

    private final double levelS;
    private final int levelLeast;
    private final double quickS;
    private final double steadyS;
    private final double jumpC;
    private final double agreesC;
    private final double noticesS;

    Pace(double levelS, int levelLeast, double quickS, double steadyS, double jumpC, double agreesC, double noticesS) {
        this.levelS = levelS;
        this.levelLeast = levelLeast;
        this.quickS = quickS;
        this.steadyS = steadyS;
        this.jumpC = jumpC;
        this.agreesC = agreesC;
        this.noticesS = noticesS;
    }

    /** Whether readings come so often that a standstill, a fall or a sudden climb says something. */
    public boolean shows() {
        return this == BY_ITSELF;
    }

    /** The level is made of the readings of so many seconds. */
    public double levelS() {
        return levelS;
    }

    /** Or of so many readings, if those are more. */
    public int levelLeast() {
        return levelLeast;
    }

    /** Seconds of the line that tells quick changes. */
    public double quickS() {
        return quickS;
    }

    /** Seconds of the line that tells the trend. */
    public double steadyS() {
        return steadyS;
    }

    /** A trend further than this from the level, in °C, is behind a jump. */
    public double jumpC() {
        return jumpC;
    }

    /** What is known of the pan agrees with readings that are no further off than that, in °C. */
    public double agreesC() {
        return agreesC;
    }

    /**
     * So long before what is known says that a mark is passed it is asked for: a stage must last for three seconds, and stirs
     * and syrups that steepen more than expected let the pan seem a little behind (by 8 s at the median, tuning seeds).
     */
    public double noticesS() {
        return noticesS;
    }

    /** Up to when a reading of {@code seenT} says where the pan is at {@code t}. */
    public double carriedT(double t, double seenT) {
        return shows() ? t : Math.min(t, seenT + CARRIES_S);
    }

    /** After how many seconds a thermometer whose readings are usually {@code intervalS} apart is silent. */
    public static double silentByHandAfterS(double intervalS) {
        return Math.max(HAND_LEAST_S, Math.min(HAND_MOST_S, HAND_INTERVALS * intervalS));
    }

    /** The same while its pace is not known yet. */
    public static double silentByHandAtFirstS() {
        return HAND_FIRST_S;
    }
}
