package spoonfall.lab.varied;

import java.util.SplittableRandom;

/** A burner: late, drifting, and on some hobs switching on and off. */
final class Hob {
    private static final double DRIFT_S = 600;

    private final Settings settings;
    private final double fullKw;
    private final SplittableRandom random;
    private double heatKw;
    private double drift;

    /**
     * What kind of burner.
     *
     * @param lagS time constant with which it follows its knob
     * @param driftPart standard deviation of its slow drift, as a part of its heat
     * @param cycleS period of its switching; 0 for one that burns steadily
     * @param duty the part of each period in which it is on
     * @param lowPart its heat in the rest, as a part of that while on
     */
    record Settings(double lagS, double driftPart, double cycleS, double duty, double lowPart) {
        static Settings draw(SplittableRandom random) {
            boolean gas = random.nextBoolean();
            double lagS = gas ? random.nextDouble(1, 5) : random.nextDouble(8, 45);
            double drift = random.nextDouble() < 0.6 ? random.nextDouble(0.02, 0.07) : 0;
            boolean cycles = random.nextDouble() < 0.35;
            double cycleS = random.nextDouble(20, 90);
            double duty = random.nextDouble(0.5, 0.9);
            double lowPart = random.nextBoolean() ? 0 : random.nextDouble(0.1, 0.5);
            return new Settings(lagS, drift, cycles ? cycleS : 0, duty, lowPart);
        }
    }

    Hob(Settings settings, double fullKw, SplittableRandom random) {
        this.settings = settings;
        this.fullKw = fullKw;
        this.random = random;
        drift = settings.driftPart() * random.nextGaussian();
    }

    /** Lets time pass and returns its heat in kW; {@code knob} is 1 for full heat. */
    double step(double t, double seconds, double knob) {
        double keeps = 1 - seconds / DRIFT_S;
        drift = drift * keeps + settings.driftPart() * Math.sqrt(1 - keeps * keeps) * random.nextGaussian();
        double wanted = fullKw * knob * Math.exp(drift) * cycle(t);
        heatKw += (wanted - heatKw) * (1 - Math.exp(-seconds / settings.lagS()));
        return heatKw;
    }

    /** Heat of the moment as a part of the mean. */
    private double cycle(double t) {
        if (settings.cycleS() == 0) {
            return 1;
        }
        double on = 1 / (settings.duty() + (1 - settings.duty()) * settings.lowPart());
        double phase = t / settings.cycleS() - Math.floor(t / settings.cycleS());
        return phase < settings.duty() ? on : on * settings.lowPart();
    }
}
