package spoonfall.web.pan;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.desk.CheckDesk;
import spoonfall.kitchen.thermometer.CheckView;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.typed.TypedBase;
import spoonfall.web.live.Snapshots;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls that check a thermometer and say where water boils. Each answers with the snapshot afterwards. */
final class TrustRoutes {
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
        JsonNode asked = Asked.body(ctx, List.of("probe", "in"));
        String probe = Asked.needed(asked, "probe", "pan");
        CheckView.In in = CheckView.In.named(Asked.needed(asked, "in", "boiling-water"));
        told(ctx, checks(ctx).startCheck(probe, in));
    }

    private void keep(Context ctx) {
        String as = Asked.needed(Asked.body(ctx, List.of("as")), "as", "water-boil");
        told(
                ctx,
                switch (as) {
                    case "water-boil" -> checks(ctx).keepAsWaterBoil();
                    case "calibration" -> checks(ctx).keepAsCalibration();
                    default -> throw new Refusal("\"as\" must be water-boil or calibration, not \"" + as + "\"");
                });
    }

    private void undo(Context ctx) {
        told(ctx, checks(ctx).undoCalibration(Asked.needed(Asked.body(ctx, List.of("probe")), "probe", "pan")));
    }

    private void declare(Context ctx) {
        JsonNode asked = Asked.body(ctx, List.of("elevation", "pressure", "where"));
        WaterBoil boil = TypedBase.waterBoil(
                Asked.text(asked, "elevation"), Asked.text(asked, "pressure"), Asked.text(asked, "where"));
        Kitchen mine = pan.apply(ctx);
        List<CompletableFuture<KitchenState>> others = kitchens.all().stream()
                .filter(other -> other != mine)
                .map(other -> other.checks().declare(boil))
                .toList();
        others.forEach(Answers::of);
        told(ctx, mine.checks().declare(boil));
    }

    private CheckDesk checks(Context ctx) {
        return pan.apply(ctx).checks();
    }

    private void told(Context ctx, CompletableFuture<KitchenState> answer) {
        Answers.json(ctx, 200, snapshots.of(Answers.of(answer)));
    }
}
