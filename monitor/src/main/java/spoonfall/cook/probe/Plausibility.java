package spoonfall.cook.probe;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;
import spoonfall.alarm.Condition;
import spoonfall.probe.Quality;

/**
 * Tells, reading by reading, a single wild value, a jump that no pan can make and a temperature that no preserve has.
 * A value far from where the pan was waits for the next one: if that agrees, it is real; if not, it was a spike, and where there
 * were spikes lately, more must agree.
 * The limits are common practice, no source.
 */
final class Plausibility {
    private static final double SPIKE_C = 4;
    private static final double FASTEST_PER_S_C = 1.5;

    /** A confirmed jump up by so much, out of a boiling pan, is more than any burner can do. */
    private static final double JUMP_C = 8;

    private static final double BACK_WITHIN_C = 3;

    /** A jump that lasts is where the probe is now. */
    private static final double BELIEVE_AFTER_S = 60;

    /** Syrup boils so far above water when it is nearly all sugar: nothing that anyone would call a preserve. */
    private static final double HOTTEST_RISE_C = 40;

    private static final double COLDEST_C = -10;
    private static final double COUNT_S = 60;
    private static final int LOOSE_SPIKES = 5;

    /** Where values were wild lately, two may be wild alike: as many more must agree, but no more than so many. */
    private static final int MOST_MORE = 2;

    private final double waterBoilC;
    private final Deque<Double> spikes = new ArrayDeque<>();
    private double lastC = Double.NaN;
    private double lastT;
    private int agreeing;

    /** How many of the spikes followed each other to one side: a fast fall is none of a loose plug. */
    private int inTurn;

    private OptionalDouble waitingC = OptionalDouble.empty();
    private OptionalDouble beforeJumpC = OptionalDouble.empty();
    private double jumpedT;
    private double jumpC;
    private Quality latest = Quality.GOOD;

    Plausibility(double waterBoilC) {
        this.waterBoilC = waterBoilC;
    }

    /** What the reading is worth; only a good one says something of the pan. */
    Quality judge(double t, double temperatureC, boolean boiling) {
        latest = judged(t, temperatureC, boiling);
        lastT = t;
        return latest;
    }

    private Quality judged(double t, double temperatureC, boolean boiling) {
        if (temperatureC > waterBoilC + HOTTEST_RISE_C || temperatureC < COLDEST_C) {
            return wild(t, temperatureC) ? Quality.IMPLAUSIBLE : Quality.SPIKE;
        }
        if (Double.isNaN(lastC)) {
            return good(temperatureC);
        }
        double farC = SPIKE_C + FASTEST_PER_S_C * Math.max(0, t - lastT);
        double offC = temperatureC - lastC;
        if (beforeJumpC.isPresent()) {
            return duringJump(t, temperatureC);
        }
        if (Math.abs(offC) <= farC) {
            waitingC = OptionalDouble.empty();
            return good(temperatureC);
        }
        if (!wild(t, temperatureC)) {
            return Quality.SPIKE;
        }
        if (boiling && offC >= JUMP_C) {
            beforeJumpC = OptionalDouble.of(lastC);
            jumpedT = t;
            jumpC = offC;
            waitingC = OptionalDouble.empty();
            return Quality.IMPLAUSIBLE;
        }
        waitingC = OptionalDouble.empty();
        return good(temperatureC);
    }

    /** Whether a far value is confirmed by those before it. */
    private boolean wild(double t, double temperatureC) {
        double beforeC = waitingC.orElse(temperatureC);
        boolean goesOn = waitingC.isPresent() && above(beforeC) == above(temperatureC);
        boolean agrees = waitingC.isPresent() && Math.abs(temperatureC - beforeC) <= SPIKE_C + JUMP_C;
        waitingC = OptionalDouble.of(temperatureC);
        forgetSpikes(t);
        agreeing = agrees ? agreeing + 1 : 0;
        inTurn = goesOn || agrees ? inTurn : 0;
        if (!agrees) {
            spikes.addLast(t);
            inTurn++;
        }
        int earlier = spikes.size() - inTurn;
        boolean confirmed = agrees && agreeing > Math.min(MOST_MORE, earlier);
        for (; confirmed && inTurn > 0; inTurn--) {
            spikes.pollLast(); // it was on its way there
        }
        return confirmed;
    }

    private boolean above(double temperatureC) {
        return temperatureC > (Double.isNaN(lastC) ? 0 : lastC);
    }

    private void forgetSpikes(double t) {
        while (!spikes.isEmpty() && spikes.getFirst() < t - COUNT_S) {
            spikes.removeFirst();
        }
        inTurn = Math.min(inTurn, spikes.size());
    }

    private Quality duringJump(double t, double temperatureC) {
        boolean back = temperatureC - beforeJumpC.orElseThrow() < Math.max(BACK_WITHIN_C, jumpC / 3);
        if (back || t - jumpedT >= BELIEVE_AFTER_S) {
            beforeJumpC = OptionalDouble.empty();
            return good(temperatureC);
        }
        return Quality.IMPLAUSIBLE;
    }

    private Quality good(double temperatureC) {
        lastC = temperatureC;
        return Quality.GOOD;
    }

    /** The reading is such that no pan can have it, or the value jumps to and fro as with a loose plug. */
    Condition implausible(double t) {
        forgetSpikes(t);
        if (latest == Quality.IMPLAUSIBLE || spikes.size() >= LOOSE_SPIKES) {
            return Condition.PRESENT;
        }
        return spikes.size() > LOOSE_SPIKES / 2 ? Condition.UNDECIDED : Condition.ABSENT;
    }

    /** How far it jumped up, in °C, if that is what is wrong; empty for a value that jumps about. */
    OptionalDouble jumpedUpC() {
        return beforeJumpC.isPresent() ? OptionalDouble.of(jumpC) : OptionalDouble.empty();
    }
}
