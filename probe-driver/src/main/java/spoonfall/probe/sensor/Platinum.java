package spoonfall.probe.sensor;

import java.util.OptionalDouble;

/** Industrial platinum resistance thermometers, IEC 60751, from -50 to 400 °C. */
public final class Platinum {
    private static final double A = 3.9083e-3;
    private static final double B = -5.775e-7;
    private static final double C = -4.183e-12;
    private static final double LOWEST_C = -50;
    private static final double HIGHEST_C = 400;
    private static final int STEPS = 8;

    private final double atZeroOhm;

    /** A sensor of {@code atZeroOhm} ohms at 0 °C: 100 for a Pt100, 1000 for a Pt1000. */
    public Platinum(double atZeroOhm) {
        if (!(atZeroOhm >= 10 && atZeroOhm <= 100_000)) {
            throw new IllegalArgumentException("a platinum sensor has 10 to 100000 ohm at 0 °C, not " + atZeroOhm);
        }
        this.atZeroOhm = atZeroOhm;
    }

    /** Its resistance in ohms at a temperature in °C. */
    public double ohm(double temperatureC) {
        double t = temperatureC;
        double below = t < 0 ? C * (t - 100) * t * t * t : 0;
        return atZeroOhm * (1 + A * t + B * t * t + below);
    }

    /** Its temperature in °C; empty for a resistance that it never has: an open or a shorted sensor. */
    public OptionalDouble temperatureC(double ohm) {
        if (!(ohm >= ohm(LOWEST_C) && ohm <= ohm(HIGHEST_C))) {
            return OptionalDouble.empty();
        }
        double t = (-A + Math.sqrt(A * A - 4 * B * (1 - ohm / atZeroOhm))) / (2 * B);
        // Exact from 0 °C up; below it the cubic term is small, and Newton's steps take it in.
        for (int i = 0; i < STEPS && t < 0; i++) {
            double slope = atZeroOhm * (A + 2 * B * t + C * (4 * t * t * t - 300 * t * t));
            t -= (ohm(t) - ohm) / slope;
        }
        return OptionalDouble.of(t);
    }
}
