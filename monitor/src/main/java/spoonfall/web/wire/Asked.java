package spoonfall.web.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import spoonfall.kitchen.ask.Refusal;

/** What was sent with a call; what cannot be is a {@link Refusal} that says what can. */
public final class Asked {
    /** The longest body of a request. */
    public static final int LARGEST_BYTES = 4096;

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int LONGEST_REPEATED = 100;
    private static final int LONGEST_TEXT = 100;
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{1,64}");

    private Asked() {}

    /** The JSON object that was sent, which has no other members than those known. */
    public static ObjectNode body(Context ctx, List<String> known) {
        try {
            if (MAPPER.readTree(ctx.body()) instanceof ObjectNode asked) {
                asked.fieldNames().forEachRemaining(name -> {
                    if (!known.contains(name)) {
                        throw new Refusal(
                                "\"" + brief(name) + "\" is not known here; it can be " + String.join(", ", known));
                    }
                });
                return asked;
            }
        } catch (JsonProcessingException e) {
            throw new Refusal("that is no JSON: " + brief(e.getOriginalMessage()), e);
        }
        throw new Refusal("a JSON object is needed, with " + String.join(", ", known));
    }

    /** What was sent, or repeats it, is not sent back whole. */
    private static String brief(String words) {
        return words.length() <= LONGEST_REPEATED ? words : words.substring(0, LONGEST_REPEATED) + "…";
    }

    /** A text that must have been sent. */
    public static String needed(JsonNode asked, String name, String example) {
        return text(asked, name)
                .orElseThrow(() -> new Refusal("\"" + name + "\" is needed, such as \"" + example + "\""));
    }

    /** A whole number that must have been sent. */
    public static int whole(JsonNode asked, String name) {
        JsonNode number = asked.path(name);
        if (!number.isIntegralNumber() || !number.canConvertToInt()) {
            throw new Refusal("\"" + name + "\" is needed, a whole number, such as 6");
        }
        return number.intValue();
    }

    /** The mark of what is to be taken back. */
    public static long mark(Context ctx) {
        JsonNode mark = body(ctx, List.of("mark")).path("mark");
        if (!mark.isIntegralNumber() || !mark.canConvertToLong()) {
            throw new Refusal("\"mark\" is needed: the number that \"undo\" has");
        }
        return mark.longValue();
    }

    /**
     * The id that the page made up for what is said, by which it is known again.
     *
     * @param what what has one, such as "note"
     */
    public static String id(JsonNode asked, String what) {
        JsonNode id = asked.path("id");
        if (!id.isTextual() || !ID.matcher(id.textValue()).matches()) {
            throw new Refusal("\"id\" is needed: 1 to 64 letters, digits, - or _, another one for each " + what);
        }
        return id.textValue();
    }

    /** The id that the page gave a tap, by which one that arrives twice is known; a call without a body has none. */
    public static Optional<String> tap(Context ctx) {
        return ctx.body().isEmpty() ? Optional.empty() : text(body(ctx, List.of("tap")), "tap");
    }

    /** A parameter behind the question mark; blank is none. */
    public static Optional<String> parameter(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).map(String::strip).filter(value -> !value.isEmpty());
    }

    /** A text that may have been sent; blank is none. */
    public static Optional<String> text(JsonNode asked, String name) {
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
