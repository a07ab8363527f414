package spoonfall.web.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import spoonfall.cook.CookSettings;
import spoonfall.food.Amount;
import spoonfall.food.CookUnit;
import spoonfall.food.Ingredient;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.pantry.Pantry;
import spoonfall.kitchen.plan.PlanState;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.plan.BatchPlan;
import spoonfall.plan.Scaling;
import spoonfall.plan.TypedSetup;
import spoonfall.web.wire.Answers;
import spoonfall.web.wire.Asked;

/** The calls by which a batch is planned, taken into a pan, and compared with what it filled. */
public final class PlanRoutes {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> BATCH = List.of("ingredients", "pan", "power", "kettle", "ph", "jar", "times");
    private static final List<String> ROW = List.of("amount", "unit", "food");

    private static final Pattern PLANS = Pattern.compile("/api(/pans/[^/]+)?/plan");

    private final Pantry pantry;
    private final Function<Context, Kitchen> pan;

    /** The calls on the plan of the pan that a request is about, with the foods of a pantry. */
    public PlanRoutes(Pantry pantry, Function<Context, Kitchen> pan) {
        this.pantry = pantry;
        this.pan = pan;
    }

    /** Adds the calls below a path. */
    public void add(RoutesConfig routes, String base) {
        routes.get(
                base + "/plan",
                ctx -> told(ctx, Answers.of(pan.apply(ctx).plans().state())));
        routes.get(base + "/plan/foods", this::foods);
        routes.post(base + "/plan", ctx -> Answers.json(ctx, 200, asked(ctx)));
        routes.post(base + "/plan/cook", ctx -> {
            PlannedBatch batch = PlannedBatch.of(plan(ctx).scaled());
            told(ctx, Answers.of(pan.apply(ctx).plans().cook(Optional.of(batch))));
        });
        routes.delete(
                base + "/plan/cook",
                ctx -> told(ctx, Answers.of(pan.apply(ctx).plans().cook(Optional.empty()))));
        routes.post(base + "/plan/filled", this::filled);
    }

    /** Whether a request only asks what would come of a batch: who may look may plan. */
    public static boolean onlyPlans(String method, String path) {
        return method.equals("POST") && PLANS.matcher(path).matches();
    }

    private void foods(Context ctx) {
        ObjectNode node = NODES.objectNode();
        node.set("foods", PlanViews.foods(pantry.foods()));
        ArrayNode units = node.putArray("units");
        for (CookUnit unit : CookUnit.values()) {
            units.add(unit.wireName());
        }
        Answers.json(ctx, 200, node);
    }

    private ObjectNode asked(Context ctx) {
        Scaling scaling = plan(ctx);
        return scaling.factor() == 1 ? PlanViews.of(scaling.once()) : PlanViews.of(scaling);
    }

    private Scaling plan(Context ctx) {
        JsonNode asked = Asked.body(ctx, BATCH);
        Kitchen kitchen = pan.apply(ctx);
        CookSettings settings = Answers.of(kitchen.state()).pan().basis().settings();
        TypedSetup typed = new TypedSetup(
                Asked.text(asked, "pan"),
                Asked.text(asked, "power"),
                Asked.text(asked, "kettle"),
                Asked.text(asked, "ph"),
                Asked.text(asked, "jar"));
        List<Ingredient> ingredients = ingredients(asked.path("ingredients"));
        try {
            BatchPlan once = BatchPlan.of(
                    ingredients,
                    typed.setup(
                            settings.waterBoil().pressurePa(),
                            settings.waterBoil().temperatureC(),
                            settings.riseC(),
                            pantry.hob(kitchen.plan().pan())));
            return Scaling.of(
                    once, Asked.text(asked, "times").map(Scaling::times).orElse(1.0));
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()), e);
        }
    }

    private List<Ingredient> ingredients(JsonNode rows) {
        if (!rows.isArray() || rows.isEmpty() || rows.size() > BatchPlan.MOST_INGREDIENTS) {
            throw new Refusal(
                    "\"ingredients\" is needed: 1 to " + BatchPlan.MOST_INGREDIENTS + " rows of amount, unit and food");
        }
        List<Ingredient> ingredients = new ArrayList<>();
        for (JsonNode row : rows) {
            String where = "row " + (ingredients.size() + 1) + ": ";
            row.fieldNames().forEachRemaining(name -> {
                if (!ROW.contains(name)) {
                    throw new Refusal(
                            where + "\"" + name + "\" is not known here; it can be " + String.join(", ", ROW));
                }
            });
            String amount = Asked.needed(row, "amount", "3/4");
            Optional<String> unit = Asked.text(row, "unit");
            String food = Asked.needed(row, "food", "orange peel");
            try {
                Amount measured = unit.map(one -> Amount.of(amount, one)).orElseGet(() -> Amount.of(amount));
                ingredients.add(new Ingredient(measured, pantry.foods().named(food)));
            } catch (IllegalArgumentException e) {
                throw new Refusal(where + e.getMessage(), e);
            }
        }
        return ingredients;
    }

    private void filled(Context ctx) {
        int jars = Asked.whole(Asked.body(ctx, List.of("jars")), "jars");
        told(ctx, Answers.of(pan.apply(ctx).plans().filled(jars, pantry)));
    }

    private void told(Context ctx, PlanState state) {
        ObjectNode node = NODES.objectNode();
        state.batch().ifPresentOrElse(batch -> node.set("batch", PlanViews.batch(batch)), () -> node.putNull("batch"));
        node.put("next", state.next()).put("countable", state.countable());
        state.filled().ifPresentOrElse(jars -> node.put("filled", jars), () -> node.putNull("filled"));
        node.put("yield", state.yield().orElse(""));
        node.set("suggested", PlanViews.suggested(pantry.suggested(), pantry.setup()));
        pantry.hob(pan.apply(ctx).plan().pan())
                .ifPresentOrElse(hob -> node.set("hob", PlanViews.hob(hob)), () -> node.putNull("hob"));
        Answers.json(ctx, 200, node);
    }
}
