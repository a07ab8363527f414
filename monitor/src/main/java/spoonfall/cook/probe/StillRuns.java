package spoonfall.cook.probe;

import spoonfall.series.Peaks;

/**
 * For how long a reading stayed the same, again and again, while the pan moved in one way: the longest runs of one value, and
 * how far the pan went meanwhile by the water that left. A coarse thermometer flickers at the edges of its steps and lies
 * quietly between them: only when the pan has gone through some of them by itself is the longest run known.
 */
final class StillRuns {
    private static final double KEEP_S = 600;

    private final Peaks lengthsS = new Peaks(KEEP_S);
    private int count;
    private double lowestC = Double.POSITIVE_INFINITY;
    private double highestC = Double.NEGATIVE_INFINITY;
    private double climbedC;
    private double surelyClimbedC;
    private double mostDueC;

    /** Takes note of a reading. */
    void see(double temperatureC) {
        lowestC = Math.min(lowestC, temperatureC);
        highestC = Math.max(highestC, temperatureC);
    }

    /** Takes note of a run that has ended; {@code dueC} is how far the pan should have climbed in it. */
    void end(double t, double lengthS, double dueC) {
        lengthsS.add(t, lengthS);
        mostDueC = Math.max(mostDueC, dueC);
        count++;
    }

    /** The pan should have climbed so much further; {@code surely} whether its pace was known. */
    void climb(double byC, boolean surely) {
        climbedC += byC;
        surelyClimbedC += surely ? byC : 0;
    }

    /** How many runs have ended. */
    int count() {
        return count;
    }

    /** How long the longest of the last ten minutes was, in seconds. */
    double longestS() {
        return lengthsS.highest(0);
    }

    /** How far the pan should have climbed at most while the reading stayed the same, in °C. */
    double mostDueC() {
        return mostDueC;
    }

    /** How far it should have climbed in all, in °C. */
    double climbedC() {
        return climbedC;
    }

    /** How far by a pace that was known. */
    double surelyClimbedC() {
        return surelyClimbedC;
    }

    /** How far the lowest and the highest reading were apart, in °C; negative while there is none. */
    double rangeC() {
        return highestC - lowestC;
    }
}
