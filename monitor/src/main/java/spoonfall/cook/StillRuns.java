package spoonfall.cook;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * For how long a reading stayed the same, again and again, while the pan moved in one way: the longest runs of one value, and
 * how far the pan went meanwhile by the water that left. A coarse thermometer flickers at the edges of its steps and lies
 * quietly between them: only when the pan has gone through some of them by itself is the longest run known.
 */
final class StillRuns {
    private static final double KEEP_S = 600;

    private final Deque<double[]> longer = new ArrayDeque<>();
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

    /**
     * Takes note of a run that has ended. Kept are those that are longer than all later ones: the first of them is the longest.
     *
     * @param dueC how far the pan should have climbed in it
     */
    void end(double t, double lengthS, double dueC) {
        while (!longer.isEmpty() && longer.getLast()[1] <= lengthS) {
            longer.removeLast();
        }
        longer.addLast(new double[] {t, lengthS});
        while (longer.getFirst()[0] < t - KEEP_S) {
            longer.removeFirst();
        }
        mostDueC = Math.max(mostDueC, dueC);
        count++;
    }

    /** The pan should have climbed so much further; {@code surely} whether its pace was known. */
    void climb(double byC, boolean surely) {
        climbedC += byC;
        surelyClimbedC += surely ? byC : 0;
    }

    int count() {
        return count;
    }

    /** How long the longest of the last ten minutes was, in seconds. */
    double longestS() {
        return longer.isEmpty() ? 0 : longer.getFirst()[1];
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
