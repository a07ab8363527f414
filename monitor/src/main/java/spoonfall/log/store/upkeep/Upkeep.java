package spoonfall.log.store.upkeep;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.log.Keep;
import spoonfall.log.KeepRules;
import spoonfall.log.store.cook.CookLine;
import spoonfall.log.store.cook.CookStore;

/**
 * Lets old cooks go, or thins them out, as the kitchen says: one at a time, so that nobody waits for it, and never without an
 * entry in the record. Cooks that run, and traces that somebody took in, are left alone.
 */
public final class Upkeep {
    private static final Logger LOG = LoggerFactory.getLogger(Upkeep.class);

    private final KeepRules rules;
    private final Set<Long> looked = new HashSet<>();
    private int went;
    private int thinned;

    /** Upkeep by these rules. */
    public Upkeep(KeepRules rules) {
        this.rules = rules;
    }

    /** Looks after one cook; says whether there may be another one to look after. */
    public boolean next(Handle handle, Instant now) {
        if (rules.equals(KeepRules.EVERYTHING)) {
            return false;
        }
        Optional<Runnable> act = due(handle, now);
        act.ifPresent(Runnable::run);
        if (act.isEmpty()) {
            tell();
        }
        return act.isPresent();
    }

    private Optional<Runnable> due(Handle handle, Instant now) {
        List<CookLine> cooks = new CookStore(handle)
                .list().stream()
                        .filter(cook -> !cook.pan().equals(CookStore.IMPORTED))
                        .sorted(Comparator.comparingLong(CookLine::id).reversed()) // clocks may have been wrong
                        .toList();
        Set<String> pans = new HashSet<>();
        for (int newer = 0; newer < cooks.size(); newer++) {
            CookLine cook = cooks.get(newer);
            boolean mayRun = pans.add(cook.pan()) && !cook.ended();
            if (mayRun) {
                continue;
            }
            if (!rules.atAll().covers(cook.startedAt(), newer, now)) {
                return Optional.of(() -> letGo(handle, cook, now));
            }
            boolean thin = !rules.whole().covers(cook.startedAt(), newer, now);
            if (thin && cook.thinned() == 0 && looked.add(cook.id())) {
                return Optional.of(() -> thin(handle, cook, now));
            }
        }
        return Optional.empty();
    }

    private void letGo(Handle handle, CookLine cook, Instant now) {
        handle.useTransaction(writing -> {
            new CookStore(writing).delete(writing, cook.id());
            UpkeepBook.add(writing, line(cook, cook.readings(), true, now, "keep", rules.atAll()));
        });
        went++;
    }

    private void thin(Handle handle, CookLine line, Instant now) {
        long out = handle.inTransaction(writing -> {
            long readings = new CookStore(writing)
                    .read(line.id())
                    .map(cook -> Thinning.thin(writing, cook, Thinning.EVERY))
                    .orElse(0L);
            if (readings > 0) {
                UpkeepBook.add(writing, line(line, readings, false, now, "thin", rules.whole()));
            }
            return readings;
        });
        thinned += out > 0 ? 1 : 0;
    }

    private static UpkeepLine line(CookLine cook, long readings, boolean whole, Instant now, String key, Keep rule) {
        String why = key + " = \"" + rule.words() + "\"";
        return new UpkeepLine(now, cook.id(), cook.startedAt(), cook.batch(), readings, whole, why);
    }

    private void tell() {
        if (went + thinned > 0) {
            LOG.warn(
                    "as the kitchen file says, {} old cooks went from the record and {} were thinned out; \"spoonfall log"
                            + " upkeep\" lists them",
                    went,
                    thinned);
        }
        went = 0;
        thinned = 0;
    }
}
