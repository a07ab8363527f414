package spoonfall.log.store.book;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import spoonfall.cook.Stage;
import spoonfall.log.store.cook.StoredCook;

/**
 * Something that happened in a cook, in words.
 *
 * @param t seconds of the cook
 * @param kind such as {@code alarm}
 * @param text one line, with marks for what depends on the reader's units
 */
public record BookEvent(double t, String kind, String text) {
    /** What is worth telling of a cook when it is over: no acknowledgements, and no alarm's end. */
    static List<BookEvent> of(StoredCook cook) {
        List<BookEvent> told = new ArrayList<>();
        for (StoredCook.Event event : cook.events()) {
            String text = text(event.kind(), event.detail());
            if (!text.isEmpty()) {
                told.add(new BookEvent(event.atMillis() / 1000.0, event.kind(), text));
            }
        }
        return told;
    }

    private static String text(String kind, ObjectNode detail) {
        return switch (kind) {
            case "alarm" ->
                detail.path("change").asText().equals("raised")
                        ? detail.path("text").asText()
                        : "";
            case "stage" -> sentence(detail.path("stage").asText());
            case "reminder" -> detail.path("text").asText();
            case "came-back" ->
                "Spoonfall was away for " + Math.round(detail.path("forS").asDouble()) + " s until then.";
            default -> "";
        };
    }

    private static String sentence(String stage) {
        String words = Stage.words(stage);
        return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
