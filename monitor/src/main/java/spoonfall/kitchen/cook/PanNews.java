package spoonfall.kitchen.cook;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import spoonfall.kitchen.told.KitchenChange;

/** The changes of a pan: those that nobody was told yet, and the latest of its cook. Used by the kitchen's thread alone. */
public final class PanNews {
    private static final int CHANGES_KEPT = 200;
    private static final long VIEW_EVERY_NANOS = 900_000_000L;

    private final Deque<KitchenChange> kept = new ArrayDeque<>();
    private final List<KitchenChange> fresh = new ArrayList<>();
    private long seq;
    private boolean stirred = true;
    private long viewTakenNanos = System.nanoTime();
    private OptionalLong heardNanos = OptionalLong.empty();

    /** One more change, made of its number. */
    void add(LongFunction<KitchenChange> change) {
        KitchenChange made = change.apply(++seq);
        fresh.add(made);
        kept.addLast(made);
        if (kept.size() > CHANGES_KEPT) {
            kept.removeFirst();
        }
        stirred = true;
    }

    /** The same for one of which only the newest counts: it is told, and not kept. */
    public void addPassing(LongFunction<KitchenChange> change) {
        fresh.add(change.apply(++seq));
        stirred = true;
    }

    /** The number of the latest change. */
    public long seq() {
        return seq;
    }

    /** A page would show something else now. */
    public void stir() {
        stirred = true;
    }

    /** A page would, since a reading was heard. */
    public void heard(long atNanos) {
        heardNanos = OptionalLong.of(atNanos);
        stirred = true;
    }

    /** When the reading was heard that the next view is of. */
    public OptionalLong heardNanos() {
        return heardNanos;
    }

    /** Time passes: after about a second without a view there is something to see, if only the time. */
    public void passTime() {
        stirred |= System.nanoTime() - viewTakenNanos >= VIEW_EVERY_NANOS;
    }

    /** Whether a page would show something else than the last view. */
    public boolean hasView() {
        return stirred;
    }

    /** What there is to see was seen. */
    public void viewTaken() {
        stirred = false;
        viewTakenNanos = System.nanoTime();
        heardNanos = OptionalLong.empty();
    }

    /** Whether there are changes that nobody was told yet. */
    public boolean isFresh() {
        return !fresh.isEmpty();
    }

    /** Takes the changes that nobody was told yet, oldest first. */
    public List<KitchenChange> take() {
        List<KitchenChange> taken = List.copyOf(fresh);
        fresh.clear();
        return taken;
    }

    /** The latest changes of this cook, oldest first. */
    public List<KitchenChange> latest() {
        return List.copyOf(kept);
    }

    /** A new cook has none; their numbers go on. */
    public void clear() {
        kept.clear();
        fresh.clear();
        heardNanos = OptionalLong.empty();
        stirred = true;
    }
}
