package spoonfall.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.CheckDesk;
import spoonfall.kitchen.CheckView;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.KitchenState;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.Refusal;
import spoonfall.kitchen.TypedBase;

/** The calls that check a thermometer and say where water boils. Each answers with the snapshot afterwards. */
final class TrustRoutes {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int LONGEST_REPEATED = 100;
    private static final int LONGEST_TEXT = 100;

    private final Kitchens kitchens;
    private final Function<Context, Kitchen> pan;
    private final Snapshots snapshots;

    /** The calls on the pan that a request is about; where the kitchen is counts for all of its pans. */
    TrustRoutes(Kitchens kitchens, Function<Context, Kitchen> pan, Snapshots snapshots) {
        this.kitchens = kitchens;
        this.pan = pan;
        this.snapshots = snapshots;
    }

    /** Adds the calls below a path. */
    void add(RoutesConfig routes, String base) {
        routes.post(base + "/check", this::start);
        routes.delete(base + "/check", ctx -> told(ctx, checks(ctx).abandonCheck()));
        routes.post(base + "/check/keep", this::keep);
        routes.post(base + "/calibration/undo", this::undo);
        routes.post(base + "/base", this::declare);
        routes.delete(base + "/base/measured", ctx -> told(ctx, checks(ctx).forgetMeasured()));
    }

    private void start(Context ctx) {
        JsonNode asked = body(ctx, List.of("probe", "in"));
        String probe = needed(asked, "probe", "pan");
        CheckView.In in = CheckView.In.named(needed(asked, "in", "boiling-water"));
        told(ctx, checks(ctx).startCheck(probe, in));
    }

    private void keep(Context ctx) {
        String as = needed(body(ctx, List.of("as")), "as", "water-boil");
        told(
                ctx,
                switch (as) {
                    case "water-boil" -> checks(ctx).keepAsWaterBoil();
                    case "calibration" -> checks(ctx).keepAsCalibration();
                    default -> throw new Refusal("\"as\" must be water-boil or calibration, not \"" + as + "\"");
                });
    }

    private void undo(Context ctx) {
        told(ctx, checks(ctx).undoCalibration(needed(body(ctx, List.of("probe")), "probe", "pan")));
    }

    private void declare(Context ctx) {
        JsonNode asked = body(ctx, List.of("elevation", "pressure", "where"));
        WaterBoil boil = TypedBase.waterBoil(text(asked, "elevation"), text(asked, "pressure"), text(asked, "where"));
        Kitchen mine = pan.apply(ctx);
        List<CompletableFuture<KitchenState>> others = kitchens.all().stream()
                .filter(other -> other != mine)
                .map(other -> other.checks().declare(boil))
                .toList();
        others.forEach(WebServer::answer);
        told(ctx, mine.checks().declare(boil));
    }

    private CheckDesk checks(Context ctx) {
        return pan.apply(ctx).checks();
    }

    private void told(Context ctx, CompletableFuture<KitchenState> answer) {
        WebServer.json(ctx, 200, snapshots.of(WebServer.answer(answer)));
    }

    /** The JSON object that was sent, which has no other members than those known. */
    static ObjectNode body(Context ctx, List<String> known) {
        try {
            if (MAPPER.readTree(ctx.body()) instanceof ObjectNode asked) {
                asked.fieldNames().forEachRemaining(name -> {
                    if (!known.contains(name)) {
                        throw new Refusal(
                                "\"" + brief(name) + "\" is not known here; it can be " + String.join(", ", known));
                    }
                });
                return asked;
            }
        } catch (JsonProcessingException e) {
            throw new Refusal("that is no JSON: " + brief(e.getOriginalMessage()), e);
        }
        throw new Refusal("a JSON object is needed, with " + String.join(", ", known));
    }

    /** What was sent, or repeats it, is not sent back whole. */
    private static String brief(String words) {
        return words.length() <= LONGEST_REPEATED ? words : words.substring(0, LONGEST_REPEATED) + "…";
    }

    /** A text that must have been sent. */
    static String needed(JsonNode asked, String name, String example) {
        return text(asked, name)
                .orElseThrow(() -> new Refusal("\"" + name + "\" is needed, such as \"" + example + "\""));
    }

    /** A text that may have been sent; blank is none. */
    static Optional<String> text(JsonNode asked, String name) {
        JsonNode node = asked.path(name);
        if (node.isMissingNode() || node.isNull()) {
            return Optional.empty();
        }
        if (!node.isTextual() || node.textValue().length() > LONGEST_TEXT) {
            throw new Refusal("\"" + name + "\" must be a text of at most " + LONGEST_TEXT + " characters");
        }
        return Optional.of(node.textValue().strip()).filter(text -> !text.isEmpty());
    }
}
