package spoonfall.estimate;

/**
 * What the warming pan tells of the water that will leave: the heat that warmed it by so much a minute will drive off
 * {@code heat / latent heat}. Heat capacity of a sugar solution: 4.187 (1 - 0.57 solids) kJ/(kg K), common practice, no
 * source; latent heat of water near 100 °C 2,257 kJ/kg (IAPWS-IF97).
 */
final class Warming {
    private static final double WATER_KJ_PER_KG_K = 4.187;
    private static final double SUGAR_LESS = 0.57;
    private static final double LATENT_KJ_PER_KG = 2257;
    private static final double LEAST_PER_MIN_C = 0.5;
    private static final double FORGETS_S = 600;
    private static final int LEAST_SECONDS = 10;

    private double sum;
    private int count;
    private double lastT = Double.NEGATIVE_INFINITY;

    /** Takes note of a second in which it warmed by that much a minute. */
    void observe(double t, double perMinC) {
        if (t - lastT > FORGETS_S || perMinC < LEAST_PER_MIN_C) {
            sum = 0;
            count = 0;
        }
        lastT = t;
        if (perMinC >= LEAST_PER_MIN_C) {
            sum += perMinC;
            count++;
        }
    }

    boolean known(double t) {
        return count >= LEAST_SECONDS && t - lastT <= FORGETS_S;
    }

    /** How fast u will fall, per minute, once the pan boils at {@code u}. */
    double v(double u) {
        double capacity = WATER_KJ_PER_KG_K * (1 - SUGAR_LESS / u);
        return u * capacity * (sum / count) / LATENT_KJ_PER_KG;
    }
}
