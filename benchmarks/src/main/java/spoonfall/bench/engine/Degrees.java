package spoonfall.bench.engine;

/** A reading as Esper wants it: a bean. */
public final class Degrees {
    private final double t;
    private final double c;

    /** A reading of {@code c} °C at {@code t} seconds. */
    public Degrees(double t, double c) {
        this.t = t;
        this.c = c;
    }

    /** Seconds of the cook. */
    public double getT() {
        return t;
    }

    /** Temperature in °C. */
    public double getC() {
        return c;
    }
}
