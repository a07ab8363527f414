package spoonfall.probe.sensor;

import java.util.OptionalDouble;

/**
 * Thermistors (NTC) by Steinhart and Hart: {@code 1/T = a + b ln R + c (ln R)^3}, T in kelvin, R in ohms. With a
 * beta value, c is 0.
 *
 * @param a in 1/K
 * @param b in 1/K
 * @param c in 1/K
 */
public record Thermistor(double a, double b, double c) {
    private static final double ZERO_C_K = 273.15;
    private static final double LEAST_OHM = 1;
    private static final double MOST_OHM = 1e7;

    /** Validates that it is a thermistor whose resistance falls as it warms. */
    public Thermistor {
        if (!(b > 0) || !Double.isFinite(a) || !(c >= 0)) {
            throw new IllegalArgumentException(
                    "not the coefficients of a thermistor: a " + a + ", b " + b + ", c " + c);
        }
    }

    /** A thermistor of {@code ohm25} ohms at 25 °C and the given beta in kelvin. */
    public static Thermistor ofBeta(double ohm25, double betaK) {
        if (!(ohm25 >= 100 && ohm25 <= 1e6) || !(betaK >= 1000 && betaK <= 8000)) {
            throw new IllegalArgumentException(
                    "a thermistor has 100 to 1000000 ohm at 25 °C and a beta of 1000 to 8000 K, not " + ohm25
                            + " ohm and " + betaK + " K");
        }
        double b = 1 / betaK;
        return new Thermistor(1 / (25 + ZERO_C_K) - b * Math.log(ohm25), b, 0);
    }

    /** Its temperature in °C; empty for a resistance that means an open or a shorted sensor. */
    public OptionalDouble temperatureC(double ohm) {
        if (!(ohm >= LEAST_OHM && ohm <= MOST_OHM)) {
            return OptionalDouble.empty();
        }
        double log = Math.log(ohm);
        double inverse = a + b * log + c * log * log * log;
        return inverse > 0 ? OptionalDouble.of(1 / inverse - ZERO_C_K) : OptionalDouble.empty();
    }

    /**
     * The resistance of a thermistor below a known resistor, from the counts of a converter that measures the
     * voltage across the thermistor against the supply.
     *
     * @param counts what the converter says
     * @param fullCounts what it says at the supply's voltage, such as 4095
     * @param seriesOhm the resistor between the supply and the thermistor
     * @return ohms; empty at either end of the scale: an open or a shorted sensor
     */
    public static OptionalDouble ohm(double counts, double fullCounts, double seriesOhm) {
        double part = counts / fullCounts;
        return part > 0.001 && part < 0.999 ? OptionalDouble.of(seriesOhm * part / (1 - part)) : OptionalDouble.empty();
    }
}
