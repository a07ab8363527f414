package spoonfall.web.pan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.log.CookRecord;
import spoonfall.log.RecordedTrace;
import spoonfall.probe.trace.Trace;
import spoonfall.web.live.Snapshots;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls on the pan that a request is about: how it stands, its trace, a new cook, and all that its cook says of it. */
public final class PanRoutes {
    private final Kitchens kitchens;
    private final Function<Context, Kitchen> asked;
    private final Snapshots snapshots;

    /** The calls on the pan that a request is about; some of what is said of it counts for all pans. */
    public PanRoutes(Kitchens kitchens, Function<Context, Kitchen> asked, Snapshots snapshots) {
        this.kitchens = kitchens;
        this.asked = asked;
        this.snapshots = snapshots;
    }

    /** Adds the calls below a path. */
    public void add(RoutesConfig routes, String base) {
        routes.get(base + "/state", ctx -> told(ctx, 200, asked.apply(ctx).state()));
        routes.get(base + "/trace", this::trace);
        new AlarmRoutes(asked).add(routes, base);
        routes.post(base + "/cook", ctx -> told(ctx, 201, asked.apply(ctx).newCook(Asked.tap(ctx))));
        new TrustRoutes(kitchens, asked, snapshots).add(routes, base);
        new TestRoutes(asked, snapshots).add(routes, base);
        new HandRoutes(asked, snapshots).add(routes, base);
        new NoteRoutes(asked).add(routes, base);
        new AfternoonRoutes(asked).add(routes, base);
    }

    private void told(Context ctx, int status, CompletableFuture<KitchenState> state) {
        Answers.json(ctx, status, snapshots.of(Answers.of(state)));
    }

    private void trace(Context ctx) {
        Kitchen kitchen = asked.apply(ctx);
        KitchenState state = Answers.of(kitchen.state());
        CookRecord record = Answers.of(kitchen.record());
        Trace trace = RecordedTrace.of(
                record, state.pan().basis().settings(), kitchen.plan().batch(), state.startedAt(), state.notes());
        if (ctx.queryParamMap().containsKey("metadata")) {
            ctx.contentType("application/csvm+json").result(trace.metadata("trace"));
        } else {
            ctx.contentType("text/csv; charset=utf-8").result(trace.csv());
        }
    }
}
