package spoonfall.web.live;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import spoonfall.cook.CookSettings;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.physics.Syrup;
import spoonfall.web.view.AfternoonViews;
import spoonfall.web.view.NoteViews;
import spoonfall.web.view.TrustViews;
import spoonfall.web.view.Views;
import spoonfall.web.wire.WireJson;

/** The snapshot of docs/live-channel.md. */
public final class Snapshots {
    private static final double STEP_C = 0.25;

    private final String run;
    private final PanBoard board;

    /** Snapshots of the run of the service that is called {@code run}. */
    Snapshots(String run, PanBoard board) {
        this.run = run;
        this.board = board;
    }

    /** The snapshot of a pan. */
    public ObjectNode of(KitchenState state) {
        CookSettings settings = state.pan().basis().settings();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("type", "snapshot").put("seq", state.pan().seq()).put("run", run);
        node.put("pan", state.plan().pan());
        node.putObject("kitchen")
                .put("name", state.plan().name())
                .put("batch", state.plan().batch());
        ObjectNode cook = node.putObject("cook");
        cook.put("number", state.cookNumber());
        state.startedAt()
                .ifPresentOrElse(at -> cook.put("startedAtMs", at.toEpochMilli()), () -> cook.putNull("startedAtMs"));
        cook.put("speed", state.plan().speed());
        cook.put("source", state.plan().source().wireName());
        node.set("probe", TrustViews.probe(state.probe()));
        ArrayNode probes = node.putArray("probes");
        state.probes().forEach(probe -> probes.add(TrustViews.probe(probe)));
        node.set("basis", TrustViews.basis(state.pan().basis()));
        addSyrup(node.putArray("syrup"), settings);
        node.set("status", Views.status(state.pan()));
        NoteViews.put(node, state.notes());
        node.set("afternoon", AfternoonViews.of(state.afternoon()));
        ArrayNode alarms = node.putArray("alarms");
        state.pan().alarms().forEach(alarm -> alarms.add(Views.alarm(alarm)));
        ArrayNode events = node.putArray("events");
        state.changes().forEach(change -> events.add(Views.change(change)));
        ArrayNode climb = node.putArray("climb");
        state.climb().forEach(point -> {
            ArrayNode pair = climb.addArray().add(WireJson.rounded(point.t()));
            point.temperatureC().ifPresentOrElse(c -> pair.add(WireJson.rounded(c)), pair::addNull);
        });
        board.addTo(node);
        return node;
    }

    /** Adds what colours the fill: rises above the water boil with their solids. */
    public static void addSyrup(ArrayNode syrup, CookSettings settings) {
        for (double riseC = 0; riseC <= settings.riseC() + 2; riseC += STEP_C) {
            double solids = Syrup.solids(settings.waterBoil().pressurePa(), riseC, Syrup.TYPICAL_INVERTED);
            syrup.addArray().add(WireJson.rounded(riseC)).add(WireJson.rounded(solids));
        }
    }
}
