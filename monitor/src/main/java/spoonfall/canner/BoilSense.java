package spoonfall.canner;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * What the canner's thermometer says of the boil. All limits are common practice, no source: within about 1 °C of where
 * water boils here, steady for half a minute; gone when it stays colder for 10 s, so that a splash of hot water that is
 * topped up does not count.
 */
final class BoilSense {
    /** The boil is there from so far below the water boil, in °C. */
    static final double NEAR_C = 0.8;

    /** The boil is gone from so far below the water boil, in °C: a little more, so that noise does not toggle it. */
    static final double GONE_C = 1.0;

    /** Nothing under water or in free steam is so far above the water boil, in °C. */
    static final double HOTTER_C = 2.0;

    /** How long it must be steady, in seconds. */
    static final double STEADY_S = 30;

    /** How long it must be too cold, in seconds. */
    static final double GONE_S = 10;

    /** Without a readable temperature for so long it is silent, in seconds. */
    static final double SILENT_S = 10;

    /** The two halves of that time must agree so far, in °C: water on its way to the boil climbs faster. */
    private static final double STEADY_C = 0.15;

    private final Deque<Seen> window = new ArrayDeque<>();
    private OptionalDouble coldSinceT = OptionalDouble.empty();
    private double heardT = Double.NEGATIVE_INFINITY;
    private boolean odd;
    private OptionalDouble latestC = OptionalDouble.empty();

    private record Seen(double t, double temperatureC) {}

    /** Takes note of a readable temperature; {@code t} does not run backwards. */
    void accept(double t, double temperatureC, double waterBoilC) {
        latestC = OptionalDouble.of(temperatureC);
        odd = temperatureC > waterBoilC + HOTTER_C;
        if (odd) {
            return;
        }
        if (t - heardT > SILENT_S) {
            forget();
        }
        heardT = t;
        boolean cold = temperatureC < waterBoilC - GONE_C;
        if (!cold) {
            coldSinceT = OptionalDouble.empty();
        } else if (coldSinceT.isEmpty()) {
            coldSinceT = OptionalDouble.of(t);
        }
        boolean near = temperatureC >= waterBoilC - NEAR_C;
        if (!near) {
            window.clear();
            return;
        }
        window.add(new Seen(t, temperatureC));
        while (window.size() > 2 && second().t() <= t - STEADY_S) {
            window.removeFirst();
        }
    }

    private Seen second() {
        return window.stream().skip(1).findFirst().orElseThrow();
    }

    /** Forgets how long it was steady: the next boil must show itself anew. */
    void forget() {
        window.clear();
        coldSinceT = OptionalDouble.empty();
    }

    /** Whether it was ever heard. */
    boolean everHeard() {
        return latestC.isPresent();
    }

    /** Whether it says anything of the water at {@code t}. */
    boolean speaks(double t) {
        return t - heardT <= SILENT_S;
    }

    /** Whether its latest word is hotter than water can be: the tip is elsewhere. */
    boolean odd() {
        return odd;
    }

    /** When it last spoke of the water; meaningless before the first time. */
    double heardT() {
        return heardT;
    }

    /** What it said last, in °C. */
    OptionalDouble latestC() {
        return latestC;
    }

    /** Whether it has stood at the boil for long enough. */
    boolean boils() {
        if (window.isEmpty() || window.getLast().t() - window.getFirst().t() < STEADY_S) {
            return false;
        }
        double middleT = (window.getFirst().t() + window.getLast().t()) / 2;
        double firstC = meanC(seen -> seen.t() <= middleT);
        double secondC = meanC(seen -> seen.t() > middleT);
        return Math.abs(secondC - firstC) <= STEADY_C;
    }

    private double meanC(Predicate<Seen> part) {
        return window.stream()
                .filter(part)
                .mapToDouble(Seen::temperatureC)
                .average()
                .orElseThrow();
    }

    /** Whether it is too cold just now. */
    boolean cold() {
        return coldSinceT.isPresent();
    }

    /** Whether it has been too cold for long enough. */
    boolean gone() {
        return coldSinceT.isPresent() && heardT - coldSinceT.getAsDouble() >= GONE_S;
    }

    /** Whether its latest word is that the water does not boil. */
    boolean contradicts(double waterBoilC) {
        return latestC.isPresent() && latestC.getAsDouble() < waterBoilC - GONE_C;
    }
}
