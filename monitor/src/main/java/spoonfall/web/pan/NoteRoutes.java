package spoonfall.web.pan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.Function;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.log.CookNote;
import spoonfall.web.view.NoteViews;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls by which a page writes notes of the cook in the pan. */
final class NoteRoutes {
    private final Function<Context, Kitchen> asked;

    NoteRoutes(Function<Context, Kitchen> asked) {
        this.asked = asked;
    }

    /** Adds the calls on a pan, below a path. */
    void add(RoutesConfig routes, String base) {
        routes.post(base + "/notes", this::write);
    }

    private void write(Context ctx) {
        JsonNode body = Asked.body(ctx, List.of("id", "text"));
        String id = Asked.id(body, "note");
        if (!body.path("text").isTextual()) {
            throw new Refusal("\"text\" is needed, such as \"skimmed twice\"");
        }
        CookNote note =
                Answers.of(asked.apply(ctx).notes().write(id, body.path("text").textValue()));
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.set("note", NoteViews.view(note));
        Answers.json(ctx, 200, node);
    }
}
