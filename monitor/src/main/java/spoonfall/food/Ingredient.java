package spoonfall.food;

/**
 * So much of a food. Doubts are one standard deviation.
 *
 * @param amount as it was measured
 * @param food of what
 */
public record Ingredient(Amount amount, Food food) {
    private static final double CUP_ML = CookUnit.CUP.size();
    private static final double LEAST_G = 0.01;
    private static final double MOST_G = 200_000;

    /** How far scales, cups and counting are off, as a share; common practice, no source. */
    private static final double SCALES = 0.005;

    private static final double LEVEL_CUP = 0.03;
    private static final double CUP_OF_PIECES = 0.08;
    private static final double PIECES = 0.15;

    /** Fruit differs from tree to tree: the share of its own solids by which it does (common practice, no source). */
    private static final double RIPENESS = 0.10;

    /** Refuses an amount that the food has no weight for, and one that no pan holds. */
    public Ingredient {
        double grams = grams(amount, food);
        if (!(grams >= LEAST_G && grams <= MOST_G)) {
            throw new IllegalArgumentException(amount.words() + " of " + food.name()
                    + (grams < LEAST_G ? " is too little to weigh" : " is more than 200 kg, which no pan holds")
                    + "; check the number and its unit");
        }
    }

    private static double grams(Amount amount, Food food) {
        double size = amount.number() * amount.unit().size();
        return switch (amount.unit().kind()) {
            case MASS -> size;
            case VOLUME ->
                size
                        / CUP_ML
                        * food.cupG()
                                .orElseThrow(() -> new IllegalArgumentException(
                                        "nobody weighed a cup of " + food.name() + "; give it in grams or ounces"));
            case PIECE ->
                size
                        * food.pieceG()
                                .orElseThrow(() -> new IllegalArgumentException(
                                        food.name() + " has no weight for a piece; give it in grams, ounces or cups"));
        };
    }

    /** Its mass in grams. */
    public double grams() {
        return grams(amount, food);
    }

    /** How far its mass may be off, in grams. */
    public double doubtG() {
        return grams() * measuring();
    }

    private double measuring() {
        return switch (amount.unit().kind()) {
            case MASS -> SCALES;
            case PIECE -> PIECES;
            case VOLUME -> food.kind() == FoodKind.FRUIT || food.kind() == FoodKind.PEEL ? CUP_OF_PIECES : LEVEL_CUP;
        };
    }

    /** Water in it, in grams. */
    public double waterG() {
        return grams() * food.waterPercent() / 100;
    }

    /** What dissolves of it, in grams. */
    public double solubleG() {
        return grams() * food.solubles().middle() / 100;
    }

    /** How far that may be off, in grams: for its mass, for what was published, and for the fruit's ripeness. */
    public double solubleDoubtG() {
        double ripeness = food.kind().fromFruit() ? RIPENESS * solubleG() : 0;
        return Math.hypot(
                Math.hypot(measuring() * solubleG(), grams() * food.solubles().doubt() / 100), ripeness);
    }

    /** What is neither water nor dissolves, in grams. */
    public double restG() {
        return Math.max(0, grams() - waterG() - solubleG());
    }

    /** So many times as much of it. */
    public Ingredient times(double factor) {
        return new Ingredient(amount.times(factor), food);
    }
}
