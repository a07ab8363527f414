package spoonfall.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookMonitor;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Refusal;

/** The calls by which the cook answers an alarm. Each answers with the alarm afterwards. */
final class AlarmRoutes {
    private final Kitchen kitchen;

    AlarmRoutes(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    void add(RoutesConfig routes) {
        routes.post("/api/alarms/{id}/acknowledge", ctx -> told(ctx, kitchen.acknowledge(ctx.pathParam("id"))));
        routes.post("/api/alarms/{id}/shelve", ctx -> told(ctx, kitchen.shelve(ctx.pathParam("id"), minutes(ctx))));
        routes.post("/api/alarms/{id}/unshelve", ctx -> told(ctx, kitchen.unshelve(ctx.pathParam("id"))));
    }

    private static int minutes(Context ctx) {
        JsonNode minutes = TrustRoutes.body(ctx, List.of("minutes")).path("minutes");
        if (!minutes.isIntegralNumber() || !minutes.canConvertToInt()) {
            throw new Refusal("\"minutes\" is needed, a whole number from 1 to " + CookMonitor.MOST_MINUTES_ASIDE);
        }
        return minutes.intValue();
    }

    private static void told(Context ctx, CompletableFuture<Optional<CookAlarm>> answer) {
        Optional<CookAlarm> alarm = WebServer.answer(answer);
        if (alarm.isEmpty()) {
            WebServer.error(ctx, 404, "no alarm of this cook has that name");
            return;
        }
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.set("alarm", Views.alarm(alarm.get()));
        WebServer.json(ctx, 200, node);
    }
}
