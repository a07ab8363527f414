package spoonfall.kitchen.ask;

import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/** The ids of the latest taps that were taken, so that one that arrives twice counts once. Used by one thread. */
public final class Taps {
    private static final int IDS_KEPT = 500;

    private final Set<String> taken = new LinkedHashSet<>();

    /** Whether that tap was taken; one without an id never was. */
    public boolean taken(Optional<String> id) {
        return id.filter(taken::contains).isPresent();
    }

    /** It was taken. */
    public void take(Optional<String> id) {
        id.ifPresent(taken::add);
        if (taken.size() > IDS_KEPT) {
            Iterator<String> oldest = taken.iterator();
            oldest.next();
            oldest.remove();
        }
    }
}
