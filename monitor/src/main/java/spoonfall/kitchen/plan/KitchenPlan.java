package spoonfall.kitchen.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import spoonfall.afternoon.BatchNotes;
import spoonfall.afternoon.UsualAfternoon;
import spoonfall.cook.CookSettings;
import spoonfall.kitchen.file.PanEntry;

/**
 * What a kitchen is to watch in one of its pans.
 *
 * @param pan the pan's name, in addresses and on the page
 * @param name the kitchen's name, for the page
 * @param batch what is being made, for the page; may be empty
 * @param settings what each cook is measured against
 * @param source where the readings come from
 * @param speed how many seconds of the cook pass in one of ours; 1 when live
 * @param startedAt the wall clock at the first reading, when it is not now, as in a replay
 * @param repeat whether a recorded cook that is over begins again
 * @param notes how the batch goes
 */
public record KitchenPlan(
        String pan,
        String name,
        String batch,
        CookSettings settings,
        Source source,
        double speed,
        Optional<Instant> startedAt,
        boolean repeat,
        BatchNotes notes) {

    /** Whoever was away for longer has another pan on the hob, or none; common practice, no source. */
    public static final Duration WITHIN = Duration.ofHours(3);

    /** Where the readings come from. */
    public enum Source {
        /** A thermometer. */
        LIVE,
        /** A recorded cook. */
        REPLAY,
        /** The sample cook that comes with the program. */
        DEMO;

        /** The name on the wire, such as {@code live}. */
        public String wireName() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Validates the speed. */
    public KitchenPlan {
        if (!(speed > 0) || Double.isInfinite(speed)) {
            throw new IllegalArgumentException("speed must be a number above 0, not " + speed);
        }
    }

    /** The plan of a kitchen with one pan, whose batch goes as usual. */
    public KitchenPlan(
            String name,
            String batch,
            CookSettings settings,
            Source source,
            double speed,
            Optional<Instant> startedAt,
            boolean repeat) {
        this(PanEntry.ONLY, name, batch, settings, source, speed, startedAt, repeat, UsualAfternoon.notes());
    }

    /** The same for the pan of that name. */
    public KitchenPlan inPan(String otherPan) {
        return new KitchenPlan(otherPan, name, batch, settings, source, speed, startedAt, repeat, notes);
    }

    /** The same, whose batch goes by other notes. */
    public KitchenPlan with(BatchNotes others) {
        return new KitchenPlan(pan, name, batch, settings, source, speed, startedAt, repeat, others);
    }

    /**
     * Whether what an earlier run left is still this kitchen's.
     *
     * @param away for how long nobody was there
     * @param itsBatch what was being made then
     * @param itsSource where the readings came from then, by the name on the wire
     * @param itsSpeed how fast time passed then
     */
    public boolean isStill(Duration away, String itsBatch, String itsSource, double itsSpeed) {
        return away.compareTo(WITHIN) <= 0
                && itsBatch.equals(batch)
                && itsSource.equals(source.wireName())
                && itsSpeed == speed;
    }

    /** A live kitchen whose time passes {@code speed} times as fast as life: 1 but for trials. */
    public static KitchenPlan live(String name, String batch, CookSettings settings, double speed) {
        return new KitchenPlan(name, batch, settings, Source.LIVE, speed, Optional.empty(), false);
    }
}
