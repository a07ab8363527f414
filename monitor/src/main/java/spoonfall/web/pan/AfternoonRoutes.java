package spoonfall.web.pan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.desk.AfternoonDesk;
import spoonfall.kitchen.file.NotesText;
import spoonfall.kitchen.told.AfternoonView;
import spoonfall.web.view.AfternoonViews;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls that say how far the afternoon is, and change the notes. Each answers with the afternoon afterwards. */
final class AfternoonRoutes {
    private final Function<Context, Kitchen> pan;

    /** The calls on the pan that a request is about. */
    AfternoonRoutes(Function<Context, Kitchen> pan) {
        this.pan = pan;
    }

    private AfternoonDesk desk(Context ctx) {
        return pan.apply(ctx).afternoon();
    }

    /** Adds the calls below a path. */
    void add(RoutesConfig routes, String base) {
        routes.post(
                base + "/afternoon/steps/{id}/begin",
                ctx -> told(ctx, desk(ctx).begin(Asked.tap(ctx), ctx.pathParam("id"))));
        routes.post(
                base + "/afternoon/steps/{id}/done",
                ctx -> told(ctx, desk(ctx).tap(Asked.tap(ctx), ctx.pathParam("id"))));
        routes.post(
                base + "/afternoon/steps/{id}/skip",
                ctx -> told(ctx, desk(ctx).skip(Asked.tap(ctx), ctx.pathParam("id"))));
        routes.post(
                base + "/afternoon/preparations/{id}/done",
                ctx -> told(ctx, desk(ctx).prepare(Asked.tap(ctx), ctx.pathParam("id"))));
        routes.post(base + "/afternoon/undo", this::undo);
        routes.get(base + "/afternoon/notes", this::notes);
        routes.post(base + "/afternoon/notes", this::addNote);
        routes.post(base + "/afternoon/notes/{id}", this::change);
        routes.delete(
                base + "/afternoon/notes/{id}",
                ctx -> told(ctx, desk(ctx).remove(Optional.empty(), ctx.pathParam("id"))));
    }

    private void undo(Context ctx) {
        told(ctx, desk(ctx).undo(Asked.mark(ctx)));
    }

    private void notes(Context ctx) {
        ctx.header("Cache-Control", "no-store");
        ctx.header("Content-Disposition", "attachment; filename=\"batch-notes.toml\"");
        ctx.contentType("application/toml; charset=utf-8")
                .result(NotesText.of(Answers.of(desk(ctx).notes())));
    }

    private void change(Context ctx) {
        JsonNode asked = Asked.body(ctx, List.of("tap", "name", "minutes"));
        told(
                ctx,
                desk(ctx)
                        .change(
                                Asked.text(asked, "tap"),
                                ctx.pathParam("id"),
                                Asked.text(asked, "name"),
                                minutes(asked)));
    }

    private void addNote(Context ctx) {
        JsonNode asked = Asked.body(ctx, List.of("tap", "name", "minutes", "after", "before"));
        String name = Asked.text(asked, "name").orElseThrow(() -> new Refusal("say what is to be done"));
        int minutes = minutes(asked).orElseThrow(() -> new Refusal("\"minutes\" is needed, a whole number"));
        Optional<String> after = Asked.text(asked, "after");
        Optional<String> before = Asked.text(asked, "before");
        if (after.isPresent() == before.isPresent()) {
            throw new Refusal("say which step it comes \"after\", or which step it must be ready \"before\"");
        }
        Optional<String> tap = Asked.text(asked, "tap");
        told(
                ctx,
                after.map(step -> desk(ctx).addStep(tap, name, minutes, step))
                        .orElseGet(() -> desk(ctx).addPreparation(tap, name, minutes, before.orElseThrow())));
    }

    private static Optional<Integer> minutes(JsonNode asked) {
        JsonNode minutes = asked.path("minutes");
        if (minutes.isMissingNode() || minutes.isNull()) {
            return Optional.empty();
        }
        if (!minutes.isIntegralNumber() || !minutes.canConvertToInt()) {
            throw new Refusal("\"minutes\" must be a whole number, such as 20");
        }
        return Optional.of(minutes.intValue());
    }

    private static void told(Context ctx, CompletableFuture<AfternoonView> answer) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.set("afternoon", AfternoonViews.of(Answers.of(answer)));
        Answers.json(ctx, 200, node);
    }
}
