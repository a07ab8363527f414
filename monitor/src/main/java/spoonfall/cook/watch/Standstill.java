package spoonfall.cook.watch;

import spoonfall.cook.alarm.AlarmText;
import spoonfall.cook.signal.Signals;
import spoonfall.series.Slots;
import spoonfall.series.Track;

/** Remembers the way here, to say since when a pan that does not climb has stood still or cooled, and from where. */
public final class Standstill {
    private static final double KEEP_S = 1200;
    private static final double PEAK_S = 600;

    /** Less than this is not a change of the pan. */
    private static final double LEAST_C = 0.15;

    /** So long it takes at least to see that a pan stands still. */
    private static final double LEAST_S = 90;

    private final Track trend = new Track(KEEP_S);
    private final Slots slots = new Slots();

    /** Forgets the way here. */
    public void restart() {
        trend.clear();
    }

    /** Takes note of where the pan is. */
    public void endSecond(Signals now) {
        if (slots.begins(now.t())) {
            trend.add(now.t(), now.trendC());
        }
    }

    /** What to say of a pan that cools. */
    public AlarmText coolingText(Signals now, AlarmText.Cooling likely) {
        double peakC =
                Math.max(now.trendC(), trend.highestSince(now.t() - PEAK_S).orElse(now.trendC()));
        double sinceT = trend.latestAtLeast(peakC - tellC(now)).orElse(now.t());
        return AlarmText.cooling(peakC, sinceT, likely);
    }

    /** What to say of one that stands. */
    public AlarmText standingText(Signals now) {
        return AlarmText.standingStill(stoodSinceT(now));
    }

    /** What to say of one that stands {@code byC} short of the gel point that was called. */
    public AlarmText shortText(Signals now, double byC) {
        return AlarmText.standingShort(stoodSinceT(now), byC);
    }

    private double stoodSinceT(Signals now) {
        double sinceT = trend.latestAtMost(now.trendC() - tellC(now)).orElse(now.t());
        return Math.min(now.t() - LEAST_S, sinceT);
    }

    private static double tellC(Signals now) {
        return Math.max(LEAST_C, now.knownStepC());
    }
}
