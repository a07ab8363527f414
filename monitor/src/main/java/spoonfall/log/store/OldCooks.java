package spoonfall.log.store;

import java.time.Duration;
import java.time.Instant;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.log.KeepRules;
import spoonfall.log.store.upkeep.CookPacker;
import spoonfall.log.store.upkeep.Upkeep;

/** Old cooks are looked after one at a time, and once a day when none is left to look after. Used by the recorder's thread. */
final class OldCooks {
    private static final Logger LOG = LoggerFactory.getLogger(OldCooks.class);
    private static final Duration EVERY = Duration.ofDays(1);

    private final Upkeep upkeep;
    private long nextNanos = System.nanoTime();

    /** Old cooks of which that much is kept. */
    OldCooks(KeepRules keep) {
        upkeep = new Upkeep(keep);
    }

    /** Looks after the next one, if that is due. */
    void look(Handle handle) {
        if (System.nanoTime() - nextNanos < 0) {
            return;
        }
        boolean more = false;
        try {
            more = upkeep.next(handle, Instant.now()) || CookPacker.next(handle);
        } catch (RuntimeException e) {
            LOG.debug("old cooks stay for now", e);
        }
        nextNanos = System.nanoTime() + (more ? 0 : EVERY.toNanos());
    }
}
