package spoonfall.kitchen.typed;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What was typed, by its id, so that it is taken once however often it arrives. Used by the kitchen's thread alone. */
public final class TypedBook {
    private static final int IDS_KEPT = 500;

    private final Map<String, HandAnswer> answered = new LinkedHashMap<>();
    private Optional<HandEntry> last = Optional.empty();

    /** What came of the reading of that id; empty if there never was one. */
    public Optional<HandAnswer> answered(String id) {
        return Optional.ofNullable(answered.get(id));
    }

    /** A reading of this cook was taken. */
    public HandAnswer took(HandEntry entry) {
        last = Optional.of(entry);
        return remember(entry.id(), new HandAnswer.Taken(entry));
    }

    /** The latest reading is none any more. */
    public void tookBack(String id) {
        forgetLast();
        remember(id, new HandAnswer.TakenBack(id));
    }

    /** What was typed last in this cook and not taken back. */
    public Optional<HandEntry> last() {
        return last;
    }

    /** Nothing was typed in this cook yet, or what was is no reading any more. */
    public void forgetLast() {
        last = Optional.empty();
    }

    private HandAnswer remember(String id, HandAnswer answer) {
        answered.put(id, answer);
        if (answered.size() > IDS_KEPT) {
            answered.remove(answered.keySet().iterator().next());
        }
        return answer;
    }
}
