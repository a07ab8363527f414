package spoonfall.web.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.SetTest;
import spoonfall.cook.settest.SetTestsNow;
import spoonfall.settest.TestAnswer;
import spoonfall.web.wire.WireJson;

/** The JSON of set tests; see docs/live-channel.md. */
final class TestViews {
    private TestViews() {}

    /** How the set tests stand. */
    static ObjectNode tests(SetTestsNow now) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("open", now.open().map(SetTest::id).orElse(null))
                .put("set", now.set())
                .put("goesBack", now.goesBack());
        CookSettings aim = now.aim();
        node.put("nextRiseC", WireJson.rounded(now.nextRiseC()));
        node.put("nextC", WireJson.rounded(aim.waterBoil().temperatureC() + now.nextRiseC()));
        WireJson.put(node, "nextInS", now.nextInS());
        node.putObject("aim")
                .put("riseC", WireJson.rounded(aim.riseC()))
                .put("gelPointC", WireJson.rounded(aim.gelPointC()))
                .put("windowFromC", WireJson.rounded(aim.windowFromC()));
        ArrayNode list = node.putArray("list");
        now.tests().forEach(test -> list.add(test(test)));
        return node;
    }

    /** What changed about a test. */
    static ObjectNode event(CookEvent.TestChanged event) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("type", "test").put("t", WireJson.rounded(event.t()));
        node.put("change", event.change().wireName()).set("test", test(event.test()));
        return node;
    }

    private static ObjectNode test(SetTest test) {
        ObjectNode node = JsonNodeFactory.instance
                .objectNode()
                .put("id", test.id())
                .put("beganT", WireJson.rounded(test.beganT()))
                .put("plateDueT", WireJson.rounded(test.plateDueT()));
        WireJson.put(node, "temperatureC", test.temperatureC());
        WireJson.put(node, "riseC", test.riseC());
        WireJson.put(node, "solids", test.solids());
        if (test.seen().isPresent()) {
            TestAnswer answer = test.seen().get().answer();
            node.put("seenT", WireJson.rounded(test.seen().get().t()));
            return node.put("how", answer.kind().wireName())
                    .put("seen", answer.wireName())
                    .put("set", answer.set());
        }
        return node.putNull("seenT").putNull("how").putNull("seen").put("set", false);
    }
}
