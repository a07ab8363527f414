package spoonfall.web.jars;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import spoonfall.canner.CannerAlarm;
import spoonfall.canner.CannerProbe;
import spoonfall.canner.CannerView;
import spoonfall.canner.JarLoad;
import spoonfall.canner.Say;
import spoonfall.canning.ProcessingAnswer;
import spoonfall.kitchen.canner.CannerDesk;
import spoonfall.web.wire.WireJson;

/** The JSON of how the jars stand; see docs/live-channel.md. */
public final class JarViews {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private JarViews() {}

    /** How the jars stand. */
    public static ObjectNode of(CannerDesk.News news) {
        CannerView view = news.view();
        ObjectNode node = NODES.objectNode().put("type", "jars");
        node.put("phase", view.phase().wireName()).put("t", WireJson.rounded(view.t()));
        node.put("zeroAtMs", news.zeroAt().toEpochMilli());
        WireJson.put(node, "remainingS", view.remainingS());
        WireJson.put(node, "dueT", view.dueT());
        node.put("restarts", view.restarts());
        node.set("probe", probe(view.probe()));
        Say say = view.say();
        node.putObject("say").put("state", say.state()).put("act", say.act()).put("note", say.note());
        ArrayNode offers = node.putArray("offers");
        view.offers()
                .forEach(offer -> offers.addObject()
                        .put("does", offer.tap().wireName())
                        .put("label", offer.label())
                        .put("main", offer.main()));
        view.load().ifPresentOrElse(load -> node.set("load", load(load)), () -> node.putNull("load"));
        ArrayNode shelf = node.putArray("shelf");
        view.shelf().forEach(load -> shelf.add(onShelf(load)));
        view.undo().ifPresentOrElse(mark -> node.put("undo", mark), () -> node.putNull("undo"));
        ArrayNode alarms = node.putArray("alarms");
        view.alarms().forEach(alarm -> alarms.add(alarm(alarm)));
        return node;
    }

    /** A published time. */
    static ObjectNode time(ProcessingAnswer.Time time) {
        ObjectNode node = NODES.objectNode();
        node.put("minutes", time.minutes()).put("steriliseMinutes", time.steriliseMinutes());
        time.reasons().forEach(node.putArray("reasons")::add);
        time.cautions().forEach(node.putArray("cautions")::add);
        time.sources().forEach(node.putArray("sources")::add);
        return node;
    }

    /** An alarm as it stands. */
    static ObjectNode alarm(CannerAlarm alarm) {
        return NODES.objectNode()
                .put("id", alarm.id())
                .put("alarm", alarm.name().wireName())
                .put("state", alarm.state().wireName())
                .put("priority", alarm.name().priority().wireName())
                .put("raisedT", WireJson.rounded(alarm.raisedT()))
                .put("title", alarm.title())
                .put("act", alarm.act());
    }

    private static ObjectNode probe(CannerProbe probe) {
        ObjectNode node = NODES.objectNode().put("state", probe.state().wireName());
        WireJson.put(node, "temperatureC", probe.temperatureC());
        return node;
    }

    private static ObjectNode load(JarLoad load) {
        ObjectNode node = time(load.time());
        describe(node, load);
        return node.put("waterBoilC", WireJson.rounded(load.waterBoilC()));
    }

    private static ObjectNode onShelf(CannerView.OnShelf one) {
        ObjectNode node = NODES.objectNode();
        node.put("number", one.jars().number());
        describe(node, one.jars().load());
        node.put("phase", one.phase().wireName()).put("text", one.text());
        node.put("loadedT", WireJson.rounded(one.jars().loadedT()));
        node.put("liftedT", WireJson.rounded(one.jars().liftedT()));
        node.put("checkT", WireJson.rounded(one.jars().checkT()));
        node.put("reprocessUntilT", WireJson.rounded(one.jars().reprocessUntilT()));
        ArrayNode seals = node.putArray("seals");
        one.jars().seals().forEach(seal -> seals.add(seal.wireName()));
        return node;
    }

    private static void describe(ObjectNode node, JarLoad load) {
        node.put("food", load.batch().food().wireName());
        node.put("jar", load.batch().jar().wireName());
        node.put("canner", load.batch().canner().wireName());
        node.put("jars", load.jars());
    }
}
