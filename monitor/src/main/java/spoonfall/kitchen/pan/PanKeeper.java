package spoonfall.kitchen.pan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import spoonfall.kitchen.ask.Questions;
import spoonfall.kitchen.ask.Taps;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenListener;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.log.CookRecord;

/**
 * Keeps a pan: has its thread answer what is asked and do what is said, and tells everybody what came of it. What does not ask the
 * thread is used by it alone.
 */
public final class PanKeeper {
    /** How often the thread looks at the pan. */
    public static final long TICK_MILLIS = 200;

    /** In a replay a moment of ours is many seconds of the cook: a late thread must not look like a silent probe. */
    private static final long REPLAY_BEHIND_MILLIS = 1000;

    private final KitchenPlan plan;
    private final Pan pan;
    private final LongSupplier cookClock;
    private final Consumer<Runnable> thread;
    private final Audience audience = new Audience();
    private final Taps taps = new Taps();

    /**
     * A keeper to whom nobody listens yet.
     *
     * @param plan what is watched
     * @param pan the pan
     * @param cookClock the clock by which its readings are stamped
     * @param thread gives the thread that owns the pan something to do
     */
    public PanKeeper(KitchenPlan plan, Pan pan, LongSupplier cookClock, Consumer<Runnable> thread) {
        this.plan = plan;
        this.pan = pan;
        this.cookClock = cookClock;
        this.thread = thread;
    }

    /** Asks the thread. */
    public <T> CompletableFuture<T> ask(Supplier<T> question) {
        return Questions.ask(thread, question);
    }

    /** Adds a listener, which first hears where everything stands. */
    public void listen(KitchenListener listener) {
        withState(state -> audience.join(listener, state));
    }

    /** Has the thread run {@code task} with where everything stands, when all listeners were told what came before. */
    public void withState(Consumer<KitchenState> task) {
        thread.accept(() -> {
            publish();
            task.accept(pan.state());
        });
    }

    /** Where everything stands. */
    public CompletableFuture<KitchenState> state() {
        return ask(pan::state);
    }

    /** The readings of this cook so far. */
    public CompletableFuture<CookRecord> record() {
        return ask(pan::record);
    }

    /**
     * Begins a new cook, which starts with the next reading.
     *
     * @param tap the id of the tap that asks for it, if it has one: the same tap begins one cook, however often it arrives
     */
    public CompletableFuture<KitchenState> newCook(Optional<String> tap) {
        return ask(() -> {
            if (!taps.taken(tap)) {
                beginAnew();
                taps.take(tap);
            }
            return pan.state();
        });
    }

    /** Does something at this moment of the cook, tells what came of it, and answers with where everything stands. */
    public CompletableFuture<KitchenState> asking(LongConsumer act) {
        return ask(() -> {
            act.accept(tickNanos());
            publish();
            return pan.state();
        });
    }

    /** Goes through the cook again, measured against what counts now. */
    public KitchenState rebased() {
        pan.rebase(tickNanos());
        publish();
        return told();
    }

    /** A new cook in a new afternoon. */
    public void beginAnew() {
        beginCook(OptionalLong.of(tickNanos()));
    }

    /** A new cook of the same afternoon. */
    public KitchenState afresh() {
        beginCook(OptionalLong.empty());
        return pan.state();
    }

    private void beginCook(OptionalLong newAfternoonNanos) {
        pan.beginCook(newAfternoonNanos);
        told();
    }

    /** Tells every listener where everything stands. */
    public KitchenState told() {
        KitchenState state = pan.state();
        audience.tell(listener -> listener.begin(state));
        return state;
    }

    /** Tells what is new. */
    public void publish() {
        List<KitchenChange> changes = pan.takeChanges();
        changes.forEach(change -> audience.tell(listener -> listener.changed(change)));
        pan.takeView().ifPresent(view -> audience.tell(listener -> listener.pan(view)));
    }

    /** Now, on the readings' scale. */
    public long nowNanos() {
        return cookClock.getAsLong();
    }

    /** A little behind the clock, so that readings on their way are not overtaken. */
    public long tickNanos() {
        long behindMillis = plan.source() == KitchenPlan.Source.LIVE ? TICK_MILLIS : REPLAY_BEHIND_MILLIS;
        return nowNanos() - (long) (TimeUnit.MILLISECONDS.toNanos(behindMillis) * plan.speed());
    }
}
