package spoonfall.kitchen.cook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.log.CookNote;

/** What somebody wrote of the cook in the pan. Used by the kitchen's thread alone. */
public final class PanNotes {
    private final PanCook cook;
    private final PanLog log;
    private final PanNews news;
    private final List<CookNote> notes = new ArrayList<>();

    /** Nothing was written yet. */
    public PanNotes(PanCook cook, PanLog log, PanNews news) {
        this.cook = cook;
        this.log = log;
        this.news = news;
    }

    /** Somebody writes a line of the cook; one of that key that is there already is harmless. */
    public CookNote write(String key, String text, long atNanos) {
        Cook current = cook.now().orElseThrow(PanNotes::nothingToWriteOf);
        return named(key).orElseGet(() -> {
            CookNote note = add(key, text, Math.max(0, current.millisAt(atNanos)));
            log.noted(note);
            news.add(seq -> new KitchenChange.Noted(seq, note));
            return note;
        });
    }

    private static Refusal nothingToWriteOf() {
        return new Refusal(
                "nothing was read of the pan yet, so there is no cook to write of; \"spoonfall log note\" writes of"
                        + " one that is over");
    }

    private Optional<CookNote> named(String key) {
        return notes.stream().filter(note -> note.key().equals(key)).findFirst();
    }

    private CookNote add(String key, String text, long atMillis) {
        if (notes.size() >= CookNote.MOST) {
            throw new Refusal("this cook has " + CookNote.MOST + " notes, and no more fit");
        }
        CookNote note = new CookNote(key, atMillis, Instant.now(), text);
        notes.add(note);
        return note;
    }

    /** Those that an earlier run left. */
    public void recall(List<CookNote> left) {
        notes.addAll(left);
    }

    /** All of them, in order. */
    public List<CookNote> all() {
        return List.copyOf(notes);
    }

    /** A new cook has none. */
    public void clear() {
        notes.clear();
    }
}
