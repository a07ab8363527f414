package spoonfall.estimate.points;

import spoonfall.estimate.filter.FilterBank;
import spoonfall.estimate.filter.Normal;

/**
 * Believes points of a thermometer whose steps are coarse: readings that are all the same say only between which edges the pan
 * was, and those on both sides of an edge say that it was there. How noisy the readings are is told by how often they cross one.
 */
final class InSteps {
    /** With finer steps bubbles make numbers of the points that are as good. */
    private static final double COARSE_C = 0.4;

    /** A step that large has not been seen: the thermometer has not yet shown any. */
    private static final double NOT_SHOWN_C = 0.9;

    /** The noise that is believed at first, as if so many points had told it. */
    private static final double FIRST_C = 0.08;

    private static final double FAITH = 20;
    private static final double LEAST_C = 0.02;

    /** Bubbles make neighbouring points alike, which no single one shows. */
    private static final double ALIKE = 1.2;

    /** Where between two steps a few readings lie is known to so many times the variance of one. */
    private static final double BETWEEN = 1.5;

    /** A pan that climbs evenly crosses edges in such a part of its points, times noise by step: for one reading each, and more for many (simulated). */
    private static final double CROSSINGS = 1.1;

    private static final double CROSSINGS_BY_LOG = 0.5;
    private static final double MOST_CROSSINGS = 2.6;

    private double crossedC;
    private int points;
    private double lastC = Double.NaN;

    /** Whether steps of that size are coarse, and known. */
    static boolean coarse(double stepC) {
        return stepC > COARSE_C && stepC < NOT_SHOWN_C;
    }

    /** Lets the bank believe a point of a thermometer of coarse steps, whose middle readings lie at {@code middleC}. */
    void believe(FilterBank bank, double middleC, Points.Spread spread, double stepC) {
        observe(spread, stepC);
        double sigmaC = ALIKE * sigmaC();
        double variance = sigmaC * sigmaC;
        double steps = (spread.highestC() - spread.lowestC()) / stepC;
        if (steps < 0.5) {
            bank.updateWithin(spread.lowestC(), stepC / 2, variance);
        } else if (steps < 1.5) {
            double above = (spread.meanC() - spread.lowestC()) / (spread.highestC() - spread.lowestC());
            double part = (above * spread.count() + 0.5) / (spread.count() + 1);
            double edgeC = (spread.lowestC() + spread.highestC()) / 2;
            bank.update(edgeC + sigmaC * Normal.quantile(part), BETWEEN * variance);
        } else {
            bank.update(middleC, variance + stepC * stepC / 12);
        }
    }

    private void observe(Points.Spread spread, double stepC) {
        boolean within = spread.highestC() - spread.lowestC() > stepC / 2;
        boolean since = Math.abs(spread.firstC() - lastC) > stepC / 2;
        if (within || since) {
            crossedC += stepC / Math.min(MOST_CROSSINGS, CROSSINGS + CROSSINGS_BY_LOG * Math.log(spread.count()));
        }
        points++;
        lastC = spread.lastC();
    }

    /** How far single readings are off, in °C: a standard deviation. */
    private double sigmaC() {
        return Math.max(LEAST_C, (FAITH * FIRST_C + crossedC) / (FAITH + points));
    }
}
