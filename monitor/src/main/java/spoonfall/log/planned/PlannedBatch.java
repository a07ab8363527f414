package spoonfall.log.planned;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.food.Ingredient;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.plan.BatchPlan;
import spoonfall.plan.PlannedPan;
import spoonfall.plan.Range;

/**
 * The plan of the batch in a pan, as its cook's record keeps it.
 *
 * @param rows what goes in
 * @param solidsKg solids dissolved in it
 * @param pan what the forecast is told; empty if the hob's power was not known
 * @param finishedKg what is to be left at the setting point
 * @param jars how many it is to fill
 * @param manyJars what they are called, such as "half-pint jars"
 * @param acidity its pH; empty if nobody measured it
 */
public record PlannedBatch(
        List<Row> rows,
        double solidsKg,
        Optional<PlannedPan> pan,
        Range finishedKg,
        Range jars,
        String manyJars,
        OptionalDouble acidity) {
    /** The kind of word that says what batch is in the pan, by its plan, or that none is. */
    public static final String WORD = "plan";

    private static final int MOST_TEXT = 100;

    /**
     * One ingredient, as it was written.
     *
     * @param amount such as {@code 0.75 cup}
     * @param food such as {@code orange peel}
     */
    public record Row(String amount, String food) {}

    /** Refuses what is too long to be a plan. */
    public PlannedBatch {
        rows = List.copyOf(rows);
        if (rows.size() > BatchPlan.MOST_INGREDIENTS || manyJars.length() > MOST_TEXT || !(solidsKg > 0)) {
            throw new IllegalArgumentException("that is no plan of a batch");
        }
        acidity.ifPresent(ph -> {
            if (!(ph >= 0 && ph <= 14)) {
                throw new IllegalArgumentException("no preserve has a pH of " + ph);
            }
        });
    }

    /** A plan, to be kept. */
    public static PlannedBatch of(BatchPlan plan) {
        return new PlannedBatch(
                plan.ingredients().stream().map(PlannedBatch::row).toList(),
                plan.balance().solubleKg(),
                plan.pan(),
                plan.finishedKg(),
                plan.jars(),
                plan.setup().jar().many(),
                plan.setup().ph());
    }

    private static Row row(Ingredient one) {
        return new Row(one.amount().words(), one.food().name());
    }

    /** All that is needed to say it again; nothing in it when there is none. */
    public static ObjectNode detail(Optional<PlannedBatch> batch) {
        ObjectNode node = CookJson.object();
        batch.ifPresent(one -> one.putInto(node));
        return node;
    }

    private void putInto(ObjectNode node) {
        ArrayNode list = node.putArray("ingredients");
        rows.forEach(row -> list.addObject().put("amount", row.amount()).put("food", row.food()));
        node.put("solidsKg", solidsKg);
        pan.ifPresent(told -> node.putObject("pan")
                .put("totalKg", told.totalKg())
                .put("solidsKg", told.solidsKg())
                .put("waterKgPerMin", told.waterKgPerMin())
                .put("relativeDoubt", told.relativeDoubt()));
        put(node, "finishedKg", finishedKg);
        put(node, "jars", jars);
        node.put("manyJars", manyJars);
        acidity.ifPresent(ph -> node.put("ph", ph));
    }

    /** The plan that {@link #detail} kept; empty if it kept none. */
    public static Optional<PlannedBatch> of(ObjectNode detail) {
        if (!detail.has("ingredients")) {
            return Optional.empty();
        }
        List<Row> rows = new ArrayList<>();
        detail.path("ingredients")
                .forEach(one -> rows.add(
                        new Row(one.path("amount").asText(), one.path("food").asText())));
        Optional<PlannedPan> pan = Optional.of(detail.path("pan"))
                .filter(JsonNode::isObject)
                .map(told -> new PlannedPan(
                        CookJson.number(told, "totalKg"),
                        CookJson.number(told, "solidsKg"),
                        CookJson.number(told, "waterKgPerMin"),
                        CookJson.number(told, "relativeDoubt")));
        return Optional.of(new PlannedBatch(
                rows,
                CookJson.number(detail, "solidsKg"),
                pan,
                range(detail, "finishedKg"),
                range(detail, "jars"),
                CookJson.text(detail, "manyJars"),
                detail.has("ph") ? OptionalDouble.of(CookJson.number(detail, "ph")) : OptionalDouble.empty()));
    }

    /** What was to be left of it, such as {@code 1.94 kg (1.85 to 2.03)}. */
    public String massWords() {
        return String.format(
                Locale.ROOT, "%.2f kg (%.2f to %.2f)", finishedKg.middle(), finishedKg.low(), finishedKg.high());
    }

    /** What it was to fill, such as {@code 6.1 half-pint jars (5.6 to 6.6)}. */
    public String jarWords() {
        return String.format(Locale.ROOT, "%.1f %s (%.1f to %.1f)", jars.middle(), manyJars, jars.low(), jars.high());
    }

    /** The plan that a cook had last; empty if it had none, or one that cannot be read. */
    public static Optional<PlannedBatch> last(List<CookInput> inputs) {
        Optional<ObjectNode> last = Optional.empty();
        for (CookInput input : inputs) {
            if (input instanceof CookInput.Word word && word.kind().equals(WORD)) {
                last = Optional.of(word.detail());
            }
        }
        try {
            return last.flatMap(PlannedBatch::of);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static void put(ObjectNode node, String name, Range range) {
        node.putObject(name)
                .put("low", range.low())
                .put("middle", range.middle())
                .put("high", range.high());
    }

    private static Range range(ObjectNode node, String name) {
        JsonNode range = node.path(name);
        return new Range(
                CookJson.number(range, "low"), CookJson.number(range, "middle"), CookJson.number(range, "high"));
    }
}
