package spoonfall.estimate.points;

import spoonfall.estimate.filter.FilterBank;

/** How finely the pan is read: the thermometer's noise and steps, or marks that somebody types. */
public final class Fineness {
    private static final double COARSEST_STEP_C = 1;

    /** What is read by hand is off by that much beside its rounding, in °C: stirs, bubbles, a slanting eye. */
    private static final double BY_HAND_C = 0.2;

    /** A mark more or less says little: it takes so many times the steps until a standstill is one. */
    private static final double BY_HAND_STEPS = 2;

    private final boolean byHand;
    private NoiseMeter noise = new NoiseMeter();
    private final InSteps steps = new InSteps();
    private double stepC;

    /** Of a thermometer that was not heard yet; {@code byHand} of one that is read by hand. */
    public Fineness(boolean byHand) {
        this.byHand = byHand;
    }

    /** Forgets how noisy the points were; how often a coarse thermometer crosses its steps stays what it is. */
    public void begin() {
        noise = new NoiseMeter();
    }

    /** Takes note of the smallest step that the thermometer has shown. */
    public void step(double thermometerStepC) {
        stepC = Math.min(COARSEST_STEP_C, thermometerStepC);
    }

    /** How far readings of some seconds are usually off, in °C. */
    public double sigmaC() {
        return noise.sigmaC();
    }

    /** The variance of a point, in °C². */
    public double variance() {
        return noise.variance(stepC);
    }

    /** What must be climbed until a standstill is one, in °C. */
    public double stepsC() {
        return byHand ? BY_HAND_STEPS * stepC : stepC;
    }

    /** Takes a point, whatever was expected of it. */
    public void pass(double riseC) {
        noise.pass(riseC);
    }

    /** Takes note of how far a point was off. */
    public void observe(double offC, double expectedVariance) {
        if (!byHand) {
            noise.observe(offC, expectedVariance, stepC);
        }
    }

    /** Lets the bank believe the latest point. */
    public void believe(FilterBank bank, Points points) {
        if (byHand) {
            bank.updateWithin(points.latestC(), stepC / 2, BY_HAND_C * BY_HAND_C);
        } else if (InSteps.coarse(stepC)) {
            steps.believe(bank, points.latestC(), points.latestSpread(), stepC);
        } else {
            bank.update(points.latestC(), variance());
        }
    }
}
