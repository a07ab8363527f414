package spoonfall.web.live;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jetty.util.thread.Scheduler;
import spoonfall.alarm.AlarmState;
import spoonfall.cook.CookStatus;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.canner.Canner;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenListener;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.told.PanView;
import spoonfall.web.view.Views;
import spoonfall.web.wire.WireJson;

/**
 * How every pan stands in a line, so that a page on one pan is called for all. Pans are told by their own threads; who
 * reads is told under the board's lock, hence in order, and must only hand over.
 */
final class PanBoard {
    /**
     * For so long after the board was told, what changes is gathered and told together: sixty pans that say something else in the same
     * second are sixty messages to each of five hundred pages otherwise.
     */
    private static final long GATHER_MILLIS = 100;

    private final Kitchens kitchens;
    private final Supplier<Scheduler> scheduler;
    private final Map<String, ObjectNode> rows = new LinkedHashMap<>();
    private final List<Consumer<String>> readers = new ArrayList<>();
    private final Map<String, ObjectNode> told = new HashMap<>();
    private Optional<ObjectNode> toldCanner = Optional.empty();
    private boolean gathers;

    /** The board of these pans; {@code scheduler} runs once the board listens. */
    PanBoard(Kitchens kitchens, Supplier<Scheduler> scheduler) {
        this.kitchens = kitchens;
        this.scheduler = scheduler;
        kitchens.names().forEach(pan -> rows.put(pan, row(kitchens, pan)));
    }

    /** Listens to every pan. */
    void listen() {
        for (Kitchen kitchen : kitchens.all()) {
            kitchen.listen(new Ear(kitchen.plan().pan()));
        }
    }

    /** Adds a reader, who is told of every change of the board from now on; of none where there is only one pan. */
    synchronized void tell(Consumer<String> reader) {
        readers.add(reader);
    }

    /** Does something between two changes of the board. */
    synchronized void between(Runnable task) {
        task.run();
    }

    /** Puts how all the pans stand, and the canner, into a message. */
    synchronized void addTo(ObjectNode message) {
        ArrayNode pans = message.putArray("pans");
        rows.keySet().forEach(pan -> pans.add(shown(pan)));
        message.set("canner", canner().<JsonNode>map(node -> node).orElse(NullNode.instance));
    }

    private synchronized void write(String pan, PanView view) {
        ObjectNode row = row(kitchens, pan);
        row.put("startedAtMs", view.startedAt().map(Instant::toEpochMilli).orElse(null));
        row.put("state", view.outlook().saying().state());
        row.put("act", view.outlook().saying().act());
        row.put("stage", view.status().map(status -> status.stage().wireName()).orElse("waiting"));
        row.put("fresh", view.status().map(CookStatus::fresh).orElse(false));
        ArrayNode alarms = row.putArray("alarms");
        view.alarms().stream()
                .filter(alarm -> alarm.state() == AlarmState.UNACKNOWLEDGED)
                .forEach(alarm -> alarms.add(Views.alarm(alarm)));
        if (!row.equals(rows.get(pan))) {
            rows.put(pan, row);
        }
        if (!gathers) {
            publish();
        }
    }

    private synchronized void publishGathered() {
        gathers = false;
        publish();
    }

    /** Tells the rows that changed, and no other: with many pans and pages the whole board would be too much to send. */
    private void publish() {
        if (rows.size() == 1 && kitchens.canner().isEmpty()) {
            return; // the page knows its own pan
        }
        ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "pans");
        ArrayNode changed = message.putArray("pans");
        for (String pan : rows.keySet()) {
            ObjectNode row = shown(pan);
            if (!row.equals(told.put(pan, row))) {
                changed.add(row);
            }
        }
        Optional<ObjectNode> canner = canner();
        if (!changed.isEmpty() || !canner.equals(toldCanner)) {
            toldCanner = canner;
            message.set("canner", canner.<JsonNode>map(node -> node).orElse(NullNode.instance));
            String text = WireJson.text(message);
            readers.forEach(reader -> reader.accept(text));
            gathers = true;
            scheduler.get().schedule(this::publishGathered, GATHER_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    private ObjectNode shown(String pan) {
        return watched(pan) ? Objects.requireNonNull(rows.get(pan)) : stopped(pan);
    }

    private Optional<ObjectNode> canner() {
        return kitchens.canner().map(Canner::seen).map(PanBoard::canner);
    }

    private boolean watched(String pan) {
        return kitchens.named(pan).map(Kitchen::healthy).orElse(false);
    }

    private ObjectNode stopped(String pan) {
        return row(kitchens, pan).put("state", "Nobody watches it. Restart Spoonfall.");
    }

    private static ObjectNode row(Kitchens kitchens, String pan) {
        ObjectNode row = JsonNodeFactory.instance.objectNode().put("name", pan);
        Optional<Kitchen> kitchen = kitchens.named(pan);
        row.put("batch", kitchen.map(one -> one.plan().batch()).orElse(""));
        row.putNull("startedAtMs")
                .put("state", "")
                .put("act", "")
                .put("stage", "waiting")
                .put("fresh", false);
        row.putArray("alarms");
        return row;
    }

    private static ObjectNode canner(Canner.Seen seen) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("probe", seen.probe()).put("state", seen.state().wireName()).put("detail", seen.detail());
        seen.temperatureC()
                .ifPresentOrElse(c -> node.put("temperatureC", WireJson.tenths(c)), () -> node.putNull("temperatureC"));
        return node;
    }

    /** Hears one pan, on its thread. */
    private final class Ear implements KitchenListener {
        private final String pan;

        private Ear(String pan) {
            this.pan = pan;
        }

        @Override
        public void begin(KitchenState state) {
            write(pan, state.pan());
        }

        @Override
        public void changed(KitchenChange change) {
            // a view follows every change
        }

        @Override
        public void pan(PanView view) {
            write(pan, view);
        }
    }
}
