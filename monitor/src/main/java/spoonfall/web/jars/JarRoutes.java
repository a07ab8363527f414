package spoonfall.web.jars;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;
import spoonfall.canner.CannerAlarm;
import spoonfall.canner.CannerTap;
import spoonfall.canner.JarLoad;
import spoonfall.canner.NotNow;
import spoonfall.canner.Seal;
import spoonfall.canning.JarBatch;
import spoonfall.canning.Typed;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.canner.CannerDesk;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls by which filled jars are asked about and watched. Each answers with how the jars stand afterwards. */
public final class JarRoutes {
    private static final List<String> BATCH = List.of(
            "food",
            "elevation",
            "jar",
            "sterilised",
            "canner",
            "recipeTime",
            "recipeElevation",
            "headspace",
            "ph",
            "tested");
    private static final List<String> LOAD =
            Stream.concat(BATCH.stream(), Stream.of("tap", "jars")).toList();

    private final CannerDesk desk;

    /** The calls on the jars of a desk. */
    public JarRoutes(CannerDesk desk) {
        this.desk = desk;
    }

    /** Adds the calls. */
    public void add(RoutesConfig routes) {
        routes.get("/api/jars", ctx -> told(ctx, desk.state()));
        routes.post("/api/jars/time", this::time);
        routes.post("/api/jars", this::load);
        routes.post("/api/jars/tap", this::tap);
        routes.post("/api/jars/loads/{load}/seal", this::seal);
        routes.post("/api/jars/loads/{load}/away", this::putAway);
        routes.post("/api/jars/undo", this::undo);
        routes.post("/api/jars/alarms/{id}/acknowledge", this::acknowledge);
    }

    private void time(Context ctx) {
        JarBatch batch = batch(Asked.body(ctx, BATCH));
        JarLoad load = understood(() -> JarLoad.of(batch, 1));
        Answers.json(ctx, 200, JarViews.time(load.time()));
    }

    private void load(Context ctx) {
        JsonNode asked = Asked.body(ctx, LOAD);
        JarBatch batch = batch(asked);
        int jars = Asked.whole(asked, "jars");
        JarLoad load = understood(() -> JarLoad.of(batch, jars));
        told(ctx, desk.load(tapId(asked), load));
    }

    private void tap(Context ctx) {
        JsonNode asked = Asked.body(ctx, List.of("tap", "does"));
        String does = Asked.needed(asked, "does", "boils");
        CannerTap tap = understood(() -> CannerTap.named(does));
        told(ctx, desk.tap(tapId(asked), tap));
    }

    private void seal(Context ctx) {
        JsonNode asked = Asked.body(ctx, List.of("tap", "jar", "sealed"));
        Seal seal = Asked.text(asked, "sealed")
                .map(text -> switch (text) {
                    case "yes" -> Seal.SEALED;
                    case "no" -> Seal.UNSEALED;
                    case "unknown" -> Seal.UNKNOWN;
                    default -> throw new Refusal("\"sealed\" must be yes, no or unknown, not \"" + text + "\"");
                })
                .orElseThrow(() -> new Refusal("\"sealed\" is needed: yes, no or unknown"));
        told(ctx, desk.seal(tapId(asked), number(ctx), Asked.whole(asked, "jar"), seal));
    }

    private void putAway(Context ctx) {
        told(ctx, desk.putAway(tapId(Asked.body(ctx, List.of("tap"))), number(ctx)));
    }

    private void undo(Context ctx) {
        told(ctx, desk.undo(Asked.mark(ctx)));
    }

    private void acknowledge(Context ctx) {
        Optional<CannerAlarm> alarm = Answers.of(desk.acknowledge(ctx.pathParam("id")));
        if (alarm.isEmpty()) {
            Answers.error(ctx, 404, "no alarm of the jars has that name");
            return;
        }
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.set("alarm", JarViews.alarm(alarm.get()));
        Answers.json(ctx, 200, node);
    }

    private static JarBatch batch(JsonNode asked) {
        Typed typed = new Typed(
                Asked.text(asked, "food"),
                Asked.text(asked, "elevation"),
                Asked.text(asked, "jar"),
                Asked.text(asked, "sterilised"),
                Asked.text(asked, "canner"),
                Asked.text(asked, "recipeTime"),
                Asked.text(asked, "recipeElevation"),
                Asked.text(asked, "headspace"),
                Asked.text(asked, "ph"),
                Asked.text(asked, "tested"));
        return understood(typed::batch);
    }

    /** The id that the page gave a tap, by which one that arrives twice is known. */
    private static String tapId(JsonNode asked) {
        return Asked.needed(asked, "tap", "k3f9-1");
    }

    private static int number(Context ctx) {
        try {
            return Integer.parseInt(ctx.pathParam("load"));
        } catch (NumberFormatException e) {
            throw new Refusal("a load is a whole number, such as 1", e);
        }
    }

    /** What was typed cannot be understood, or no time is published for it: one line, with the way out. */
    private static <T> T understood(Supplier<T> reading) {
        try {
            return reading.get();
        } catch (IllegalArgumentException | NotNow e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
    }

    private static void told(Context ctx, CompletableFuture<CannerDesk.News> answer) {
        Answers.json(ctx, 200, JarViews.of(Answers.of(answer)));
    }
}
