package spoonfall.afternoon;

/** What the probe can see of an afternoon. */
public enum Sight {
    /** The pan is on and warming. */
    PAN_ON("the pan is on"),
    /** Something cold went into the boiling pan, as sugar does. */
    SUGAR("the sugar went in"),
    /** It boils with its sugar in. */
    BOIL("it boils"),
    /** Set tests are worth doing. */
    WINDOW("it is close to setting"),
    /** It began to cool; it may be a set test. */
    COOLING("it cools"),
    /** It has cooled for longer than a set test takes. */
    OFF("it is off the heat"),
    /** It is off the heat, and was tested and not set. */
    NOT_SET("it was not set yet"),
    /** It boils again, far from setting. */
    BACK_TO_BOIL("it boils again"),
    /** It boils again, close to setting. */
    BACK_TO_TEST("it boils again");

    private final String words;

    Sight(String words) {
        this.words = words;
    }

    /** What was seen, such as "it boils". */
    String words() {
        return words;
    }
}
