package spoonfall.canning;

/** How large a jar is. The published table has one row for all jars up to a pint. */
public enum JarSize {
    /** Less than half a US pint, such as 125 mL. */
    SMALLER("smaller", "jars smaller than a half-pint"),
    /** Half a US pint, 237 mL. */
    HALF_PINT("half-pint", "half-pint jars (237 mL)"),
    /** A US pint, 473 mL; jars between the two count as pints. */
    PINT("pint", "pint jars (473 mL)"),
    /** More than a US pint: no time is published. */
    LARGER("larger", "jars larger than a pint");

    /** A US pint in millilitres (NIST Handbook 44: 28.875 cubic inches). */
    private static final double PINT_ML = 473.2;

    private final String wireName;
    private final String words;

    JarSize(String wireName, String words) {
        this.wireName = wireName;
        this.words = words;
    }

    /** The size of a jar that holds {@code millilitres} to the brim; the next larger published one counts. */
    public static JarSize holding(double millilitres) {
        if (!(millilitres >= 20 && millilitres <= 5000)) {
            throw new IllegalArgumentException("a jar holds 20 to 5000 mL, such as 237mL, not " + millilitres + " mL");
        }
        if (millilitres > PINT_ML) {
            return LARGER;
        }
        return millilitres > PINT_ML / 2 + 1 ? PINT : millilitres >= 230 ? HALF_PINT : SMALLER;
    }

    /** The name on the wire, such as {@code half-pint}. */
    public String wireName() {
        return wireName;
    }

    /** How a sentence names them. */
    String words() {
        return words;
    }
}
