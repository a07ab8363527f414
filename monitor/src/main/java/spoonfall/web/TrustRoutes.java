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
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.CheckDesk;
import spoonfall.kitchen.CheckView;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.KitchenState;
import spoonfall.kitchen.Refusal;
import spoonfall.kitchen.TypedBase;

/** The calls that check a thermometer and say where water boils. Each answers with the snapshot afterwards. */
final class TrustRoutes {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int LONGEST_TEXT = 100;

    private final CheckDesk checks;
    private final Snapshots snapshots;

    TrustRoutes(Kitchen kitchen, Snapshots snapshots) {
        this.checks = kitchen.checks();
        this.snapshots = snapshots;
    }

    void add(RoutesConfig routes) {
        routes.post("/api/check", this::start);
        routes.delete("/api/check", ctx -> told(ctx, checks.abandonCheck()));
        routes.post("/api/check/keep", this::keep);
        routes.post("/api/calibration/undo", this::undo);
        routes.post("/api/base", this::declare);
        routes.delete("/api/base/measured", ctx -> told(ctx, checks.forgetMeasured()));
    }

    private void start(Context ctx) {
        JsonNode asked = body(ctx, List.of("probe", "in"));
        String probe = needed(asked, "probe", "pan");
        CheckView.In in = CheckView.In.named(needed(asked, "in", "boiling-water"));
        told(ctx, checks.startCheck(probe, in));
    }

    private void keep(Context ctx) {
        String as = needed(body(ctx, List.of("as")), "as", "water-boil");
        told(
                ctx,
                switch (as) {
                    case "water-boil" -> checks.keepAsWaterBoil();
                    case "calibration" -> checks.keepAsCalibration();
                    default -> throw new Refusal("\"as\" must be water-boil or calibration, not \"" + as + "\"");
                });
    }

    private void undo(Context ctx) {
        told(ctx, checks.undoCalibration(needed(body(ctx, List.of("probe")), "probe", "pan")));
    }

    private void declare(Context ctx) {
        JsonNode asked = body(ctx, List.of("elevation", "pressure", "where"));
        WaterBoil boil = TypedBase.waterBoil(text(asked, "elevation"), text(asked, "pressure"), text(asked, "where"));
        told(ctx, checks.declare(boil));
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
                        throw new Refusal("\"" + name + "\" is not known here; it can be " + String.join(", ", known));
                    }
                });
                return asked;
            }
        } catch (JsonProcessingException e) {
            throw new Refusal("that is no JSON: " + e.getOriginalMessage(), e);
        }
        throw new Refusal("a JSON object is needed, with " + String.join(", ", known));
    }

    /** The text member of that name, which must be there. */
    static String needed(JsonNode asked, String name, String example) {
        return text(asked, name)
                .orElseThrow(() -> new Refusal("\"" + name + "\" is needed, such as \"" + example + "\""));
    }

    /** The text member of that name. */
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
