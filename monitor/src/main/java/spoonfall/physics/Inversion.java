package spoonfall.physics;

/**
 * How fast acid and heat split sucrose into glucose and fructose: first order, with Vukov's rate {@code log10 k
 * [1/min] = 16.91 + log10(kg water per litre) - 5670/T - pH}, T in kelvin (from memory; its 108.5 kJ/mol agrees
 * with the 109.2 of Tombari et al. 2007). The water in a litre is taken from the density at 20 °C, which makes
 * the rate of a boiling syrup about a twentieth too high: less than a pH that is off by 0.03.
 *
 * <p>The inverted share is by mass; that splitting 95 g of sucrose makes 100 g of glucose and fructose is left out.
 */
public final class Inversion {
    private static final double RATE = 16.91;
    private static final double RATE_K = 5670;
    private static final double ZERO_C_K = 273.15;
    private static final double COLDEST_C = 0;
    private static final double HOTTEST_C = 150;
    private static final double SOUREST = 1;
    private static final double NEUTRAL = 7;

    private Inversion() {}

    /**
     * The part of the remaining sucrose that splits in a minute, as a rate of decay.
     *
     * @param temperatureC 0 to 150 °C
     * @param solids the fraction of the mass that is sugar, 0 to {@link Syrup#MOST_SOLIDS}
     * @param ph how sour it is, 1 to 7; a preserve that sets has 2.8 to 3.4
     * @return 1/min
     */
    public static double ratePerMin(double temperatureC, double solids, double ph) {
        if (!(temperatureC >= COLDEST_C && temperatureC <= HOTTEST_C)) {
            throw new IllegalArgumentException("temperature must be 0 to 150 °C, not " + temperatureC + " °C");
        }
        if (!(ph >= SOUREST && ph <= NEUTRAL)) {
            throw new IllegalArgumentException("pH must be 1 to 7 for acid to split sugar, not " + ph);
        }
        double kelvin = temperatureC + ZERO_C_K;
        return SyrupDensity.waterKgPerL(solids) * Math.pow(10, RATE - RATE_K / kelvin - ph);
    }

    /** The share of the sugar that is inverted after some minutes at constant conditions, from none. */
    public static double share(double minutes, double temperatureC, double solids, double ph) {
        return after(0, minutes, temperatureC, solids, ph);
    }

    /**
     * The share of the sugar that is inverted after a step of some minutes at constant conditions. A whole cook
     * is a sum of such steps; steps of the same conditions add up exactly.
     *
     * @param inverted the share at the step's begin, 0 to 1
     * @param minutes how long the step is, 0 or more
     */
    public static double after(double inverted, double minutes, double temperatureC, double solids, double ph) {
        if (!(minutes >= 0 && Double.isFinite(minutes))) {
            throw new IllegalArgumentException("minutes must be 0 or more, not " + minutes);
        }
        Syrup.check(solids, inverted);
        return 1 - (1 - inverted) * Math.exp(-ratePerMin(temperatureC, solids, ph) * minutes);
    }
}
