package spoonfall.lab;

import java.util.SplittableRandom;

/** A thermometer in a pan: late, noisy in bubbles, and stepped. */
final class Thermometer {
    private static final double NOISE_LASTS_S = 2;
    private static final double OUT_LAG_S = 6;

    private final PanSettings settings;
    private final SplittableRandom random;
    private double shownC;
    private double noiseC;

    Thermometer(PanSettings settings, SplittableRandom random) {
        this.settings = settings;
        this.random = random;
        shownC = settings.startC();
    }

    /**
     * Lets time pass.
     *
     * @param surroundC what surrounds the sensor, in °C
     * @param noisy how noisy it is there, 1 for a boiling pan
     * @param inPan whether it is in the pan; in air it is slower
     */
    void step(double seconds, double surroundC, double noisy, boolean inPan) {
        double lagS = inPan ? settings.lagS() : settings.lagS() + OUT_LAG_S;
        shownC += (surroundC - shownC) * (1 - Math.exp(-seconds / lagS));
        double keeps = Math.exp(-seconds / NOISE_LASTS_S);
        double kick = settings.noiseC() * noisy * Math.sqrt(1 - keeps * keeps);
        noiseC = noiseC * keeps + kick * random.nextGaussian();
    }

    /** What it shows. */
    double reading() {
        double steps = Math.round((shownC + noiseC) / settings.resolutionC());
        return Math.round(steps * settings.resolutionC() * 1e4) / 1e4;
    }
}
