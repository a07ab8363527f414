package spoonfall.web.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import spoonfall.alarm.AlarmChange;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Forecast;
import spoonfall.cook.Suppression;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.PanView;
import spoonfall.probe.Quality;
import spoonfall.web.wire.WireJson;
import spoonfall.words.Away;
import spoonfall.words.NextStep;
import spoonfall.words.Outlook;
import spoonfall.words.Plain;

/** The JSON of docs/live-channel.md, for the page, for the terminal and for whoever else reads it. */
public final class Views {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Views() {}

    /** A status without what is said of it. */
    private static ObjectNode status(CookStatus status, CookSettings settings) {
        ObjectNode node = NODES.objectNode();
        double waterBoilC = settings.waterBoil().temperatureC();
        node.put("type", "status").put("t", WireJson.rounded(status.t()));
        WireJson.put(node, "temperatureC", status.temperatureC());
        node.put("waterBoilC", WireJson.rounded(waterBoilC)).put("gelPointC", WireJson.rounded(settings.gelPointC()));
        node.put("stage", status.stage().wireName());
        WireJson.put(node, "ratePerMinC", status.ratePerMinC());
        WireJson.put(node, "solids", status.solids());
        WireJson.put(node, "etaS", status.forecast().map(Forecast::etaS));
        WireJson.put(node, "etaLowS", status.forecast().map(Forecast::lowS));
        WireJson.put(node, "etaHighS", status.forecast().map(Forecast::highS));
        return node;
    }

    /** A status with what is said of it, for the page. */
    public static ObjectNode status(PanView view) {
        CookSettings settings = view.aim();
        ObjectNode node =
                view.status().map(status -> statusForPage(status, settings)).orElseGet(() -> waiting(settings));
        node.put("seq", view.seq());
        node.put("startedAtMs", view.startedAt().map(Instant::toEpochMilli).orElse(null));
        Outlook outlook = view.outlook();
        node.putObject("say")
                .put("state", outlook.saying().state())
                .put("act", outlook.saying().act())
                .put("note", outlook.saying().note());
        ArrayNode fan = node.putArray("fan");
        outlook.fan()
                .forEach(point -> fan.addArray()
                        .add(WireJson.rounded(point.t()))
                        .add(WireJson.rounded(point.lowC()))
                        .add(WireJson.rounded(point.midC()))
                        .add(WireJson.rounded(point.highC())));
        ArrayNode steps = node.putArray("comingUp");
        outlook.comingUp().forEach(step -> steps.add(step(step)));
        ArrayNode others = node.putArray("others");
        view.others().forEach(other -> others.add(TrustViews.other(other)));
        view.hand().ifPresentOrElse(hand -> node.set("hand", HandViews.hand(hand)), () -> node.putNull("hand"));
        view.check().ifPresentOrElse(check -> node.set("check", TrustViews.check(check)), () -> node.putNull("check"));
        view.tests().ifPresentOrElse(tests -> node.set("tests", TestViews.tests(tests)), () -> node.putNull("tests"));
        return node;
    }

    private static ObjectNode waiting(CookSettings settings) {
        ObjectNode node = NODES.objectNode();
        node.put("type", "status").put("t", 0).put("stage", "waiting").put("fresh", false);
        node.put("quality", Quality.SILENT.wireName());
        for (String name : List.of("temperatureC", "seenC", "seenT", "riseC", "toGoC", "ratePerMinC", "solids")) {
            node.putNull(name);
        }
        for (String name : List.of("etaS", "etaLowS", "etaHighS", "windowEtaS")) {
            node.putNull(name);
        }
        node.put("waterBoilC", WireJson.rounded(settings.waterBoil().temperatureC()));
        return node.put("gelPointC", WireJson.rounded(settings.gelPointC()));
    }

    private static ObjectNode statusForPage(CookStatus status, CookSettings settings) {
        ObjectNode node = status(status, settings);
        WireJson.put(node, "seenC", status.seen().map(CookStatus.Seen::temperatureC));
        WireJson.put(node, "seenT", status.seen().map(CookStatus.Seen::t));
        node.put("fresh", status.fresh());
        node.put("wasClose", status.wasClose());
        node.put("quality", status.quality().wireName());
        OptionalDouble temperatureC = status.temperatureC();
        if (temperatureC.isPresent()) {
            double riseC = temperatureC.getAsDouble() - settings.waterBoil().temperatureC();
            node.put("riseC", WireJson.rounded(riseC)).put("toGoC", WireJson.rounded(settings.riseC() - riseC));
        } else {
            node.putNull("riseC").putNull("toGoC");
        }
        WireJson.put(node, "windowEtaS", status.forecast().map(Forecast::windowS));
        return node;
    }

    private static ObjectNode step(NextStep step) {
        ObjectNode node = NODES.objectNode();
        node.put("t", WireJson.rounded(step.t()));
        step.range()
                .ifPresent(range -> node.put("fromT", WireJson.rounded(range.fromT()))
                        .put("untilT", WireJson.rounded(range.untilT())));
        if (!step.known()) {
            node.put("known", false);
        }
        step.howLong().ifPresent(how -> {
            node.put("leastMinutes", how.least());
            if (!how.isOpen()) {
                node.put("mostMinutes", how.most());
            }
        });
        return node.put("text", step.text()).put("state", step.state().wireName());
    }

    /** An alarm as it stands. */
    public static ObjectNode alarm(CookAlarm alarm) {
        ObjectNode node = NODES.objectNode()
                .put("id", alarm.id())
                .put("alarm", alarm.name().wireName())
                .put("state", alarm.state().wireName())
                .put("priority", alarm.name().priority().wireName())
                .put("prompt", alarm.name().isPrompt())
                .put("raisedT", WireJson.rounded(alarm.raisedT()))
                .put("title", alarm.title())
                .put("act", alarm.act());
        WireJson.put(node, "shelvedUntilT", alarm.shelvedUntilT());
        return node.put(
                "suppressedBy", alarm.suppressedBy().map(Suppression::wireName).orElse(null));
    }

    /** A change, for the page. */
    public static ObjectNode change(KitchenChange change) {
        if (change instanceof KitchenChange.Afternoon afternoon) {
            return AfternoonViews.change(afternoon);
        }
        if (change instanceof KitchenChange.Reminded reminded) {
            return AfternoonViews.change(reminded);
        }
        if (change instanceof KitchenChange.Noted noted) {
            return NoteViews.change(noted);
        }
        ObjectNode node = NODES.objectNode();
        if (change instanceof KitchenChange.Probe probe) {
            node.put("type", "probe").put("seq", change.seq()).put("t", WireJson.rounded(probe.t()));
            node.set("probe", TrustViews.probe(probe.probe()));
        } else if (change instanceof KitchenChange.Cook cook) {
            if (cook.event() instanceof CookEvent.AlarmChanged event) {
                node.put("type", "alarm").put("seq", change.seq()).put("t", WireJson.rounded(event.t()));
                node.put("change", event.change().wireName()).set("alarm", alarm(event.alarm()));
            } else if (cook.event() instanceof CookEvent.StageEntered event) {
                node.put("type", "stage").put("seq", change.seq()).put("t", WireJson.rounded(event.t()));
                node.put("stage", event.stage().wireName());
            } else if (cook.event() instanceof CookEvent.Reminded event) {
                node.put("type", "reminder").put("seq", change.seq()).put("t", WireJson.rounded(event.t()));
                node.put("reminder", event.reminder().wireName()).put("text", event.text());
            } else if (cook.event() instanceof CookEvent.CameBack event) {
                node.put("type", "came-back").put("seq", change.seq()).put("t", WireJson.rounded(event.t()));
                node.put("forS", WireJson.rounded(event.forS())).put("text", Away.text(event.t(), event.forS()));
            } else if (cook.event() instanceof CookEvent.TestChanged event) {
                node.put("seq", change.seq()).setAll(TestViews.event(event));
            }
        }
        return node;
    }

    /**
     * An event as one line of {@code replay --json}.
     *
     * @param settings what the cook is measured against
     */
    public static ObjectNode event(CookEvent event, CookSettings settings) {
        if (event instanceof CookEvent.StatusTaken taken) {
            return status(taken.status(), settings);
        }
        ObjectNode node = NODES.objectNode();
        if (event instanceof CookEvent.StageEntered entered) {
            return node.put("type", "stage")
                    .put("t", WireJson.rounded(entered.t()))
                    .put("stage", entered.stage().wireName());
        }
        if (event instanceof CookEvent.Reminded reminded) {
            return node.put("type", "reminder")
                    .put("t", WireJson.rounded(reminded.t()))
                    .put("reminder", reminded.reminder().wireName())
                    .put("text", Plain.text(reminded.text()));
        }
        if (event instanceof CookEvent.TestChanged changed) {
            return TestViews.event(changed);
        }
        if (event instanceof CookEvent.AlarmChanged changed) {
            CookAlarm alarm = changed.alarm();
            node.put("type", "alarm").put("t", WireJson.rounded(changed.t()));
            node.put("alarm", alarm.name().wireName())
                    .put("change", changed.change().wireName());
            node.put("priority", alarm.name().priority().wireName());
            String text = changed.change() == AlarmChange.RAISED ? Plain.text(alarm.text()) : "";
            node.put("text", text);
        }
        return node;
    }
}
