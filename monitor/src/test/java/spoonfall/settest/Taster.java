package spoonfall.settest;

import java.util.SplittableRandom;

/**
 * Somebody who tests a simulated preserve, with their own idea of "nearly set", an eye that errs and a slip now and then.
 * All its numbers are common practice, no source, and differ from those that the plan assumes.
 */
public final class Taster {
    private static final double SLIPS = 0.02;

    private final SplittableRandom random;
    private final double nearC;
    private final double eyeC;

    /** A taster drawn at random. */
    public Taster(SplittableRandom random) {
        this.random = random;
        nearC = random.nextDouble(0.3, 0.6);
        eyeC = random.nextDouble(0.05, 0.2);
    }

    /** What they see {@code belowC} below the true set. */
    public TestStep sees(double belowC) {
        if (random.nextDouble() < SLIPS) {
            return new TestStep[] {TestStep.FAR, TestStep.NEAR, TestStep.SET}[random.nextInt(3)];
        }
        double seenC = belowC + eyeC * random.nextGaussian();
        return seenC <= 0 ? TestStep.SET : seenC <= nearC ? TestStep.NEAR : TestStep.FAR;
    }
}
