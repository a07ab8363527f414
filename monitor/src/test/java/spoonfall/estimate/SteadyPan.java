package spoonfall.estimate;

import java.util.SplittableRandom;
import spoonfall.physics.Air;
import spoonfall.physics.Inversion;
import spoonfall.physics.Syrup;

/**
 * A boiling pan made from the physics alone: 26.6 g of water leave a minute for each net kW (IAPWS latent heat), the
 * syrup boils where Norrish says, and acid of pH 3.1 inverts its sugar. Its thermometer is late by 6.5 s and noisy.
 */
public final class SteadyPan {
    public static final double PRESSURE_PA = Air.pressurePa(0);
    private static final double WATER_KG_PER_MIN_KW = 26.6e-3;
    private static final double PH = 3.1;
    private static final double LAG_S = 6.5;
    private static final double STEP_S = 0.1;

    private final SplittableRandom random;
    private final double noiseC;
    private final double sugarKg;
    private double massKg;
    private double kw;
    private double inverted;
    private double shownC;

    SteadyPan(double massKg, double solids, double kw, double noiseC, long seed) {
        this.massKg = massKg;
        this.kw = kw;
        this.noiseC = noiseC;
        sugarKg = massKg * solids;
        inverted = 0.08;
        random = new SplittableRandom(seed);
        shownC = riseC();
    }

    private SteadyPan(SteadyPan other) {
        random = new SplittableRandom(0);
        noiseC = 0;
        sugarKg = other.sugarKg;
        massKg = other.massKg;
        kw = other.kw;
        inverted = other.inverted;
    }

    /** Two kilograms of marmalade on a home hob. */
    public static SteadyPan usual(long seed) {
        return new SteadyPan(2.1, 0.40, 1.35, 0.06, seed);
    }

    public void heat(double netKw) {
        kw = netKw;
    }

    /** Lets a tenth of a second pass. */
    public void step() {
        massKg -= WATER_KG_PER_MIN_KW * kw * STEP_S / 60;
        double boilsAtC = Syrup.boilingPointC(PRESSURE_PA, solids(), inverted);
        inverted = Inversion.after(inverted, STEP_S / 60, boilsAtC, solids(), PH);
        shownC += (riseC() - shownC) * (1 - Math.exp(-STEP_S / LAG_S));
    }

    /** Goes on for a second. */
    public void second() {
        for (int tenth = 0; tenth < 10; tenth++) {
            step();
        }
    }

    double solids() {
        return sugarKg / massKg;
    }

    double riseC() {
        return Syrup.riseC(PRESSURE_PA, solids(), inverted);
    }

    /** What the thermometer shows, in steps of 0.01 °C; the top is cooler by {@code dipC} after a stir. */
    public double shownC(double dipC) {
        return Math.rint((shownC - dipC + noiseC * random.nextGaussian()) * 100) / 100;
    }

    /** In how many seconds it will truly rise by so much if the heat stays as it is. */
    public double trulyS(double goalC) {
        SteadyPan ahead = new SteadyPan(this);
        double s = 0;
        while (ahead.riseC() < goalC) {
            ahead.step();
            s += STEP_S;
        }
        return s;
    }
}
