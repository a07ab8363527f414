package spoonfall.kitchen.desk;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import spoonfall.afternoon.BatchNotes;
import spoonfall.kitchen.afternoon.AfternoonWord;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.ask.Taps;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.pan.PanKeeper;
import spoonfall.kitchen.told.AfternoonView;

/**
 * Where somebody says how far the afternoon is. Everything is done by the kitchen's thread; what the notes do not know ends in a
 * {@link Refusal}, and else the answer is how the afternoon stands. A word that arrives twice, by the id that the page gave
 * it, is taken once.
 */
public final class AfternoonDesk {
    private final PanKeeper keeper;
    private final Pan pan;
    private final Taps taps = new Taps();

    AfternoonDesk(PanKeeper keeper, Pan pan) {
        this.keeper = keeper;
        this.pan = pan;
    }

    /** A step is done, and all before it are over. */
    public CompletableFuture<AfternoonView> tap(Optional<String> id, String step) {
        return say(id, AfternoonWord.on(AfternoonWord.What.TAP, step));
    }

    /** A step begins, and all before it are over. */
    public CompletableFuture<AfternoonView> begin(Optional<String> id, String step) {
        return say(id, AfternoonWord.on(AfternoonWord.What.BEGIN, step));
    }

    /** A step is left out this time. */
    public CompletableFuture<AfternoonView> skip(Optional<String> id, String step) {
        return say(id, AfternoonWord.on(AfternoonWord.What.SKIP, step));
    }

    /** A preparation was done. */
    public CompletableFuture<AfternoonView> prepare(Optional<String> id, String preparation) {
        return say(id, AfternoonWord.on(AfternoonWord.What.PREPARE, preparation));
    }

    /** Another timer, such as that of the jars, says that a step has begun. */
    public CompletableFuture<AfternoonView> stepStarted(String step) {
        return say(Optional.empty(), AfternoonWord.on(AfternoonWord.What.STEP_STARTED, step));
    }

    /** Another timer, such as that of the jars or of a set test, says that a step is done. */
    public CompletableFuture<AfternoonView> stepDone(String step) {
        return say(Optional.empty(), AfternoonWord.on(AfternoonWord.What.STEP_DONE, step));
    }

    /** What was begun with a preparation is ready, as a canner that boils; how long it took is learnt. */
    public CompletableFuture<AfternoonView> prepared(String preparation) {
        return say(Optional.empty(), AfternoonWord.on(AfternoonWord.What.PREPARED, preparation));
    }

    /** Takes back the newest word, if it is still the one of that number. */
    public CompletableFuture<AfternoonView> undo(long mark) {
        return answer(() -> pan.afternoon().undo(mark, keeper.tickNanos()));
    }

    /** Another name or time for a step or a preparation. */
    public CompletableFuture<AfternoonView> change(
            Optional<String> id, String what, Optional<String> name, Optional<Integer> minutes) {
        return say(id, new AfternoonWord(AfternoonWord.What.CHANGE, what, name, minutes));
    }

    /** The notes do without a step or a preparation from now on. */
    public CompletableFuture<AfternoonView> remove(Optional<String> id, String what) {
        return say(id, AfternoonWord.on(AfternoonWord.What.REMOVE, what));
    }

    /** Another step behind the step {@code after}. */
    public CompletableFuture<AfternoonView> addStep(Optional<String> id, String name, int minutes, String after) {
        return say(id, new AfternoonWord(AfternoonWord.What.ADD_STEP, after, Optional.of(name), Optional.of(minutes)));
    }

    /** Another preparation for the step {@code before}. */
    public CompletableFuture<AfternoonView> addPreparation(
            Optional<String> id, String name, int minutes, String before) {
        return say(
                id,
                new AfternoonWord(AfternoonWord.What.ADD_PREPARATION, before, Optional.of(name), Optional.of(minutes)));
    }

    /** The notes as they are now. */
    public CompletableFuture<BatchNotes> notes() {
        return keeper.ask(() -> pan.afternoon().afternoon().notes());
    }

    private CompletableFuture<AfternoonView> say(Optional<String> id, AfternoonWord word) {
        return answer(() -> {
            if (!taps.taken(id)) {
                pan.afternoon().say(word, keeper.tickNanos());
                taps.take(id);
            }
        });
    }

    private CompletableFuture<AfternoonView> answer(Runnable act) {
        return keeper.ask(() -> {
            try {
                act.run();
            } catch (IllegalArgumentException e) {
                throw new Refusal(String.valueOf(e.getMessage()), e);
            }
            keeper.publish();
            return pan.afternoon().view();
        });
    }
}
