package spoonfall.log.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import spoonfall.book.After;
import spoonfall.book.Firmness;
import spoonfall.book.Made;
import spoonfall.book.Outcome;
import spoonfall.book.Taste;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.CookNote;
import spoonfall.log.store.book.PhotoRows;
import spoonfall.log.store.book.WholePhoto;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** A whole cook as JSON and back. What cannot be is an {@link IllegalArgumentException} that names the member. */
final class WholeCookJson {
    /** Of the form; a reader refuses what is newer. */
    static final int VERSION = 1;

    private static final String FORM = "spoonfall-cook";
    private static final int MOST_EVENTS = 100_000;
    private static final int LONGEST_KIND = 64;
    private static final String DIGEST = "[0-9a-f]{64}";
    private static final int READING_PARTS = 4;

    /** No cook lasts for a hundred days. */
    private static final long LAST_MILLIS = 100L * 24 * 3600 * 1000;

    private WholeCookJson() {}

    static ObjectNode write(WholeCook cook) {
        ObjectNode node = CookJson.object().put("form", FORM).put("version", VERSION);
        node.set("header", CookJson.header(cook.header()));
        node.put("aliveMillis", cook.aliveMillis()).put("endedMillis", cook.endedMillis());
        List<String> probes = cook.header().basis().probes();
        ArrayNode inputs = node.putArray("inputs");
        for (CookInput input : cook.inputs()) {
            if (input instanceof CookInput.Heard heard) {
                ArrayNode reading = inputs.addArray().add(probes.indexOf(heard.probe()));
                reading.add(heard.takenMillis()).add(heard.atMillis());
                heard.shownC()
                        .ifPresentOrElse(
                                reading::add, () -> reading.add(heard.quality().wireName()));
            } else if (input instanceof CookInput.Word word) {
                inputs.addObject()
                        .put("takenMillis", word.takenMillis())
                        .put("kind", word.kind())
                        .set("detail", word.detail());
            }
        }
        ArrayNode events = node.putArray("events");
        cook.events()
                .forEach(event -> events.addObject()
                        .put("atMillis", event.atMillis())
                        .put("kind", event.kind())
                        .set("detail", event.detail()));
        ArrayNode notes = node.putArray("notes");
        cook.notes()
                .forEach(note -> notes.addObject()
                        .put("key", note.key())
                        .put("atMillis", note.atMillis())
                        .put("writtenAt", note.writtenAt().toString())
                        .put("text", note.text()));
        node.put("fruit", cook.made().fruit());
        cook.made().jars().ifPresent(jars -> node.put("jars", jars));
        ArrayNode outcomes = node.putArray("outcomes");
        for (Outcome outcome : cook.outcomes()) {
            ObjectNode one = outcomes.addObject().put("after", outcome.after().wireName());
            outcome.set().ifPresent(set -> one.put("set", set.wireName()));
            ArrayNode taste = one.putArray("taste");
            outcome.taste().forEach(name -> taste.add(name.wireName()));
            one.put("words", outcome.words());
        }
        ArrayNode photos = node.putArray("photos");
        cook.photos()
                .forEach(photo -> photos.addObject()
                        .put("digest", photo.digest())
                        .put("takenInAt", photo.takenInAt().toString())
                        .put("jpeg", photo.jpeg()));
        return node;
    }

    static WholeCook read(ObjectNode node, WholePhoto.Check check) {
        if (!node.path("form").asText().equals(FORM)) {
            throw new IllegalArgumentException("\"form\" is not " + FORM + "; \"spoonfall log export\" writes one");
        }
        if (millis(node, "version") > VERSION) {
            throw new IllegalArgumentException("a newer Spoonfall wrote it; use that one");
        }
        CookHeader header = CookJson.header(node.path("header"));
        OptionalInt jars = node.has("jars") ? OptionalInt.of((int) millis(node, "jars")) : OptionalInt.empty();
        List<CookNote> notes = each(node, "notes", CookNote.MOST, WholeCookJson::note);
        return new WholeCook(
                header,
                inputs(node, header.basis().probes()),
                each(node, "events", MOST_EVENTS, WholeCookJson::event),
                notes,
                millis(node, "aliveMillis"),
                millis(node, "endedMillis"),
                new Made(CookJson.text(node, "fruit"), jars),
                each(node, "outcomes", After.values().length, WholeCookJson::outcome),
                node.has("photos") ? each(node, "photos", PhotoRows.MOST, one -> photo(one, check)) : List.of());
    }

    private static List<CookInput> inputs(ObjectNode node, List<String> probes) {
        List<CookInput> inputs = new ArrayList<>();
        long last = 0;
        for (JsonNode one : list(node, "inputs", Integer.MAX_VALUE)) {
            CookInput input = one instanceof ArrayNode reading ? heard(reading, probes) : word(one);
            if (input.takenMillis() < last) {
                throw new IllegalArgumentException("\"inputs\" go back in time at " + input.takenMillis() + " ms");
            }
            last = input.takenMillis();
            inputs.add(input);
        }
        return inputs;
    }

    private static CookInput heard(ArrayNode reading, List<String> probes) {
        int probe = reading.path(0).asInt(-1);
        if (reading.size() != READING_PARTS || probe < 0 || probe >= probes.size()) {
            throw new IllegalArgumentException("a reading is [thermometer, taken, at, °C or what was wrong]");
        }
        long taken = millis(reading.path(1), "taken");
        JsonNode value = reading.path(READING_PARTS - 1);
        Quality quality = value.isNumber() ? Reading.qualityOf(value.doubleValue()) : quality(value);
        if (value.isNumber() != (quality == Quality.GOOD)) {
            throw new IllegalArgumentException("no thermometer shows " + value.asText());
        }
        OptionalDouble shownC = value.isNumber() ? OptionalDouble.of(value.doubleValue()) : OptionalDouble.empty();
        return new CookInput.Heard(probes.get(probe), taken, millis(reading.path(2), "at"), shownC, quality);
    }

    private static Quality quality(JsonNode value) {
        return Arrays.stream(Quality.values())
                .filter(one -> one.wireName().equals(value.asText()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no reading is \"" + value.asText() + "\""));
    }

    private static CookInput word(JsonNode node) {
        return new CookInput.Word(millis(node, "takenMillis"), kind(node), detail(node));
    }

    private static StoredCook.Event event(JsonNode node) {
        return new StoredCook.Event(millis(node, "atMillis"), kind(node), detail(node));
    }

    private static CookNote note(JsonNode node) {
        try {
            return new CookNote(
                    CookJson.text(node, "key"),
                    millis(node, "atMillis"),
                    Instant.parse(CookJson.text(node, "writtenAt")),
                    CookJson.text(node, "text"));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("\"writtenAt\" is not a time", e);
        }
    }

    private static Outcome outcome(JsonNode node) {
        Set<Taste> taste = EnumSet.noneOf(Taste.class);
        node.path("taste").forEach(name -> taste.add(Taste.named(name.asText())));
        Optional<Firmness> set =
                node.has("set") ? Optional.of(Firmness.named(CookJson.text(node, "set"))) : Optional.empty();
        return new Outcome(After.named(CookJson.text(node, "after")), set, taste, CookJson.text(node, "words"));
    }

    private static WholePhoto photo(JsonNode node, WholePhoto.Check check) {
        String digest = CookJson.text(node, "digest");
        if (!digest.matches(DIGEST)) {
            throw new IllegalArgumentException("\"digest\" of a photo is 64 hexadecimal digits");
        }
        try {
            Instant takenInAt = Instant.ofEpochMilli(
                    Instant.parse(CookJson.text(node, "takenInAt")).toEpochMilli());
            return check.checked(digest, takenInAt, Base64.getDecoder().decode(CookJson.text(node, "jpeg")));
        } catch (DateTimeException | ArithmeticException e) {
            throw new IllegalArgumentException("\"takenInAt\" is not a time", e);
        }
    }

    private static String kind(JsonNode node) {
        String kind = CookJson.text(node, "kind");
        if (kind.isEmpty() || kind.length() > LONGEST_KIND) {
            throw new IllegalArgumentException("\"kind\" has 1 to " + LONGEST_KIND + " characters");
        }
        return kind;
    }

    private static ObjectNode detail(JsonNode node) {
        if (node.path("detail") instanceof ObjectNode detail) {
            return detail;
        }
        throw new IllegalArgumentException("\"detail\" is not an object");
    }

    private static long millis(JsonNode node, String name) {
        JsonNode number = node.isObject() ? node.path(name) : node;
        boolean fits = number.isIntegralNumber() && number.canConvertToLong();
        if (!fits || Math.abs(number.longValue()) > LAST_MILLIS * 100) {
            throw new IllegalArgumentException("\"" + name + "\" is not a whole number that can be");
        }
        return number.longValue();
    }

    private static ArrayNode list(ObjectNode node, String name, int most) {
        if (node.path(name) instanceof ArrayNode list && list.size() <= most) {
            return list;
        }
        throw new IllegalArgumentException("\"" + name + "\" is not a list of at most " + most);
    }

    private static <T> List<T> each(ObjectNode node, String name, int most, Function<JsonNode, T> read) {
        List<T> all = new ArrayList<>();
        list(node, name, most).forEach(one -> all.add(read.apply(one)));
        return all;
    }
}
