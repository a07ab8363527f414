package spoonfall.web.pan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.typed.HandAnswer;
import spoonfall.probe.line.TemperatureUnit;
import spoonfall.typed.Typed;
import spoonfall.web.live.Snapshots;
import spoonfall.web.view.HandViews;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls by which somebody types what a thermometer shows, and takes the latest back. */
final class HandRoutes {
    private final Function<Context, Kitchen> asked;
    private final Snapshots snapshots;

    HandRoutes(Function<Context, Kitchen> asked, Snapshots snapshots) {
        this.asked = asked;
        this.snapshots = snapshots;
    }

    /** Adds the calls on a pan, below a path. */
    void add(RoutesConfig routes, String base) {
        routes.post(base + "/readings", this::type);
        routes.delete(base + "/readings/{id}", this::takeBack);
    }

    private void type(Context ctx) {
        JsonNode body = Asked.body(ctx, List.of("id", "temperatureC", "reading", "sure"));
        JsonNode sure = body.path("sure");
        if (!sure.isMissingNode() && !sure.isBoolean()) {
            throw new Refusal("\"sure\" must be true or false");
        }
        HandAnswer answer =
                Answers.of(asked.apply(ctx).hands().type(Asked.id(body, "reading"), typed(body), sure.booleanValue()));
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (answer instanceof HandAnswer.Asked back) {
            node.set("question", HandViews.question(back.question()));
            Answers.json(ctx, 409, node.put("error", back.question().text()));
        } else if (answer instanceof HandAnswer.Taken taken) {
            node.set("taken", HandViews.entry(taken.entry()));
            Answers.json(ctx, 200, node);
        } else {
            Answers.json(ctx, 200, node.putNull("taken"));
        }
    }

    private void takeBack(Context ctx) {
        Optional<KitchenState> state = Answers.of(asked.apply(ctx).hands().takeBack(ctx.pathParam("id")));
        if (state.isEmpty()) {
            Answers.error(ctx, 404, "no reading of that id was typed");
            return;
        }
        Answers.json(ctx, 200, snapshots.of(state.get()));
    }

    private static Typed typed(JsonNode asked) {
        JsonNode celsius = asked.path("temperatureC");
        JsonNode reading = asked.path("reading");
        boolean both = celsius.isNumber() && reading.isTextual();
        try {
            if (celsius.isNumber() && !both) {
                return new Typed(celsius.doubleValue(), TemperatureUnit.C);
            }
            if (reading.isTextual() && !both && reading.textValue().length() <= 40) {
                return Typed.parse(reading.textValue());
            }
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
        throw new Refusal("give \"reading\", such as \"212.7F\", or \"temperatureC\", such as 100.4");
    }
}
