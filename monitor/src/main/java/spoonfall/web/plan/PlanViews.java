package spoonfall.web.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import spoonfall.food.Food;
import spoonfall.food.Foods;
import spoonfall.food.Ingredient;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.plan.BatchPlan;
import spoonfall.plan.HobPower;
import spoonfall.plan.PathPoint;
import spoonfall.plan.Range;
import spoonfall.plan.Scaling;
import spoonfall.plan.TypedSetup;
import spoonfall.web.wire.WireJson;

/** The plan of a batch as JSON, for the page, for the terminal and for whoever else reads it (docs/live-channel.md). */
public final class PlanViews {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private PlanViews() {}

    /** A plan. */
    public static ObjectNode of(BatchPlan plan) {
        ObjectNode node = NODES.objectNode();
        ArrayNode ingredients = node.putArray("ingredients");
        plan.ingredients().forEach(one -> ingredients.add(ingredient(one)));
        ObjectNode in = node.putObject("in");
        in.put("totalKg", WireJson.rounded(plan.balance().totalKg()))
                .put("waterKg", WireJson.rounded(plan.balance().waterKg()));
        in.put("solidsKg", WireJson.rounded(plan.balance().solubleKg()))
                .put("restKg", WireJson.rounded(plan.balance().restKg()));
        in.put("solids", WireJson.rounded(plan.balance().solids()));
        ObjectNode out = node.putObject("out");
        out.set("finishedKg", range(plan.finishedKg()));
        out.put("solids", WireJson.rounded(plan.finishSolids()))
                .put("gelPointC", WireJson.rounded(plan.setup().gelPointC()));
        out.put("riseC", WireJson.rounded(plan.setup().riseC()))
                .put("waterBoilC", WireJson.rounded(plan.setup().waterBoilC()));
        ObjectNode jars = range(plan.jars());
        jars.put("jar", plan.setup().jar().name())
                .put("many", plan.setup().jar().many())
                .put("ready", (int) Math.ceil(plan.jars().high()));
        node.set("jars", jars);
        node.set("waterOffKg", range(plan.waterOffKg()));
        plan.boilMinutes().ifPresentOrElse(it -> node.set("boilMinutes", range(it)), () -> node.putNull("boilMinutes"));
        plan.heatMinutes()
                .ifPresentOrElse(
                        it -> node.put("heatMinutes", WireJson.hundredths(it)), () -> node.putNull("heatMinutes"));
        plan.setup().hob().ifPresentOrElse(hob -> node.set("hob", hob(hob)), () -> node.putNull("hob"));
        node.put("contentsL", WireJson.hundredths(plan.contentsL())).put("panL", WireJson.hundredths(plan.panL()));
        ArrayNode path = node.putArray("path");
        plan.path().forEach(point -> path.add(point(point)));
        ArrayNode advice = node.putArray("advice");
        plan.advice()
                .forEach(one -> advice.addObject()
                        .put("id", one.id())
                        .put("warns", one.warns())
                        .put("text", one.text())
                        .put("source", one.source()));
        return node;
    }

    /** A plan of another size, with what does not scale. */
    public static ObjectNode of(Scaling scaling) {
        ObjectNode node = of(scaling.scaled()).put("times", scaling.factor());
        ArrayNode notes = node.putArray("doesNotScale");
        scaling.notes().forEach(notes::add);
        return node;
    }

    /** What heats a pan. */
    static ObjectNode hob(HobPower hob) {
        return NODES.objectNode()
                .put("kW", WireJson.hundredths(hob.kW()))
                .put("waterKgPerMin", WireJson.rounded(hob.waterKgPerMin()))
                .put("relativeDoubt", WireJson.hundredths(hob.relativeDoubt()))
                .put("from", hob.from().wireName());
    }

    /** The foods that are known. */
    public static ArrayNode foods(Foods foods) {
        ArrayNode list = NODES.arrayNode();
        foods.all().forEach(food -> list.add(food(food)));
        return list;
    }

    private static ObjectNode food(Food food) {
        ObjectNode node = NODES.objectNode()
                .put("food", food.name())
                .put("kind", food.kind().wireName());
        node.put("setting", food.setting().wireName());
        ArrayNode others = node.putArray("also");
        food.others().forEach(others::add);
        food.cupG().ifPresent(grams -> node.put("cupG", grams).put("cup", food.cup()));
        food.pieceG().ifPresent(grams -> node.put("pieceG", grams).put("piece", food.piece()));
        node.put("waterPercent", food.waterPercent());
        node.put("solublePercent", WireJson.hundredths(food.solubles().middle()));
        return node.put("source", food.source());
    }

    private static ObjectNode ingredient(Ingredient one) {
        return NODES.objectNode()
                .put("amount", one.amount().words())
                .put("food", one.food().name())
                .put("g", WireJson.tenths(one.grams()))
                .put("waterG", WireJson.tenths(one.waterG()))
                .put("solidsG", WireJson.tenths(one.solubleG()))
                .put("source", one.food().source());
    }

    /** The batch in a pan. */
    static ObjectNode batch(PlannedBatch batch) {
        ObjectNode node = NODES.objectNode();
        ArrayNode rows = node.putArray("ingredients");
        batch.rows().forEach(row -> rows.addObject().put("amount", row.amount()).put("food", row.food()));
        node.set("finishedKg", range(batch.finishedKg()));
        ObjectNode jars = range(batch.jars());
        jars.put("many", batch.manyJars());
        node.set("jars", jars);
        return node;
    }

    /** What the notes say of a batch, for the page to begin with. */
    static ObjectNode suggested(List<Ingredient> ingredients, TypedSetup setup) {
        ObjectNode node = NODES.objectNode();
        ArrayNode rows = node.putArray("ingredients");
        ingredients.forEach(one -> rows.addObject()
                .put("amount", one.amount().words())
                .put("food", one.food().name()));
        node.put("pan", setup.pan().orElse("")).put("power", setup.power().orElse(""));
        node.put("kettle", setup.kettle().orElse("")).put("ph", setup.acidity().orElse(""));
        return node.put("jar", setup.jar().orElse(""));
    }

    private static ObjectNode point(PathPoint point) {
        ObjectNode node = NODES.objectNode();
        point.minutes()
                .ifPresentOrElse(it -> node.put("minutes", WireJson.hundredths(it)), () -> node.putNull("minutes"));
        return node.put("waterOffKg", WireJson.rounded(point.waterOffKg()))
                .put("solids", WireJson.rounded(point.solids()))
                .put("temperatureC", WireJson.rounded(point.temperatureC()));
    }

    /** A figure with its doubt. */
    static ObjectNode range(Range range) {
        return NODES.objectNode()
                .put("low", WireJson.rounded(range.low()))
                .put("middle", WireJson.rounded(range.middle()))
                .put("high", WireJson.rounded(range.high()));
    }
}
