package spoonfall.paper;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** The steps of an axis. */
final class Steps {
    private Steps() {}

    /** The smallest that leaves room for the words at each, of steps in order; the largest if none does. */
    static int of(int[] steps, IntPredicate leavesRoom) {
        return Arrays.stream(steps).filter(leavesRoom).findFirst().orElse(steps[steps.length - 1]);
    }
}
