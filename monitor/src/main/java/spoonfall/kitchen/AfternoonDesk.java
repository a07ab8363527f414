package spoonfall.kitchen;

import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiConsumer;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;
import spoonfall.afternoon.Afternoon;
import spoonfall.afternoon.BatchNotes;
import spoonfall.afternoon.Preparation;
import spoonfall.afternoon.Step;

/**
 * Where somebody says how far the afternoon is. Everything is done by the kitchen's thread; what the notes do not know ends in a
 * {@link Refusal}, and else the answer is how the afternoon stands. A word that arrives twice, by the id that the page gave
 * it, is taken once.
 */
public final class AfternoonDesk {
    private static final int IDS_KEPT = 500;

    private final Kitchen kitchen;
    private final Pan pan;
    private final LongSupplier nowNanos;
    private final Set<String> heard = new LinkedHashSet<>();

    AfternoonDesk(Kitchen kitchen, Pan pan, LongSupplier nowNanos) {
        this.kitchen = kitchen;
        this.pan = pan;
        this.nowNanos = nowNanos;
    }

    /** A step is done, and all before it are over. */
    public CompletableFuture<AfternoonView> tap(Optional<String> id, String step) {
        return say(id, (afternoon, t) -> afternoon.tap(step, t));
    }

    /** A step begins, and all before it are over. */
    public CompletableFuture<AfternoonView> begin(Optional<String> id, String step) {
        return say(id, (afternoon, t) -> afternoon.begin(step, t));
    }

    /** A step is left out this time. */
    public CompletableFuture<AfternoonView> skip(Optional<String> id, String step) {
        return say(id, (afternoon, t) -> afternoon.skip(step, t));
    }

    /** A preparation was done. */
    public CompletableFuture<AfternoonView> prepare(Optional<String> id, String preparation) {
        return say(id, (afternoon, t) -> afternoon.prepare(preparation, t));
    }

    /** Another timer, such as that of the jars, says that a step has begun. */
    public CompletableFuture<AfternoonView> stepStarted(String step) {
        return say(Optional.empty(), (afternoon, t) -> afternoon.stepStarted(step, t));
    }

    /** Another timer, such as that of the jars or of a set test, says that a step is done. */
    public CompletableFuture<AfternoonView> stepDone(String step) {
        return say(Optional.empty(), (afternoon, t) -> afternoon.stepDone(step, t));
    }

    /** What was begun with a preparation is ready, as a canner that boils; how long it took is learnt. */
    public CompletableFuture<AfternoonView> prepared(String preparation) {
        return say(Optional.empty(), (afternoon, t) -> afternoon.prepared(preparation, t));
    }

    /** Takes back the newest word, if it is still the one of that number. */
    public CompletableFuture<AfternoonView> undo(long mark) {
        return answer(() -> pan.afternoon().undo(mark, nowNanos.getAsLong()));
    }

    /** Another name or time for a step or a preparation. */
    public CompletableFuture<AfternoonView> change(
            Optional<String> id, String what, Optional<String> name, Optional<Integer> minutes) {
        return edit(id, notes -> notes.changed(what, name, minutes), "A change of the notes");
    }

    /** The notes do without a step or a preparation from now on. */
    public CompletableFuture<AfternoonView> remove(Optional<String> id, String what) {
        return edit(id, notes -> notes.without(what), "One taken out of the notes");
    }

    /** Another step behind the step {@code after}. */
    public CompletableFuture<AfternoonView> addStep(Optional<String> id, String name, int minutes, String after) {
        return edit(id, notes -> notes.with(Step.own(idFor(notes, name), name, minutes), after), "Added: " + name);
    }

    /** Another preparation for the step {@code before}. */
    public CompletableFuture<AfternoonView> addPreparation(
            Optional<String> id, String name, int minutes, String before) {
        return edit(
                id, notes -> notes.with(Preparation.own(idFor(notes, name), name, minutes, before)), "Added: " + name);
    }

    /** The notes as they are now. */
    public CompletableFuture<BatchNotes> notes() {
        return kitchen.ask(() -> pan.afternoon().afternoon().notes());
    }

    /** An id made of a name that none of the notes has. */
    private static String idFor(BatchNotes notes, String name) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^[-0-9]+|-+$", "");
        String stem = plain.isEmpty() ? "own" : plain.substring(0, Math.min(plain.length(), 24));
        String id = stem;
        for (int i = 2; notes.step(id).isPresent() || notes.preparation(id).isPresent(); i++) {
            id = stem + "-" + i;
        }
        return id;
    }

    private CompletableFuture<AfternoonView> edit(Optional<String> id, UnaryOperator<BatchNotes> change, String words) {
        return say(id, (afternoon, t) -> afternoon.edit(change, words, t));
    }

    private CompletableFuture<AfternoonView> say(Optional<String> id, BiConsumer<Afternoon, Double> word) {
        return answer(() -> {
            if (id.isEmpty() || !heard.contains(id.get())) {
                AfternoonBook book = pan.afternoon();
                word.accept(book.afternoon(), book.now(nowNanos.getAsLong()));
                id.ifPresent(this::remember);
            }
        });
    }

    private void remember(String id) {
        heard.add(id);
        if (heard.size() > IDS_KEPT) {
            Iterator<String> oldest = heard.iterator();
            oldest.next();
            oldest.remove();
        }
    }

    private CompletableFuture<AfternoonView> answer(Runnable act) {
        return kitchen.ask(() -> {
            try {
                act.run();
            } catch (IllegalArgumentException e) {
                throw new Refusal(String.valueOf(e.getMessage()), e);
            }
            pan.tellAfternoon();
            kitchen.publish();
            return pan.afternoon().view();
        });
    }
}
