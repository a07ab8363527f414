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
    private boolean numbered;
    private boolean anotherBegan;
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

    /** Somebody begins another cook: if it is not known yet what was left, that stays in the record as it is. */
    public void anotherBegins() {
        if (!over && !anotherBegan) {
            LOG.warn("a cook began before the record could say what an earlier run left, which stays in it as it is");
            anotherBegan = true;
        }
    }

    /** Asks the record, if that is due; says whether everything stands as it was left from now on. */
    public boolean takeUp() {
        if (over || System.nanoTime() - nextNanos < 0) {
            return false;
        }
        numbered = numbered || number();
        if (pan.cook().now().isPresent()) {
            anotherBegins();
        }
        over = numbered && (anotherBegan || asked());
        if (over) {
            pan.afternoon().caughtUp();
        }
        nextNanos = System.nanoTime() + AGAIN_NANOS;
        return over;
    }

    /** Counts on from the last cook of the record, so that no two have one number. */
    private boolean number() {
        Recalled<Integer> last = journal.lastNumber();
        last.found().ifPresent(number -> pan.number(number + 1));
        return last.known();
    }

    /** What is there twice is taken up once: the diaries see to that. */
    private boolean asked() {
        if (!pan.afternoon().recall(clock.getAsLong()) || !pan.batch().recall()) {
            return false;
        }
        Recalled<UnfinishedCook> left = journal.unfinished();
        left.found().ifPresent(cook -> comingBack.after(cook, clock.getAsLong()));
        return left.known();
    }
}
