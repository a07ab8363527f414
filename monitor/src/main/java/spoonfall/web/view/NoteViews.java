package spoonfall.web.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.log.CookNote;

/** The JSON of notes; see docs/live-channel.md. */
public final class NoteViews {
    private NoteViews() {}

    /** Adds the notes of a cook to a snapshot. */
    public static void put(ObjectNode snapshot, List<CookNote> notes) {
        ArrayNode list = snapshot.putArray("notes");
        notes.forEach(note -> list.add(view(note)));
    }

    /** That somebody wrote one, for the page. */
    static ObjectNode change(KitchenChange.Noted change) {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("type", "note");
        node.put("seq", change.seq()).put("t", change.note().atMillis() / 1000.0);
        node.set("note", view(change.note()));
        return node;
    }

    /** A note. */
    public static ObjectNode view(CookNote note) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("id", note.key())
                .put("t", note.atMillis() / 1000.0)
                .put("text", note.text());
    }
}
