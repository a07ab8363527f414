package spoonfall.web.book;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.Supplier;
import spoonfall.book.Firmness;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.log.memory.BatchMemory;
import spoonfall.web.live.Snapshots;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls on what earlier batches taught, and those by which a pan goes by it. */
public final class LearnRoutes {
    private static final int LONGEST_FRUIT = 60;

    private final Kitchens kitchens;
    private final Function<Context, Kitchen> pan;
    private final Snapshots snapshots;

    /** The calls on what these kitchens' batches teach, for the pan that a request is about. */
    public LearnRoutes(Kitchens kitchens, Function<Context, Kitchen> pan, Snapshots snapshots) {
        this.kitchens = kitchens;
        this.pan = pan;
        this.snapshots = snapshots;
    }

    /** Adds the calls below a path. */
    public void add(RoutesConfig routes, String base) {
        routes.get(base + "/learn", this::learn);
        routes.get(base + "/learn/{id}/diagnosis", this::diagnosis);
        routes.post(base + "/learn/target", this::take);
        routes.post(base + "/learn/recook", this::recook);
    }

    private BatchMemory memory() {
        return kitchens.memory()
                .orElseThrow(() -> new NotFoundResponse(
                        "nothing is remembered here: the service keeps no record (\"spoonfall serve\" does)"));
    }

    private void learn(Context ctx) {
        Optional<String> fruit = asked(ctx, "fruit");
        double riseC =
                Answers.of(pan.apply(ctx).state()).pan().basis().settings().riseC();
        ObjectNode node = done(() -> fruit.map(name -> LearnViews.of(memory().learning(), name))
                .orElseGet(() -> LearnViews.of(memory().learning()).put("riseC", riseC)));
        Answers.json(ctx, 200, node);
    }

    private void diagnosis(Context ctx) {
        long id = number(ctx.pathParam("id"));
        Optional<String> set = asked(ctx, "set");
        Optional<String> fruit = asked(ctx, "fruit");
        Answers.json(
                ctx,
                200,
                LearnViews.of(done(() -> set.isEmpty() && fruit.isEmpty()
                        ? memory().diagnosis(id)
                        : memory().diagnosis(id, set.map(Firmness::named), fruit))));
    }

    private void take(Context ctx) {
        JsonNode riseC = Asked.body(ctx, List.of("riseC")).path("riseC");
        if (!riseC.isNumber()) {
            throw new Refusal("\"riseC\" is needed, a number of °C above boiling water, such as 4.6");
        }
        told(ctx, pan.apply(ctx).targets().take(riseC.doubleValue()));
    }

    private void recook(Context ctx) {
        JsonNode of = Asked.body(ctx, List.of("of")).path("of");
        if (!of.isIntegralNumber() || !of.canConvertToLong()) {
            throw new Refusal("\"of\" is needed, the number of the earlier cook, such as 12");
        }
        done(() -> {
            memory().known(of.longValue());
            return of;
        });
        told(ctx, pan.apply(ctx).targets().recooks(of.longValue()));
    }

    private void told(Context ctx, CompletableFuture<KitchenState> answer) {
        Answers.json(ctx, 200, snapshots.of(Answers.of(answer)));
    }

    private static Optional<String> asked(Context ctx, String name) {
        Optional<String> text = Asked.parameter(ctx, name);
        if (text.filter(it -> it.length() > LONGEST_FRUIT).isPresent()) {
            throw new Refusal("\"" + name + "\" is at most " + LONGEST_FRUIT + " letters");
        }
        return text;
    }

    private static long number(String text) {
        if (!text.matches("[0-9]{1,18}")) {
            throw new Refusal("a cook's number is digits, such as 12");
        }
        return Long.parseLong(text);
    }

    /** What the memory says; what it cannot do, as the page is to read it. */
    private static <T> T done(Supplier<T> question) {
        try {
            return question.get();
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
    }
}
