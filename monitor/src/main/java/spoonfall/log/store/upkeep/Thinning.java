package spoonfall.log.store.upkeep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import spoonfall.log.CookInput;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.write.Marked;
import spoonfall.log.store.write.PanWriter;

/** Makes an old cook smaller: one reading of each thermometer in so many seconds. Words, notes and events stay. */
public final class Thinning {
    /** A reading so often shows every boil and stir of an old cook. */
    public static final Duration EVERY = Duration.ofSeconds(10);

    private Thinning() {}

    /**
     * Thins a cook out, within a transaction of somebody else's.
     *
     * @return how many readings were taken out; none of a damaged cook, of which what is left is not made less
     */
    public static long thin(Handle handle, StoredCook cook, Duration every) {
        List<CookInput> kept = kept(cook, every);
        int out = cook.inputs().size() - kept.size();
        if (out == 0 || cook.damaged() > 0) {
            return 0;
        }
        String key = new CookStore(handle).whereabouts(cook.id()).key();
        handle.execute("DELETE FROM chunk WHERE cook = ?", cook.id());
        handle.execute("DELETE FROM word WHERE cook = ?", cook.id());
        PanWriter writer = new PanWriter(key, cook.header());
        writer.begin(handle, new Marked(cook.aliveMillis(), cook.aliveAt()));
        kept.forEach(input -> writer.input(handle, input));
        writer.flush(handle);
        handle.execute("UPDATE cook SET thinned = thinned + ? WHERE id = ?", out, cook.id());
        return out;
    }

    private static List<CookInput> kept(StoredCook cook, Duration every) {
        List<CookInput> kept = new ArrayList<>();
        Map<String, Long> latest = new HashMap<>();
        for (CookInput input : cook.inputs()) {
            if (input instanceof CookInput.Heard heard) {
                Long last = latest.get(heard.probe());
                if (last != null && heard.takenMillis() - last < every.toMillis()) {
                    continue;
                }
                latest.put(heard.probe(), heard.takenMillis());
            }
            kept.add(input);
        }
        return kept;
    }
}
