package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.pantry.FoodBook;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.log.DataFolder;
import spoonfall.log.memory.BatchFile;
import spoonfall.log.memory.BatchMemory;
import spoonfall.log.store.CookLog;
import spoonfall.probe.trace.Trace;

/** The calls on what was learnt. */
final class LearnRoutesTest {
    @TempDir
    Path folder = Path.of("");

    private final Trace trace = Cooks.trace(Scenario.PAST, 1);
    private final Kitchen kitchen = new Kitchen(
            KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1),
            clock -> List.of(new ToldProbe("pan", 0)),
            System::nanoTime);
    private final Caller caller = new Caller();
    private @Nullable WebServer server;

    @AfterEach
    void stop() {
        if (server != null) {
            server.close();
        }
        kitchen.close();
    }

    private int port() {
        if (server == null) {
            DataFolder data = new DataFolder(folder);
            Kitchens kitchens = Kitchens.one(kitchen)
                    .remembering(new BatchMemory(data, new BatchFile(data.notebook()), FoodBook::usual));
            server = new WebServer(kitchens, "127.0.0.1", 0);
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

    private void refused(String method, String path, String body, String why) {
        HttpResponse<String> answer = send(method, path, body);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(Caller.json(answer).path("error").asText()).contains(why);
    }

    @Test
    void whatIsLearnt_isTold_andATargetIsTakenOnlyWhenSomebodyTakesIt() throws IOException {
        Files.writeString(folder.resolve("batches.csv"), "fruit,final_rise,set\norange,4.4C,soft\norange,4.8C,right\n");
        JsonNode learnt = said("GET", "/api/learn", "");
        double riseC = learnt.path("riseC").asDouble();
        JsonNode orange = learnt.path("fruits").get(0);
        assertThat(orange.path("fruit").asText()).isEqualTo("orange");
        assertThat(orange.path("riseC").asDouble()).isBetween(4.4, 5.6);
        assertThat(orange.path("sets").path("soft").asInt()).isOne();
        assertThat(orange.path("words").toString()).contains("It rests on 2 batches of it");
        assertThat(learnt.path("another").path("others").asInt()).isEqualTo(2);
        assertThat(learnt.path("batches").get(0).path("set").asText()).isEqualTo("right");
        assertThat(said("GET", "/api/learn", "").path("riseC").asDouble()).isEqualTo(riseC);

        said("POST", "/api/learn/target", "{\"riseC\": 5.0}");
        assertThat(said("GET", "/api/learn", "").path("riseC").asDouble()).isCloseTo(5.0, within(1e-9));
        refused("POST", "/api/learn/target", "{\"riseC\": 9}", "3.3 to 6.1 °C above boiling water");
        refused("POST", "/api/learn/target", "{\"riseC\": \"5\"}", "a number of °C");
        refused("POST", "/api/learn/target", "{\"rise\": 5}", "\"rise\" is not known here");
        assertThat(said("GET", "/api/learn?fruit=quince", "").path("fruit").asText())
                .isEqualTo("quince");
    }

    @Test
    void aBatch_isDiagnosed_andARecookNamesACookThatThereIs() {
        try (CookLog log = CookLog.openOrMake(new DataFolder(folder).cooks())) {
            log.take(trace, Cooks.settings(trace));
        }
        JsonNode diagnosis = said("GET", "/api/learn/1/diagnosis?set=stiff", "");
        assertThat(diagnosis.path("findings").toString()).contains("boiled-past");
        assertThat(diagnosis.path("recookToC").isNull()).isTrue();
        refused("GET", "/api/learn/9/diagnosis", "", "there is no cook 9");
        refused("GET", "/api/learn/one/diagnosis", "", "a cook's number is digits");
        refused("GET", "/api/learn/1/diagnosis?set=solid", "", "a set is runny, soft, right, firm, stiff");
        refused("POST", "/api/learn/recook", "{\"of\": 9}", "there is no cook 9");
        refused("POST", "/api/learn/recook", "{\"of\": 1.5}", "the number of the earlier cook");
        refused("POST", "/api/learn/recook", "{\"of\": 1}", "no cook has begun yet");
    }

    @Test
    void aNotebookThatCannotBe_isToldToThePage() throws IOException {
        Files.writeString(folder.resolve("batches.csv"), "oops\n");
        refused("GET", "/api/learn", "", "the heading must be");
    }
}
