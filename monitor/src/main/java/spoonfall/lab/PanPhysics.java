package spoonfall.lab;

/**
 * What the simulated pan obeys. The vapour pressure is Wagner and Pruss' equation as in the IAPWS release on
 * saturation properties of 1992 (coefficients from memory; a test holds them against IF97), the syrup's water
 * activity is Starzak and Peacock's of 1997, the air is the standard atmosphere.
 */
public final class PanPhysics {
    /** Heat of vaporisation near 100 °C in kJ/kg: 26.6 g of water a minute for each net kW. */
    public static final double VAPORISATION_KJ_PER_KG = 60 / 26.6e-3;

    private static final double CRITICAL_K = 647.096;
    private static final double CRITICAL_PA = 22.064e6;
    private static final double[] A = {-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502};
    private static final double[] POWER = {1, 1.5, 3, 3.5, 4, 7.5};
    private static final double GAS_J_PER_MOL_K = 8.314462618;

    private PanPhysics() {}

    /** Pressure of the standard atmosphere in pascals. */
    public static double pressurePa(double elevationM) {
        return 101325 * Math.pow(1 - 2.25577e-5 * elevationM, 5.25588);
    }

    static double vapourPressurePa(double temperatureC) {
        double kelvin = temperatureC + 273.15;
        double tau = 1 - kelvin / CRITICAL_K;
        double sum = 0;
        for (int i = 0; i < A.length; i++) {
            sum += A[i] * Math.pow(tau, POWER[i]);
        }
        return CRITICAL_PA * Math.exp(CRITICAL_K / kelvin * sum);
    }

    /** Activity of water in a sucrose syrup. */
    static double waterActivity(double solids, double temperatureC) {
        double sugarMol = solids / 342.3;
        double waterMol = (1 - solids) / 18.015;
        double x = sugarMol / (sugarMol + waterMol);
        double q = -17638 / (GAS_J_PER_MOL_K * (temperatureC + 273.15));
        return (1 - x) * Math.exp(q * (1 - 1.0038 * x - 0.24653 * x * x) * x * x);
    }

    /** The temperature in °C at which a syrup boils. */
    public static double boilingPointC(double pressurePa, double solids) {
        // Secant steps on the logarithm of the vapour's pressure, which is nearly straight: four do.
        double target = Math.log(pressurePa);
        double before = 95;
        double missBefore = Math.log(vapourPressurePa(before) * waterActivity(solids, before)) - target;
        double now = 100;
        for (int i = 0; i < 20 && Math.abs(now - before) > 1e-9; i++) {
            double miss = Math.log(vapourPressurePa(now) * waterActivity(solids, now)) - target;
            double next = now - miss * (now - before) / (miss - missBefore);
            before = now;
            missBefore = miss;
            now = next;
        }
        return now;
    }

    /** Specific heat of a syrup in kJ/(kg K): that of water, less for the sugar (common rule, from memory). */
    public static double heatCapacity(double solids) {
        return 4.187 * (1 - 0.57 * solids);
    }
}
