package spoonfall.web.book;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import spoonfall.book.Made;
import spoonfall.book.Outcome;
import spoonfall.book.RiseLine;
import spoonfall.cook.CookSettings;
import spoonfall.log.CookHeader;
import spoonfall.log.store.book.BookLine;
import spoonfall.log.store.book.BookList;
import spoonfall.log.store.book.BookPage;
import spoonfall.log.store.book.BookQuery;
import spoonfall.log.store.book.BookSaid;
import spoonfall.plan.Yield;
import spoonfall.web.live.Snapshots;
import spoonfall.web.wire.WireJson;

/** The batch book as the page gets it. */
final class BookViews {
    private BookViews() {}

    /** One page of the list. */
    static ObjectNode list(BookList list) {
        ObjectNode node = object();
        ArrayNode cooks = node.putArray("cooks");
        list.cooks().forEach(cook -> cooks.add(line(cook)));
        node.put("found", list.found()).put("pageSize", BookQuery.PAGE_SIZE);
        ArrayNode fruits = node.putArray("fruits");
        list.fruits().forEach(fruits::add);
        return node;
    }

    private static ObjectNode line(BookLine cook) {
        ObjectNode node = object();
        node.put("id", cook.id()).put("startedAtMs", cook.startedAt().toEpochMilli());
        node.put("pan", cook.pan()).put("batch", cook.batch());
        WireJson.put(node, "riseC", cook.riseC());
        WireJson.put(node, "finalRiseC", cook.finalRiseC());
        WireJson.put(node, "boilMinutes", cook.boilMinutes());
        node.put("lastedS", cook.lastedMillis() / 1000.0).put("ended", cook.ended());
        node.put("notes", cook.notes()).put("photos", cook.photos());
        node.setAll(said(new BookSaid(cook.made(), cook.outcomes())));
        return node;
    }

    /** What somebody said of a batch. */
    static ObjectNode said(BookSaid said) {
        ObjectNode node = object();
        Made made = said.made();
        node.put("fruit", made.fruit());
        made.jars().ifPresentOrElse(jars -> node.put("jars", jars), () -> node.putNull("jars"));
        ObjectNode outcomes = node.putObject("outcomes");
        for (Outcome outcome : said.outcomes()) {
            ObjectNode one = outcomes.putObject(outcome.after().wireName());
            outcome.set().ifPresentOrElse(set -> one.put("set", set.wireName()), () -> one.putNull("set"));
            ArrayNode taste = one.putArray("taste");
            outcome.taste().forEach(name -> taste.add(name.wireName()));
            one.put("words", outcome.words());
        }
        return node;
    }

    /** What was planned of a cook, beside what was filled; null where nothing was. */
    static JsonNode plan(BookPage page) {
        return page.plan()
                .<JsonNode>map(plan -> {
                    ObjectNode node = object().put("mass", plan.massWords()).put("jars", plan.jarWords());
                    page.made()
                            .jars()
                            .ifPresent(jars -> node.put("yield", Yield.words(plan.jars(), plan.manyJars(), jars)));
                    ArrayNode rows = node.putArray("ingredients");
                    plan.rows()
                            .forEach(row ->
                                    rows.addObject().put("amount", row.amount()).put("food", row.food()));
                    return node;
                })
                .orElseGet(JsonNodeFactory.instance::nullNode);
    }

    /** One cook, without its climb. */
    static ObjectNode page(BookPage page) {
        CookHeader header = page.cook().header();
        ObjectNode node = object();
        node.put("id", page.cook().id()).put("startedAtMs", header.startedAt().toEpochMilli());
        node.put("pan", header.pan()).put("kitchen", header.kitchen());
        node.put("batch", header.batch()).put("source", header.source());
        node.put("lastedS", page.cook().aliveMillis() / 1000.0);
        node.put("ended", page.cook().endedMillis().isPresent())
                .put("damaged", page.cook().damaged());
        node.setAll(said(new BookSaid(page.made(), page.outcomes())));
        node.set("plan", plan(page));
        WireJson.put(node, "finalRiseC", page.marks().finalRiseC());
        WireJson.put(node, "boilMinutes", page.marks().boilMinutes());
        ArrayNode events = node.putArray("events");
        page.events()
                .forEach(event -> events.addObject()
                        .put("t", event.t())
                        .put("kind", event.kind())
                        .put("text", event.text()));
        ArrayNode notes = node.putArray("notes");
        page.cook()
                .notes()
                .forEach(note -> notes.addObject()
                        .put("t", note.atMillis() / 1000.0)
                        .put("writtenAtMs", note.writtenAt().toEpochMilli())
                        .put("text", note.text()));
        ArrayNode photos = node.putArray("photos");
        page.photos().forEach(photo -> photos.add(PhotoRoutes.view(photo)));
        return node;
    }

    /** The climb of a cook, with what is drawn around it. */
    static ObjectNode climb(BookPage page, int mostPoints) {
        CookSettings settings = page.settings();
        ObjectNode node = object().put("id", page.cook().id());
        node.put("startedAtMs", page.cook().header().startedAt().toEpochMilli());
        node.put("waterBoilC", settings.waterBoil().temperatureC()).put("riseC", settings.riseC());
        node.put("gelPointC", settings.gelPointC()).put("windowFromC", settings.windowFromC());
        ArrayNode points = node.putArray("points");
        for (RiseLine.Point point : page.line().thinned(mostPoints)) {
            ArrayNode one = points.addArray().add(WireJson.hundredths(point.t()));
            point.riseC().ifPresentOrElse(riseC -> one.add(WireJson.hundredths(riseC)), one::addNull);
        }
        Snapshots.addSyrup(node.putArray("syrup"), settings);
        ObjectNode marks = node.putObject("marks").put("sugarS", page.marks().sugarS());
        WireJson.put(marks, "boilS", page.marks().boilS());
        WireJson.put(marks, "gelS", page.marks().gelS());
        WireJson.put(marks, "offS", page.marks().offS());
        ArrayNode tests = node.putArray("tests");
        page.tests().forEach(test -> {
            ObjectNode one = tests.addObject().put("t", test.t());
            WireJson.put(one, "riseC", test.riseC());
            one.put("seen", test.answer()).put("set", test.set());
        });
        return node;
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
