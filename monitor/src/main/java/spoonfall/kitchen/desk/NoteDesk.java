package spoonfall.kitchen.desk;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.pan.PanKeeper;
import spoonfall.log.CookNote;

/** Where somebody writes a line of the cook in the pan. Everything is done by the kitchen's thread. */
public final class NoteDesk {
    private final PanKeeper keeper;
    private final Pan pan;

    NoteDesk(PanKeeper keeper, Pan pan) {
        this.keeper = keeper;
        this.pan = pan;
    }

    /**
     * Somebody writes a note; writing it again under its key is harmless. A {@link Refusal} says why it cannot be one.
     *
     * @return the note as it is kept
     */
    public CompletableFuture<CookNote> write(String key, String text) {
        return keeper.ask(() -> {
            try {
                CookNote note = pan.notes().write(key, CookNote.checked(text), keeper.tickNanos());
                keeper.publish();
                return note;
            } catch (IllegalArgumentException e) {
                throw new Refusal(String.valueOf(e.getMessage()), e);
            }
        });
    }

    /** The notes of the cook in the pan, in the order in which they were written. */
    public CompletableFuture<List<CookNote>> notes() {
        return keeper.ask(pan.notes()::all);
    }
}
