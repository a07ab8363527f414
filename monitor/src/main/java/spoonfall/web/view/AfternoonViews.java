package spoonfall.web.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.afternoon.Preparation;
import spoonfall.afternoon.Step;
import spoonfall.afternoon.Timeline;
import spoonfall.afternoon.Timeline.Moment;
import spoonfall.afternoon.Timeline.PreparationLine;
import spoonfall.afternoon.Timeline.StepLine;
import spoonfall.kitchen.told.AfternoonView;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.web.wire.WireJson;
import spoonfall.words.AfternoonSaying.Act;

/** The JSON of an afternoon; see docs/live-channel.md. */
public final class AfternoonViews {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private AfternoonViews() {}

    /** A change of the afternoon. */
    static ObjectNode change(KitchenChange.Afternoon change) {
        ObjectNode node = NODES.objectNode().put("type", "afternoon").put("seq", change.seq());
        return node.set("afternoon", of(change.afternoon()));
    }

    /** A reminder of the afternoon, like those of the cook. */
    static ObjectNode change(KitchenChange.Reminded change) {
        return NODES.objectNode()
                .put("type", "reminder")
                .put("seq", change.seq())
                .put("t", WireJson.rounded(change.t()))
                .put("reminder", change.name())
                .put("text", change.text());
    }

    /** An afternoon as it stands. */
    public static ObjectNode of(AfternoonView view) {
        Timeline timeline = view.timeline();
        ObjectNode node = NODES.objectNode()
                .put("startedAtMs", view.startedAt().toEpochMilli())
                .put("t", WireJson.rounded(timeline.t()));
        node.putObject("say")
                .put("state", view.saying().saying().state())
                .put("act", view.saying().saying().act())
                .put("note", view.saying().saying().note());
        act(node, "act", view.saying().act());
        act(node, "other", view.saying().other());
        timeline.undo()
                .ifPresentOrElse(
                        undo -> node.putObject("undo").put("mark", undo.mark()).put("words", undo.words()),
                        () -> node.putNull("undo"));
        ArrayNode steps = node.putArray("steps");
        timeline.steps().forEach(line -> steps.add(step(timeline, line)));
        ArrayNode preparations = node.putArray("preparations");
        timeline.preparations().forEach(line -> preparations.add(preparation(line)));
        return node;
    }

    private static void act(ObjectNode node, String name, Optional<Act> act) {
        act.ifPresentOrElse(
                one -> node.putObject(name)
                        .put("does", one.does())
                        .put("id", one.id())
                        .put("label", one.label()),
                () -> node.putNull(name));
    }

    private static ObjectNode step(Timeline timeline, StepLine line) {
        Step step = line.step();
        ObjectNode node = NODES.objectNode()
                .put("id", step.id())
                .put("name", step.name())
                .put("minutes", step.minutes())
                .put("optional", step.kind() == Step.Kind.OPTIONAL)
                .put("state", line.state().wireName())
                .put("by", line.by().wireName())
                .put("known", !timeline.onlyThePanKnows(line));
        WireJson.put(node, "begunT", line.begunT());
        WireJson.put(node, "endedT", line.endedT());
        put(node, timeline.isBeingDone(line) ? Optional.empty() : line.begins().or(line::ends));
        line.beginsInMoreThan().ifPresent(how -> node.put("leastMinutes", how.least()));
        return node;
    }

    private static ObjectNode preparation(PreparationLine line) {
        Preparation one = line.preparation();
        ObjectNode node = NODES.objectNode()
                .put("id", one.id())
                .put("name", one.name())
                .put("minutes", one.minutes())
                .put("before", one.before())
                .put("fixed", one.saidBy().isPresent())
                .put("state", line.state().wireName());
        WireJson.put(node, "doneT", line.doneT());
        put(node, line.due());
        return node;
    }

    private static void put(ObjectNode node, Optional<Moment> due) {
        WireJson.put(
                node, "dueT", due.map(moment -> OptionalDouble.of(moment.t())).orElse(OptionalDouble.empty()));
        boolean forecast = due.filter(Moment::forecast).isPresent();
        node.put("forecast", forecast);
        if (forecast) {
            node.put("fromT", WireJson.rounded(due.orElseThrow().fromT()));
            node.put("untilT", WireJson.rounded(due.orElseThrow().untilT()));
        }
    }
}
