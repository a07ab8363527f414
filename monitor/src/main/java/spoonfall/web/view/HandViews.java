package spoonfall.web.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import spoonfall.kitchen.desk.HandDesk;
import spoonfall.kitchen.typed.HandEntry;
import spoonfall.kitchen.typed.HandView;
import spoonfall.typed.Question;
import spoonfall.web.wire.WireJson;

/** The JSON of readings that somebody types; see docs/live-channel.md. */
public final class HandViews {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private HandViews() {}

    /** How the readings stand. */
    static ObjectNode hand(HandView hand) {
        ObjectNode node = NODES.objectNode().put("probe", hand.probe()).put("everyS", WireJson.rounded(hand.everyS()));
        node.put("due", hand.due());
        hand.last().ifPresentOrElse(last -> node.set("last", entry(last)), () -> node.putNull("last"));
        return node;
    }

    /** A reading. */
    public static ObjectNode entry(HandEntry entry) {
        return NODES.objectNode()
                .put("id", entry.id())
                .put("reading", entry.typed().wire())
                .put("temperatureC", WireJson.rounded(entry.typed().temperatureC()))
                .put("t", WireJson.rounded(entry.t()))
                .put("takeBackUntilT", WireJson.rounded(entry.t() + HandDesk.TAKE_BACK_S));
    }

    /** What is asked back. */
    public static ObjectNode question(Question question) {
        ObjectNode node = NODES.objectNode()
                .put("about", question.about().name().toLowerCase(Locale.ROOT))
                .put("text", question.text())
                .put("detail", question.detail());
        ArrayNode choices = node.putArray("choices");
        question.choices()
                .forEach(choice -> choices.addObject()
                        .put("label", choice.label())
                        .put(
                                "reading",
                                choice.reading().map(reading -> reading.wire()).orElse(null)));
        return node;
    }
}
