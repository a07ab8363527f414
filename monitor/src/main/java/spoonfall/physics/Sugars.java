package spoonfall.physics;

/**
 * The sugar in a pan: what was added, which is sucrose, and the fruit's own, part of which is glucose and fructose
 * from the start. A fruit's soluble solids are taken as sugar throughout; the acids and salts among them, about a
 * tenth (from memory), are too few to matter beside the sugar that is added.
 *
 * @param sucroseKg kilograms of sucrose
 * @param hexoseKg kilograms of glucose and fructose
 */
public record Sugars(double sucroseKg, double hexoseKg) {
    /**
     * The share of an orange's own sugar that is glucose and fructose: 4.6 g of 8.5 g (McCance and Widdowson's The
     * Composition of Foods, 7th edition). The same source gives apple 0.67, cherry 0.98 and grape 0.99; berries
     * have 0.9 or more, apricot and peach about 0.4 (from memory).
     */
    public static final double ORANGE_HEXOSE = 4.6 / 8.5;

    /** Refuses what is negative, not finite, or no sugar at all. */
    public Sugars {
        check("sucrose", sucroseKg);
        check("glucose and fructose", hexoseKg);
        if (!(sucroseKg + hexoseKg > 0)) {
            throw new IllegalArgumentException(
                    "there must be some sugar, not " + sucroseKg + " and " + hexoseKg + " kg");
        }
    }

    /**
     * The sugar of a recipe before it is cooked.
     *
     * @param addedKg table sugar added
     * @param fruitKg fruit, as it goes into the pan
     * @param fruitSolids the fraction of the fruit's mass that is soluble solids
     * @param fruitHexose the share of the fruit's own sugar that is glucose and fructose, such as
     *     {@link #ORANGE_HEXOSE}
     */
    public static Sugars of(double addedKg, double fruitKg, double fruitSolids, double fruitHexose) {
        check("added sugar", addedKg);
        check("fruit", fruitKg);
        checkFraction("the fruit's soluble solids", fruitSolids);
        checkFraction("the share that is glucose and fructose", fruitHexose);
        double ownKg = fruitKg * fruitSolids;
        return new Sugars(addedKg + ownKg * (1 - fruitHexose), ownKg * fruitHexose);
    }

    /** All the sugar, in kilograms: what the solids fraction counts. */
    public double solidsKg() {
        return sucroseKg + hexoseKg;
    }

    /** The share by mass that is glucose and fructose: the {@code inverted} of {@link Syrup} and {@link Inversion}. */
    public double inverted() {
        return hexoseKg / solidsKg();
    }

    private static void check(String what, double kg) {
        if (!(kg >= 0 && Double.isFinite(kg))) {
            throw new IllegalArgumentException(what + " must be 0 kg or more, not " + kg + " kg");
        }
    }

    private static void checkFraction(String what, double fraction) {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException(what + " must be a fraction from 0 to 1, not " + fraction);
        }
    }
}
