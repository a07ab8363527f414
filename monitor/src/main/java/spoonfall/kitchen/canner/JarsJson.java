package spoonfall.kitchen.canner;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.alarm.AlarmState;
import spoonfall.canner.CannerAlarmName;
import spoonfall.canner.CannerBatch;
import spoonfall.canner.CannerMemory;
import spoonfall.canner.CannerPhase;
import spoonfall.canner.JarLoad;
import spoonfall.canner.NotNow;
import spoonfall.canner.Say;
import spoonfall.canner.Seal;
import spoonfall.canner.ShelfLoad;
import spoonfall.canning.CannerKind;
import spoonfall.canning.Food;
import spoonfall.canning.JarBatch;
import spoonfall.canning.JarSize;
import spoonfall.canning.ProcessingAnswer;
import spoonfall.canning.RecipeTime;
import spoonfall.log.CookJson;

/**
 * How the jars stand as JSON, there and back. What cannot be is an {@link IllegalArgumentException}. Of the published time only
 * the minutes are kept: it is looked up again, and the longer of the two counts.
 */
final class JarsJson {
    private JarsJson() {}

    /** Everything that is needed to go on. */
    static ObjectNode of(CannerMemory memory) {
        ObjectNode node = CookJson.object();
        node.put("t", memory.t()).put("loads", memory.loads()).put("marks", memory.marks());
        memory.batch().ifPresent(batch -> node.set("batch", batch(batch)));
        ArrayNode shelf = node.putArray("shelf");
        for (ShelfLoad load : memory.shelf()) {
            ObjectNode one = shelf.addObject();
            one.put("number", load.number());
            one.put("loadedT", load.loadedT());
            one.put("processedT", load.processedT()).put("liftedT", load.liftedT());
            one.set("load", load(load.load()));
            ArrayNode seals = one.putArray("seals");
            load.seals().forEach(seal -> seals.add(name(seal)));
        }
        ArrayNode taps = node.putArray("taps");
        memory.taps().forEach(taps::add);
        ArrayNode called = node.putArray("called");
        for (CannerMemory.Called one : memory.called()) {
            called.addObject()
                    .put("name", name(one.name()))
                    .put("occurrence", one.occurrence())
                    .put("state", name(one.state()))
                    .put("raisedT", one.raisedT())
                    .put("title", one.text().state())
                    .put("act", one.text().act());
        }
        return node;
    }

    /** What {@link #of} made. */
    static CannerMemory memory(JsonNode node) {
        List<ShelfLoad> shelf = new ArrayList<>();
        for (JsonNode one : node.path("shelf")) {
            JarLoad load = load(one.path("load"));
            List<Seal> seals = new ArrayList<>();
            one.path("seals").forEach(seal -> seals.add(named(Seal.class, seal.asText())));
            if (seals.size() != load.jars()) {
                throw new IllegalArgumentException(load.jars() + " jars have no " + seals.size() + " lids");
            }
            double processedT = CookJson.number(one, "processedT");
            shelf.add(new ShelfLoad(
                    whole(one, "number"),
                    load,
                    optional(one, "loadedT").orElse(processedT - load.processS()), // an older record does not say
                    processedT,
                    CookJson.number(one, "liftedT"),
                    seals));
        }
        List<String> taps = new ArrayList<>();
        node.path("taps").forEach(tap -> taps.add(tap.asText()));
        List<CannerMemory.Called> called = new ArrayList<>();
        for (JsonNode one : node.path("called")) {
            called.add(new CannerMemory.Called(
                    named(CannerAlarmName.class, CookJson.text(one, "name")),
                    whole(one, "occurrence"),
                    named(AlarmState.class, CookJson.text(one, "state")),
                    CookJson.number(one, "raisedT"),
                    new Say(CookJson.text(one, "title"), CookJson.text(one, "act"), "")));
        }
        return new CannerMemory(
                CookJson.number(node, "t"),
                node.has("batch") ? Optional.of(batch(node.path("batch"))) : Optional.empty(),
                shelf,
                whole(node, "loads"),
                whole(node, "marks"),
                taps,
                called);
    }

    private static ObjectNode batch(CannerBatch batch) {
        CannerBatch.Run run = batch.run();
        ObjectNode node = CookJson.object().put("loadedT", batch.loadedT()).put("phase", name(batch.phase()));
        node.put("sinceT", batch.sinceT());
        node.put("byTaps", batch.byTaps()).put("processedT", batch.processedT());
        node.put("startedT", run.startedT()).put("restarts", run.restarts());
        run.steamT().ifPresent(t -> node.put("steamT", t));
        node.put("vouchedT", run.vouchedT()).put("doubted", run.doubted()).put("awayS", run.awayS());
        node.set("load", load(batch.load()));
        return node;
    }

    private static CannerBatch batch(JsonNode node) {
        CannerBatch.Run run = new CannerBatch.Run(
                CookJson.number(node, "startedT"),
                optional(node, "steamT"),
                whole(node, "restarts"),
                CookJson.number(node, "vouchedT"),
                node.path("doubted").asBoolean(true),
                CookJson.number(node, "awayS"));
        return new CannerBatch(
                load(node.path("load")),
                optional(node, "loadedT").orElse(CookJson.number(node, "sinceT")), // an older record does not say
                named(CannerPhase.class, CookJson.text(node, "phase")),
                CookJson.number(node, "sinceT"),
                run,
                node.path("byTaps").asBoolean(false),
                CookJson.number(node, "processedT"));
    }

    private static ObjectNode load(JarLoad load) {
        JarBatch batch = load.batch();
        ObjectNode node = CookJson.object().put("food", name(batch.food())).put("elevationM", batch.elevationM());
        node.put("jar", name(batch.jar())).put("sterilised", batch.sterilised());
        node.put("canner", name(batch.canner())).put("tested", batch.testedForBoilingWater());
        batch.recipe().ifPresent(recipe -> {
            node.put("recipeMinutes", recipe.minutes());
            recipe.forElevationM().ifPresent(m -> node.put("recipeElevationM", m));
        });
        batch.headspaceMm().ifPresent(mm -> node.put("headspaceMm", mm));
        batch.acidity().ifPresent(ph -> node.put("ph", ph));
        return node.put("jars", load.jars()).put("minutes", load.time().minutes());
    }

    private static JarLoad load(JsonNode node) {
        JarBatch batch = new JarBatch(
                named(Food.class, CookJson.text(node, "food")),
                CookJson.number(node, "elevationM"),
                named(JarSize.class, CookJson.text(node, "jar")),
                node.path("sterilised").asBoolean(false),
                named(CannerKind.class, CookJson.text(node, "canner")),
                node.has("recipeMinutes")
                        ? Optional.of(new RecipeTime(
                                CookJson.number(node, "recipeMinutes"), optional(node, "recipeElevationM")))
                        : Optional.empty(),
                optional(node, "headspaceMm"),
                optional(node, "ph"),
                node.path("tested").asBoolean(false));
        int minutes = whole(node, "minutes");
        try {
            JarLoad load = JarLoad.of(batch, whole(node, "jars"));
            ProcessingAnswer.Time time = load.time();
            if (minutes <= time.minutes() || minutes > 2 * RecipeTime.MOST_MINUTES) {
                return load;
            }
            return new JarLoad(
                    batch,
                    new ProcessingAnswer.Time(
                            minutes, time.steriliseMinutes(), time.reasons(), time.cautions(), time.sources()),
                    load.jars());
        } catch (NotNow e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    private static OptionalDouble optional(JsonNode node, String name) {
        return node.has(name) ? OptionalDouble.of(CookJson.number(node, name)) : OptionalDouble.empty();
    }

    private static int whole(JsonNode node, String name) {
        JsonNode value = node.path(name);
        if (!value.isIntegralNumber() || !value.canConvertToInt()) {
            throw new IllegalArgumentException(name + " is not a whole number");
        }
        return value.intValue();
    }

    private static String name(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static <T extends Enum<T>> T named(Class<T> kind, String name) {
        return Enum.valueOf(kind, name.toUpperCase(Locale.ROOT));
    }
}
