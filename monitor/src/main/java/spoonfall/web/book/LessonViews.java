package spoonfall.web.book;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import spoonfall.cook.calm.CalmTime;
import spoonfall.lesson.Frame;
import spoonfall.lesson.Lesson;
import spoonfall.lesson.Moment;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.web.wire.WireJson;
import spoonfall.words.Saying;

/** A lesson as the page gets it. */
final class LessonViews {
    private LessonViews() {}

    /** A lesson; each saying is told once, and the frames point at it. */
    static ObjectNode lesson(StoredCook cook, Lesson lesson, double waterBoilC) {
        ObjectNode node = object().put("id", cook.id());
        node.put("startedAtMs", cook.header().startedAt().toEpochMilli());
        node.put("lastT", lesson.lastT()).put("cut", lesson.cut());
        Map<Saying, Integer> numbers = new LinkedHashMap<>();
        ArrayNode sayings = node.putArray("sayings");
        ArrayNode frames = node.putArray("frames");
        for (Frame frame : lesson.frames()) {
            int number = numbers.computeIfAbsent(frame.saying(), saying -> {
                sayings.addObject()
                        .put("state", saying.state())
                        .put("act", saying.act())
                        .put("note", saying.note());
                return numbers.size();
            });
            frames.add(frame(frame, waterBoilC).put("saying", number));
        }
        ArrayNode moments = node.putArray("moments");
        lesson.moments().forEach(moment -> moments.add(moment(moment)));
        return node;
    }

    private static ObjectNode frame(Frame frame, double waterBoilC) {
        ObjectNode node = object().put("t", WireJson.hundredths(frame.t()));
        node.put("stage", frame.stage().wireName());
        WireJson.putHundredths(node, "temperatureC", frame.temperatureC());
        WireJson.putHundredths(
                node,
                "riseC",
                frame.temperatureC().isPresent()
                        ? OptionalDouble.of(frame.temperatureC().getAsDouble() - waterBoilC)
                        : OptionalDouble.empty());
        WireJson.putHundredths(node, "etaS", ahead(frame, CalmTime.Shown::t));
        WireJson.putHundredths(node, "etaLowS", ahead(frame, CalmTime.Shown::fromT));
        WireJson.putHundredths(node, "etaHighS", ahead(frame, CalmTime.Shown::untilT));
        return node;
    }

    private static OptionalDouble ahead(Frame frame, ToDoubleFunction<CalmTime.Shown> moment) {
        return frame.sets().stream()
                .mapToDouble(sets -> Math.max(0, moment.applyAsDouble(sets) - frame.t()))
                .findFirst();
    }

    private static ObjectNode moment(Moment moment) {
        ObjectNode node = object().put("t", WireJson.hundredths(moment.t()));
        node.put("kind", moment.kind().wireName());
        node.put("title", moment.title()).put("said", moment.said());
        ArrayNode done = node.putArray("done");
        moment.done().forEach(done::add);
        ArrayNode choices = node.putArray("choices");
        moment.choices().forEach(choice -> choices.add(choice.words()));
        return node;
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
