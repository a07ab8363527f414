package spoonfall.lab.varied;

import java.util.SplittableRandom;

/** The cook stirs now and then, which cools the top of a boiling pan for some seconds, more or less. */
final class Stirs {
    private final SplittableRandom random;
    private final double usualDipC;
    private double fromT;
    private double untilT;
    private double dipC;

    Stirs(SplittableRandom random) {
        this.random = random;
        usualDipC = random.nextDouble(0.1, 0.8);
        plan(0);
    }

    /** How much cooler the probe's place is at {@code t}. */
    double dipC(double t) {
        if (t > untilT) {
            plan(t);
        }
        return t >= fromT ? dipC : 0;
    }

    private void plan(double t) {
        fromT = t + random.nextDouble(120, 360);
        untilT = fromT + random.nextDouble(4, 14);
        dipC = usualDipC * random.nextDouble(0.3, 1.4);
    }
}
