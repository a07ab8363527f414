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
import spoonfall.cook.CookAlarm;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.web.view.Views;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls by which the cook answers an alarm. Each answers with the alarm afterwards. */
final class AlarmRoutes {
    private final Function<Context, Kitchen> pan;

    /** The calls on the pan that a request is about. */
    AlarmRoutes(Function<Context, Kitchen> pan) {
        this.pan = pan;
    }

    /** Adds the calls below a path. */
    void add(RoutesConfig routes, String base) {
        routes.post(
                base + "/alarms/{id}/acknowledge",
                ctx -> told(ctx, pan.apply(ctx).alarms().acknowledge(ctx.pathParam("id"))));
        routes.post(
                base + "/alarms/{id}/shelve",
                ctx -> told(ctx, pan.apply(ctx).alarms().shelve(ctx.pathParam("id"), minutes(ctx))));
        routes.post(
                base + "/alarms/{id}/unshelve",
                ctx -> told(ctx, pan.apply(ctx).alarms().unshelve(ctx.pathParam("id"))));
    }

    private static int minutes(Context ctx) {
        JsonNode minutes = Asked.body(ctx, List.of("minutes")).path("minutes");
        if (!minutes.isIntegralNumber() || !minutes.canConvertToInt()) {
            throw new Refusal("\"minutes\" is needed, a whole number from 1 to " + CookMonitor.MOST_MINUTES_ASIDE);
        }
        return minutes.intValue();
    }

    private static void told(Context ctx, CompletableFuture<Optional<CookAlarm>> answer) {
        Optional<CookAlarm> alarm = Answers.of(answer);
        if (alarm.isEmpty()) {
            Answers.error(ctx, 404, "no alarm of this cook has that name");
            return;
        }
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.set("alarm", Views.alarm(alarm.get()));
        Answers.json(ctx, 200, node);
    }
}
