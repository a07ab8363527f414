package spoonfall.settest;

import java.util.SplittableRandom;

/**
 * Somebody who tests a simulated preserve, with their own idea of "nearly set", an eye that errs and a slip now and then.
 * All its numbers are common practice, no source, and differ from those that the plan assumes.
 */
public final class Taster {
    private final SplittableRandom random;
    private final double nearC;
    private final double eyeC;
    private final double slips;

    private Taster(SplittableRandom random, double nearC, double eyeC, double slips) {
        this.random = random;
        this.nearC = nearC;
        this.eyeC = eyeC;
        this.slips = slips;
    }

    /** Somebody who has done it before. */
    public static Taster usual(SplittableRandom random) {
        return new Taster(random, random.nextDouble(0.35, 0.6), random.nextDouble(0.05, 0.15), 0.01);
    }

    /** Somebody who looks less closely, and taps the wrong button once in fifty times. */
    public static Taster careless(SplittableRandom random) {
        return new Taster(random, random.nextDouble(0.25, 0.7), random.nextDouble(0.1, 0.25), 0.02);
    }

    /** What they see {@code belowC} below the true set. */
    public TestStep sees(double belowC) {
        if (random.nextDouble() < slips) {
            return new TestStep[] {TestStep.FAR, TestStep.NEAR, TestStep.SET}[random.nextInt(3)];
        }
        double seenC = belowC + eyeC * random.nextGaussian();
        return seenC <= 0 ? TestStep.SET : seenC <= nearC ? TestStep.NEAR : TestStep.FAR;
    }
}
