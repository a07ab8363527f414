package spoonfall.kitchen.again;

import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.kitchen.pan.Pan;
import spoonfall.log.CookJournal;
import spoonfall.log.Recalled;
import spoonfall.log.UnfinishedCook;

/**
 * Takes up what an earlier run left, as soon as the record says what that was, unless another cook has begun by then. Used by the
 * kitchen's thread alone.
 */
public final class LeftBehind {
    private static final Logger LOG = LoggerFactory.getLogger(LeftBehind.class);
    private static final long AGAIN_NANOS = TimeUnit.SECONDS.toNanos(2);

    private final Pan pan;
    private final CookJournal journal;
    private final PanReturn comingBack;
    private final LongSupplier clock;
    private boolean over;
    private long nextNanos = System.nanoTime();

    /**
     * What was left of a pan.
     *
     * @param clock now, on the readings' scale
     */
    public LeftBehind(Pan pan, CookJournal journal, PanReturn comingBack, LongSupplier clock) {
        this.pan = pan;
        this.journal = journal;
        this.comingBack = comingBack;
        this.clock = clock;
    }

    /** Asks the record, if that is due; says whether everything stands as it was left from now on. */
    public boolean takeUp() {
        if (over || System.nanoTime() - nextNanos < 0) {
            return false;
        }
        if (pan.cook().now().isPresent()) {
            LOG.warn("a cook began before the record could say what an earlier run left, which stays in it as it is");
            over = true;
        } else {
            over = asked();
        }
        if (over) {
            pan.afternoon().caughtUp();
        }
        nextNanos = System.nanoTime() + AGAIN_NANOS;
        return over;
    }

    /** What is there twice is taken up once: the diaries see to that. */
    private boolean asked() {
        pan.number(journal.lastNumber() + 1);
        if (!pan.afternoon().recall(clock.getAsLong()) || !pan.batch().recall()) {
            return false;
        }
        Recalled<UnfinishedCook> left = journal.unfinished();
        left.found().ifPresent(cook -> comingBack.after(cook, clock.getAsLong()));
        return left.known();
    }
}
