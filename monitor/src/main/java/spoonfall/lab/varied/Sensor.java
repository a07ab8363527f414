package spoonfall.lab.varied;

import java.util.SplittableRandom;

/** A thermometer: late, off by a little, noisy in bubbles, and stepped. */
final class Sensor {
    private static final double BURST_EVERY_S = 60;
    private static final double BURST_TIMES = 2.5;

    private final Settings settings;
    private final SplittableRandom random;
    private double shownC;
    private double noiseC;

    /**
     * What kind of thermometer.
     *
     * @param lagS time constant in the pan
     * @param noiseC standard deviation in a boiling pan
     * @param noiseLastsS time over which bubbles make neighbouring readings alike
     * @param offsetC what it shows too much
     * @param stepC its smallest step
     * @param fahrenheit whether it counts its steps on Fahrenheit's scale
     * @param periodS seconds between two readings
     * @param jitter standard deviation of that as a part of it
     * @param lostPart the part of its readings that are lost
     */
    record Settings(
            double lagS,
            double noiseC,
            double noiseLastsS,
            double offsetC,
            double stepC,
            boolean fahrenheit,
            double periodS,
            double jitter,
            double lostPart) {
        private static final double[] STEPS = {
            0.01, 0.01, 0.01, 0.0625, 0.0625, 0.0625, 0.1, 0.1, 0.1, 0.1, 0.25, 0.25, 0.5
        };
        private static final double[] PERIODS = {0.1, 0.25, 0.5, 1, 1, 1, 1, 2, 2, 3, 5, 10};

        static Settings draw(SplittableRandom random) {
            boolean wholeFahrenheit = random.nextInt(14) == 0;
            double stepC = wholeFahrenheit ? 1 / 1.8 : STEPS[random.nextInt(STEPS.length)];
            return new Settings(
                    random.nextDouble(1, 12),
                    0.02 * Math.pow(12.5, random.nextDouble()),
                    random.nextDouble(0.5, 4),
                    random.nextDouble() < 0.5 ? 0.1 * random.nextGaussian() : 0,
                    stepC,
                    wholeFahrenheit,
                    PERIODS[random.nextInt(PERIODS.length)],
                    random.nextDouble() < 0.6 ? random.nextDouble(0, 0.1) : 0,
                    random.nextDouble() < 0.5 ? random.nextDouble(0, 0.03) : 0);
        }
    }

    Sensor(Settings settings, double startC, SplittableRandom random) {
        this.settings = settings;
        this.random = random;
        shownC = startC;
    }

    /**
     * Lets time pass.
     *
     * @param aroundC what surrounds it, in °C
     * @param lagTimes how many times slower than in the pan it is there
     * @param noisy how noisy it is there, 1 for a boiling pan
     */
    void step(double seconds, double aroundC, double lagTimes, double noisy) {
        shownC += (aroundC - shownC) * (1 - Math.exp(-seconds / (settings.lagS() * lagTimes)));
        double keeps = Math.exp(-seconds / settings.noiseLastsS());
        double kick = settings.noiseC() * noisy * Math.sqrt(1 - keeps * keeps);
        noiseC = noiseC * keeps + kick * random.nextGaussian();
        if (random.nextDouble() < seconds / BURST_EVERY_S) {
            noiseC += BURST_TIMES * settings.noiseC() * noisy * random.nextGaussian();
        }
    }

    /** What it shows, shifted by {@code extraC} before it is stepped. */
    double reading(double extraC) {
        double exactC = shownC + noiseC + settings.offsetC() + extraC;
        double stepped = settings.fahrenheit()
                ? (Math.rint(exactC * 1.8 + 32) - 32) / 1.8
                : Math.rint(exactC / settings.stepC()) * settings.stepC();
        return Math.round(stepped * 1e4) / 1e4;
    }
}
