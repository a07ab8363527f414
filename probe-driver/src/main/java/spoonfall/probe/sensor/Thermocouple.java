package spoonfall.probe.sensor;

import java.util.OptionalDouble;

/**
 * Thermocouples by the reference functions of IEC 60584-1 (NIST ITS-90 Thermocouple Database; coefficients from
 * memory, held against the standard's table values by a test). Their cold junction is taken in by adding
 * voltages, not temperatures.
 */
public enum Thermocouple {
    /** Nickel-chromium against nickel-aluminium. */
    K(
            new double[] {
                -0.176004136860e-01,
                0.389212049750e-01,
                0.185587700320e-04,
                -0.994575928740e-07,
                0.318409457190e-09,
                -0.560728448890e-12,
                0.560750590590e-15,
                -0.320207200030e-18,
                0.971511471520e-22,
                -0.121047212750e-25
            },
            true),
    /** Copper against copper-nickel. */
    T(
            new double[] {
                0,
                0.387481063640e-01,
                0.332922278800e-04,
                0.206182434040e-06,
                -0.218822568460e-08,
                0.109968809280e-10,
                -0.308157587720e-13,
                0.454791352900e-16,
                -0.275129016730e-19
            },
            false),
    /** Iron against copper-nickel. */
    J(
            new double[] {
                0,
                0.503811878150e-01,
                0.304758369300e-04,
                -0.856810657200e-07,
                0.132281952950e-09,
                -0.170529583370e-12,
                0.209480906970e-15,
                -0.125383953360e-18,
                0.156317256970e-22
            },
            false);

    /** The functions above 0 °C are used a little below it, where they still hold to a hundredth of a degree. */
    private static final double LOWEST_C = -5;

    private static final double HIGHEST_C = 400;
    private static final double BUMP_MV = 0.118597600000;
    private static final double BUMP_WIDTH = -0.118343200000e-03;
    private static final double BUMP_AT_C = 126.968600000;
    private static final int STEPS = 50;
    private static final double CLOSE_MV = 1e-12;

    private final double[] coefficients;
    private final boolean bump;

    Thermocouple(double[] coefficients, boolean bump) {
        this.coefficients = coefficients;
        this.bump = bump;
    }

    /** Its voltage in millivolts at a temperature in °C, with its cold junction at 0 °C. */
    public double millivolts(double temperatureC) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * temperatureC + coefficients[i];
        }
        double off = temperatureC - BUMP_AT_C;
        return bump ? sum + BUMP_MV * Math.exp(BUMP_WIDTH * off * off) : sum;
    }

    /**
     * Its temperature in °C.
     *
     * @param millivolts what is measured
     * @param coldJunctionC temperature of its cold junction in °C
     * @return empty outside -5 to 400 °C: an open or wrongly wired couple
     */
    public OptionalDouble temperatureC(double millivolts, double coldJunctionC) {
        if (!(coldJunctionC >= LOWEST_C && coldJunctionC <= 120)) {
            return OptionalDouble.empty();
        }
        double target = millivolts + millivolts(coldJunctionC);
        if (!(target >= millivolts(LOWEST_C) && target <= millivolts(HIGHEST_C))) {
            return OptionalDouble.empty();
        }
        double low = LOWEST_C;
        double high = HIGHEST_C;
        double t = target / 0.04;
        for (int i = 0; i < STEPS; i++) {
            if (!(t > low && t < high)) {
                t = (low + high) / 2;
            }
            double miss = millivolts(t) - target;
            if (Math.abs(miss) < CLOSE_MV) {
                break;
            }
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            double slope = (millivolts(t + 0.01) - millivolts(t - 0.01)) / 0.02;
            t -= miss / slope;
        }
        return OptionalDouble.of(t);
    }
}
