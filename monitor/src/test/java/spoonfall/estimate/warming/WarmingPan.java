package spoonfall.estimate.warming;

import java.util.function.DoubleUnaryOperator;

/**
 * A pan on its way to the boil, by a heat balance: syrup in half a kilogram of steel. At 2.5 kg its surface takes 0.16 kW as vapour
 * just below the boil, 3.6 % less with each °C, and its sides 2.6 W for each °C: inside the ranges of docs/evaluation.md.
 */
final class WarmingPan {
    private static final double KG = 2.5;
    private static final double SURFACE_KW = 0.16;
    private static final double SURFACE_PER_C = 0.036;
    private static final double SIDES_KW_PER_K = 0.0026;
    private static final double STEEL_KJ_PER_K = 0.5 * 0.5;

    /** From there on the boil slows it. */
    private static final double TO_C = -4;

    private final Sink sink;
    private final double size;
    private final double kjPerK;
    double t;
    double riseC = -30;

    /** Who hears of each second. */
    interface Sink {
        void second(double t, double riseC, double perMinC);
    }

    WarmingPan(double massKg, double solids, Sink sink) {
        this.sink = sink;
        size = Math.pow(massKg / KG, 2 / 3.0);
        kjPerK = massKg * 4.187 * (1 - 0.57 * solids) + STEEL_KJ_PER_K; // common practice, no source
    }

    /** Warms it until the boil slows it, with so much heat as it will have at the boil. */
    void warm(double netKw) {
        warm(atC -> netKw);
    }

    /** The same with heat that depends on where it stands. */
    void warm(DoubleUnaryOperator netKw) {
        while (riseC < TO_C) {
            double vapourKw = SURFACE_KW * size * Math.exp(SURFACE_PER_C * riseC);
            double sidesKw = SIDES_KW_PER_K * size * riseC;
            second(perMinC(netKw.applyAsDouble(riseC) - sidesKw - vapourKw));
        }
    }

    /** Lets it go on to the boil by so much a minute. */
    void nearTheBoil(double perMinC) {
        for (riseC = TO_C; riseC < 0; ) {
            second(perMinC);
        }
    }

    /** Lets it cool by so much a minute from there. */
    void cool(double fromC, double toC, double perMinC) {
        for (riseC = fromC; riseC > toC; ) {
            second(-perMinC);
        }
    }

    /** How fast so much heat would warm it, by °C a minute. */
    double perMinC(double kw) {
        return 60 * kw / kjPerK;
    }

    private void second(double perMinC) {
        sink.second(t++, riseC, perMinC);
        riseC += perMinC / 60;
    }
}
