package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.pantry.Pantry;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.probe.trace.Trace;

/** The calls of the plan. */
final class PlanRoutesTest {
    private static final String BATCH =
            "{\"ingredients\": [{\"amount\": \"600\", \"unit\": \"g\", \"food\": \"Seville oranges\"},"
                    + " {\"amount\": \"660 mL\", \"food\": \"water\"}, {\"amount\": \"740\", \"unit\": \"g\", \"food\": \"sugar\"}],"
                    + " \"kettle\": \"4min\", \"pan\": \"9L\"}";

    @TempDir
    Path folder = Path.of("");

    private final Trace trace = Cooks.trace(Scenario.CLEAN, 1);
    private final ToldProbe probe = new ToldProbe("pan", 0);
    private final Kitchen kitchen = new Kitchen(
            KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1),
            clock -> List.of(probe),
            System::nanoTime);
    private final Caller caller = new Caller();
    private @org.jspecify.annotations.Nullable WebServer server;

    @AfterEach
    void stop() {
        if (server != null) {
            server.close();
        }
        kitchen.close();
    }

    private int port() {
        if (server == null) {
            Pantry pantry = Pantry.of(folder.resolve("foods.csv"), folder.resolve("hob.json"), Optional.empty());
            server = new WebServer(Kitchens.one(kitchen).stocked(pantry), "127.0.0.1", 0);
            kitchen.start();
            server.start();
        }
        return server.port();
    }

    private HttpResponse<String> send(String method, String path, String body) {
        return caller.send(port(), method, path, body);
    }

    private JsonNode said(String method, String path, String body) {
        HttpResponse<String> answer = send(method, path, body);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return Caller.json(answer);
    }

    @Test
    void aPlan_isWorkedOutForThisKitchen() {
        JsonNode plan = said("POST", "/api/plan", BATCH);
        assertThat(plan.path("out").path("gelPointC").asDouble()).isCloseTo(100.28, within(0.02)); // 1,240 m
        assertThat(plan.path("in").path("totalKg").asDouble()).isCloseTo(2.0, within(0.01));
        assertThat(plan.path("boilMinutes").path("middle").asDouble()).isBetween(15.0, 25.0);
        assertThat(plan.path("advice")).isNotEmpty();
        assertThat(plan.has("doesNotScale")).isFalse();
        JsonNode half = said("POST", "/api/plan", BATCH.replace("{\"ing", "{\"times\": \"1/2\", \"ing"));
        assertThat(half.path("in").path("totalKg").asDouble()).isCloseTo(1.0, within(0.01));
        assertThat(half.path("doesNotScale").toString()).contains("The hob does not grow");
        JsonNode foods = said("GET", "/api/plan/foods", "");
        assertThat(foods.path("foods")).hasSizeGreaterThan(40);
        assertThat(foods.path("units").toString()).contains("cup", "tablespoon", "ounce", "piece");
    }

    @Test
    void fromThePlanToTheYield_theHobIsLearnt_once() {
        assertThat(said("GET", "/api/plan", "").path("batch").isNull()).isTrue();
        JsonNode cooked = said("POST", "/api/plan/cook", BATCH);
        assertThat(cooked.path("next").asBoolean()).isTrue();
        assertThat(cooked.path("batch").path("ingredients")).hasSize(3);
        for (int i = 0; i < trace.size(); i++) {
            probe.say(trace.temperatureC(i).orElseThrow(), 1);
        }
        kitchen.state().join(); // all of it is judged
        JsonNode filled = said("POST", "/api/plan/filled", "{\"jars\": 4}");
        assertThat(filled.path("yield").asText()).contains("You filled 4", "as planned");
        assertThat(filled.path("hob").path("from").asText()).isEqualTo("learnt");
        assertThat(filled.path("hob").path("kW").asDouble()).isCloseTo(1.35, within(0.25)); // the trace's
        assertThat(said("POST", "/api/plan/filled", "{\"jars\": 5}")
                        .path("filled")
                        .asInt())
                .isEqualTo(5);
        assertThat(folder.resolve("hob.json")).content().containsOnlyOnce("waterKgPerMin");
        JsonNode next = said("POST", "/api/plan", BATCH.replace("\"kettle\": \"4min\", ", ""));
        assertThat(next.path("hob").path("from").asText()).isEqualTo("learnt");
        assertThat(said("DELETE", "/api/plan/cook", "").path("batch").isNull()).isTrue();
    }

    @Test
    void badPlans_areRefused_withTheirRow() {
        Map<String, String> says = new LinkedHashMap<>();
        says.put("{}", "\"ingredients\" is needed");
        says.put(
                "{\"ingredients\": [{\"amount\": \"1\", \"unit\": \"kg\", \"food\": \"oragne\"}]}",
                "row 1: \"oragne\" is not in the table of foods; did you mean orange");
        says.put(
                "{\"ingredients\": [{\"amount\": \"-1\", \"unit\": \"kg\", \"food\": \"sugar\"}]}",
                "row 1: an amount must be above 0");
        says.put(
                "{\"ingredients\": [{\"amount\": \"1\", \"unit\": \"bushel\", \"food\": \"sugar\"}]}",
                "row 1: unknown unit");
        says.put(
                "{\"ingredients\": [{\"amount\": \"1\", \"unit\": \"cup\", \"food\": \"quince\"}]}",
                "nobody weighed a cup of quince");
        says.put("{\"ingredients\": [{\"amount\": 1, \"food\": \"sugar\"}]}", "\"amount\" must be a text");
        says.put(
                "{\"ingredients\": [{\"amount\": \"1\", \"food\": \"sugar\", \"x\": 1}]}",
                "row 1: \"x\" is not known here");
        says.put("{\"ingredients\": [7]}", "\"amount\" is needed");
        says.put(
                "{\"ingredients\": [{\"amount\": \"1 kg\", \"food\": \"plum\"}], \"kettle\": \"now\"}",
                "time \"now\" is not understood");
        says.put("{\"ingredients\": [{\"amount\": \"1 kg\", \"food\": \"water\"}]}", "neither sugar nor fruit");
        says.forEach((body, wrong) -> {
            HttpResponse<String> answer = send("POST", "/api/plan", body);
            assertThat(answer.statusCode()).as(body).isEqualTo(400);
            assertThat(Caller.json(answer).path("error").asText()).contains(wrong);
        });
    }

    @Test
    void jarsThatCannotBe_areRefused_andSoIsAnUnknownPan() {
        assertThat(send("POST", "/api/plan/filled", "{\"jars\": -2}").statusCode())
                .isEqualTo(400);
        assertThat(send("POST", "/api/plan/filled", "{\"jars\": \"4\"}").statusCode())
                .isEqualTo(400);
        assertThat(send("GET", "/api/pans/none/plan", "").statusCode()).isEqualTo(404);
    }

    @Test
    void aDamagedBookOfHobs_isGoneWithout_andKept() throws java.io.IOException {
        Files.writeString(folder.resolve("hob.json"), "{oops");
        assertThat(said("POST", "/api/plan", BATCH.replace("\"kettle\": \"4min\", ", ""))
                        .path("hob")
                        .isNull())
                .isTrue();
        said("POST", "/api/plan/filled", "{\"jars\": 4}");
        assertThat(folder.resolve("hob.json")).hasContent("{oops");
    }

    @Test
    void anyBytes_areAnsweredWithAPlanOrARefusal() {
        long seed = 20261126;
        System.out.println("PlanRoutesTest seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 80; i++) {
            StringBuilder body = new StringBuilder(BATCH);
            for (int n = 1 + random.nextInt(6); n > 0; n--) {
                body.setCharAt(random.nextInt(body.length()), (char) (32 + random.nextInt(95)));
            }
            assertThat(send("POST", "/api/plan", body.toString()).statusCode()).isIn(200, 400);
        }
    }
}
