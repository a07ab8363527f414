package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.file.NotesFile;
import spoonfall.kitchen.plan.KitchenPlan;

/** The calls of the afternoon. */
final class AfternoonRoutesTest {

    @TempDir
    Path folder = Path.of("");

    private final KitchenPlan plan =
            KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
    private final Kitchen kitchen = new Kitchen(plan, clock -> List.of(new ToldProbe("pan", 0)), System::nanoTime);
    private final WebServer server = new WebServer(kitchen, "127.0.0.1", 0);
    private final Caller caller = new Caller();

    AfternoonRoutesTest() {
        kitchen.start();
        server.start();
    }

    @AfterEach
    void stop() {
        server.close();
        kitchen.close();
    }

    private HttpResponse<String> send(String method, String path, String body) {
        return caller.send(server.port(), method, path, body);
    }

    private JsonNode said(String method, String path, String body) {
        HttpResponse<String> answer = send(method, path, body);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return Caller.json(answer).path("afternoon");
    }

    private static String stateOf(JsonNode afternoon, String step) {
        for (JsonNode one : afternoon.path("steps")) {
            if (one.path("id").asText().equals(step)) {
                return one.path("state").asText();
            }
        }
        return "";
    }

    @Test
    void aTap_isInTheSnapshot_andOneThatArrivesTwiceIsTakenOnce() {
        said("POST", "/api/afternoon/steps/soften/begin", "");
        said("POST", "/api/afternoon/steps/soften/done", "{\"tap\": \"a1\"}");
        JsonNode again = said("POST", "/api/afternoon/steps/soften/done", "{\"tap\": \"a1\"}");
        assertThat(stateOf(again, "sugar")).isEqualTo("now");
        JsonNode undone = said(
                "POST",
                "/api/afternoon/undo",
                "{\"mark\": " + again.path("undo").path("mark").asLong() + "}");
        assertThat(stateOf(undone, "soften")).isEqualTo("now");
        JsonNode late = said("POST", "/api/afternoon/steps/soften/done", "{\"tap\": \"a1\"}");
        assertThat(stateOf(late, "soften"))
                .as("the tap that was undone comes again")
                .isEqualTo("now");
        JsonNode snapshot = Caller.json(send("GET", "/api/state", "")).path("afternoon");
        assertThat(stateOf(snapshot, "soften")).isEqualTo("now");
        assertThat(snapshot.path("startedAtMs").asLong()).isPositive();
    }

    @Test
    void aNewCook_beginsANewAfternoonByTheSameNotes_andTheOldOneCanBeHadBack() {
        said("POST", "/api/afternoon/notes/rest", "{\"minutes\": 15}");
        said("POST", "/api/afternoon/steps/off/done", "");
        JsonNode fresh = Caller.json(send("POST", "/api/cook", "")).path("afternoon");
        assertThat(stateOf(fresh, "off")).isEqualTo("later");
        assertThat(fresh.path("steps").findValuesAsText("minutes")).contains("15");
        assertThat(fresh.path("undo").path("words").asText()).isEqualTo("A new cook");
        JsonNode old = said("POST", "/api/afternoon/undo", "{\"mark\": 0}");
        assertThat(stateOf(old, "off")).isEqualTo("done");
    }

    @Test
    void theNotes_areAFileThatIsReadAgain() throws IOException {
        said("POST", "/api/afternoon/notes", "{\"name\": \"Skim\", \"minutes\": 3, \"after\": \"off\"}");
        said(
                "POST",
                "/api/afternoon/notes",
                "{\"name\": \"Write \\\"labels\\\"\", \"minutes\": 3, \"before\": \"fill\"}");
        said("DELETE", "/api/afternoon/notes/soften", "");
        HttpResponse<String> file = send("GET", "/api/afternoon/notes", "");
        Path kept = Files.writeString(folder.resolve("notes.toml"), file.body());
        assertThat(NotesFile.read(kept)).isEqualTo(kitchen.afternoon().notes().join());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/api/afternoon/steps/nothing/done||the notes have no step \"nothing\"",
                "/api/afternoon/preparations/boil/done||the notes have no preparation \"boil\"",
                "/api/afternoon/steps/boil/done|{\"tap\": 7}|\"tap\" must be a text",
                "/api/afternoon/steps/boil/done|[]|a JSON object is needed",
                "/api/afternoon/undo|{}|\"mark\" is needed",
                "/api/afternoon/notes/boil|{\"minutes\": 25.5}|\"minutes\" must be a whole number",
                "/api/afternoon/notes/boil|{\"minutes\": -1}|\"boil\" must take 0 to 2880 minutes",
                "/api/afternoon/notes/boil|{\"recipe\": 1}|\"recipe\" is not known here",
                "/api/afternoon/notes|{\"minutes\": 3, \"after\": \"off\"}|say what is to be done",
                "/api/afternoon/notes|{\"name\": \"Skim\", \"minutes\": 3}|say which step it comes",
                "/api/afternoon/notes|{\"name\": \"{clock:1}\", \"minutes\": 3, \"after\": \"off\"}|plain characters"
            })
    void nonsense_isRefusedWithTheWayOut(String path, String body, String message) {
        HttpResponse<String> answer = send("POST", path, body == null ? "" : body);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(Caller.json(answer).path("error").asText()).contains(message);
    }
}
