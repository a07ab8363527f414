package spoonfall.web.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.thermometer.Basis;
import spoonfall.kitchen.thermometer.Calibrated;
import spoonfall.kitchen.thermometer.CheckView;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.told.PanView;
import spoonfall.web.wire.WireJson;

/** The JSON of thermometers and of what the gel point rests on; see docs/live-channel.md. */
public final class TrustViews {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private TrustViews() {}

    /** A probe as it is. */
    public static ObjectNode probe(ProbeState probe) {
        ObjectNode node = NODES.objectNode()
                .put("name", probe.name())
                .put("place", probe.place())
                .put("state", probe.state().wireName())
                .put("detail", probe.detail());
        probe.calibration()
                .ifPresentOrElse(made -> node.set("calibration", calibration(made)), () -> node.putNull("calibration"));
        return node.put("calibrationDue", probe.calibrationDue().orElse(null));
    }

    private static ObjectNode calibration(Calibrated made) {
        return NODES.objectNode()
                .put("offsetC", WireJson.rounded(made.offsetC()))
                .put("at", made.at().toString())
                .put("conditions", made.conditions())
                .put("points", made.points())
                .put("half95C", WireJson.rounded(made.half95C()))
                .put("noiseC", WireJson.rounded(made.noiseC()))
                .put("driftC", WireJson.rounded(made.driftC()))
                .put("referenceDoubtC", WireJson.rounded(made.referenceC()))
                .put("classC", WireJson.rounded(made.classC()));
    }

    /** What another probe in the pan says. */
    static ObjectNode other(PanView.Other other) {
        ObjectNode node = NODES.objectNode().put("name", other.name());
        WireJson.put(node, "temperatureC", other.temperatureC());
        return node.put("quality", other.quality().wireName());
    }

    /** What the gel point rests on. */
    public static ObjectNode basis(Basis basis) {
        CookSettings settings = basis.settings();
        WaterBoil boil = settings.waterBoil();
        ObjectNode node = NODES.objectNode()
                .put("waterBoilC", WireJson.rounded(boil.temperatureC()))
                .put("from", boil.from().wireName())
                .put("detail", boil.detail())
                .put("doubtC", WireJson.rounded(boil.doubtC()))
                .put("riseC", WireJson.rounded(settings.riseC()))
                .put("gelPointC", WireJson.rounded(settings.gelPointC()))
                .put("windowFromC", WireJson.rounded(settings.windowFromC()));
        basis.measuredAt()
                .ifPresentOrElse(at -> node.put("measuredAtMs", at.toEpochMilli()), () -> node.putNull("measuredAtMs"));
        WireJson.put(node, "probeDoubtC", basis.probeDoubtC());
        WireJson.put(node, "elevationM", basis.declared().elevationM());
        return node.put("totalDoubtC", WireJson.rounded(basis.totalDoubtC()));
    }

    /** How a check stands. */
    static ObjectNode check(CheckView check) {
        ObjectNode node = NODES.objectNode()
                .put("probe", check.probe())
                .put("in", check.in().wireName())
                .put("state", check.pointC().isPresent() ? "found" : "watching")
                .put("why", check.why());
        WireJson.put(node, "shownC", check.shownC());
        ArrayNode points = node.putArray("points");
        check.points()
                .forEach(point ->
                        points.addArray().add(WireJson.rounded(point.s())).add(WireJson.rounded(point.temperatureC())));
        WireJson.put(node, "referenceC", check.referenceC());
        WireJson.put(node, "pointC", check.pointC());
        WireJson.put(node, "correctionC", check.correctionC());
        WireJson.put(node, "half95C", check.half95C());
        WireJson.put(node, "waterBoilC", check.waterBoilC());
        node.put("cannotCorrect", check.cannotCorrect().orElse(null));
        return node.put("boiledToo", check.boiledToo());
    }
}
