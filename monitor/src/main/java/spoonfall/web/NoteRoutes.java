package spoonfall.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.KitchenChange;
import spoonfall.kitchen.Refusal;
import spoonfall.log.CookNote;

/** The calls by which a page writes notes of the cook in the pan. */
final class NoteRoutes {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{1,64}");

    private final Function<Context, Kitchen> asked;

    NoteRoutes(Function<Context, Kitchen> asked) {
        this.asked = asked;
    }

    /** Adds the calls on a pan, below a path. */
    void add(RoutesConfig routes, String base) {
        routes.post(base + "/notes", this::write);
    }

    private void write(Context ctx) {
        JsonNode body = TrustRoutes.body(ctx, List.of("id", "text"));
        JsonNode id = body.path("id");
        if (!id.isTextual() || !ID.matcher(id.textValue()).matches()) {
            throw new Refusal("\"id\" is needed: 1 to 64 letters, digits, - or _, another one for each note");
        }
        if (!body.path("text").isTextual()) {
            throw new Refusal("\"text\" is needed, such as \"skimmed twice\"");
        }
        CookNote note = WebServer.answer(
                asked.apply(ctx).notes().write(id.textValue(), body.path("text").textValue()));
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.set("note", view(note));
        WebServer.json(ctx, 200, node);
    }

    /** Adds the notes of a cook to a snapshot. */
    static void put(ObjectNode snapshot, List<CookNote> notes) {
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

    private static ObjectNode view(CookNote note) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("id", note.key())
                .put("t", note.atMillis() / 1000.0)
                .put("text", note.text());
    }
}
