package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Stage;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.probe.Hearing;

/** The calls about set tests, over HTTP. */
final class SetTestRoutesTest {
    private final ToldProbe probe = new ToldProbe("pan", 0.05);
    private final KitchenPlan plan =
            KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
    private final Kitchen kitchen = new Kitchen(plan, clock -> List.of(probe), System::nanoTime);
    private final WebServer server = new WebServer(kitchen, "127.0.0.1", 0);
    private final Caller caller = new Caller();

    @BeforeEach
    void start() {
        kitchen.start();
        server.start();
    }

    @AfterEach
    void stop() {
        server.close();
        kitchen.close();
    }

    private void boil() {
        probe.say(97.5, 120);
        probe.say(99.8, 120);
        Hearing.await(
                "the boil",
                () -> kitchen.state()
                        .join()
                        .pan()
                        .status()
                        .map(status -> status.t() > 200 && status.stage().boiling())
                        .orElse(false));
    }

    private HttpResponse<String> call(String method, String path, String body) {
        return caller.send(server.port(), method, path, body);
    }

    private JsonNode tests(String method, String path, String body) {
        HttpResponse<String> answer = call(method, path, body);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return Caller.json(answer).path("status").path("tests");
    }

    @Test
    void aTest_beginsIsAnsweredAndTakenBack_andEachTwiceIsHarmless() {
        boil();
        for (int twice = 0; twice < 2; twice++) {
            JsonNode begun = tests("POST", "/api/test", "{\"id\": \"a-1\", \"plateS\": 75}");
            assertThat(begun.path("open").asText()).isEqualTo("a-1");
            assertThat(begun.path("list")).hasSize(1);
            JsonNode test = begun.path("list").get(0);
            assertThat(test.path("plateDueT").asDouble() - test.path("beganT").asDouble())
                    .isEqualTo(75);
            assertThat(test.path("temperatureC").asDouble()).isBetween(99.0, 100.2);
        }
        for (String seen :
                List.of("{\"id\": \"a-1\", \"sheet\": \"drops-join\"}", "{\"id\": \"a-1\", \"plate\": \"wrinkles\"}")) {
            JsonNode answered = tests("POST", "/api/test/seen", seen);
            assertThat(answered.path("open").isNull()).isTrue();
            assertThat(answered.path("list").get(0).path("seen").asText()).isEqualTo("drops-join");
            assertThat(answered.path("nextRiseC").asDouble()).isGreaterThan(3.5);
        }
        for (int twice = 0; twice < 2; twice++) {
            assertThat(tests("DELETE", "/api/test/seen?id=a-1", "").path("open").asText())
                    .isEqualTo("a-1");
        }
        for (int twice = 0; twice < 2; twice++) {
            assertThat(tests("DELETE", "/api/test?id=a-1", "").path("list")).isEmpty();
        }
    }

    @Test
    void set_endsTheBoilForEveryPage() {
        boil();
        assertThat(tests("POST", "/api/test/seen", "{\"id\": \"b\", \"verdict\": \"set\"}")
                        .path("set")
                        .asBoolean())
                .isTrue();
        JsonNode state = Caller.json(call("GET", "/api/state", ""));
        assertThat(state.path("status").path("stage").asText()).isEqualTo("off-the-heat");
        assertThat(state.path("status").path("say").path("state").asText()).isEqualTo("Set. The boil is over.");
        assertThat(state.path("alarms")).isEmpty();
        assertThat(state.path("events").findValuesAsText("type")).contains("test");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "POST | /api/test | {\"plateS\": 90} | \"id\" is needed",
                "POST | /api/test | {\"id\": \"a b\"} | letters, digits and hyphens",
                "POST | /api/test | {\"id\": \"a\", \"plateS\": 5} | 60 to 120 seconds",
                "POST | /api/test | {\"id\": \"a\", \"plateS\": \"x\"} | 60 to 120",
                "POST | /api/test | {\"id\": \"a\", \"pan\": 1} | \"pan\" is not known here",
                "POST | /api/test/seen | {\"id\": \"a\"} | one of \"sheet\", \"plate\" and \"verdict\"",
                "POST | /api/test/seen | {\"id\": \"a\", \"sheet\": \"runs\"} | separate-drops, drops-join, sheets-off",
                "POST | /api/test/seen | {\"id\": \"a\", \"sheet\": 4} | separate-drops, drops-join, sheets-off",
                "POST | /api/test/seen | {\"id\": \"a\", \"plate\": \"runs\", \"verdict\": \"set\"} | one of",
                "DELETE | /api/test | '' | \"id\" is needed"
            })
    void whatCannotBeUnderstood_isSaid(String method, String path, String body, String says) {
        boil();
        HttpResponse<String> answer = call(method, path, body);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(Caller.json(answer).path("error").asText()).contains(says);
    }

    @Test
    void aColdPan_cannotBeTested() {
        assertThat(call("POST", "/api/test", "{\"id\": \"a\"}").body()).contains("nothing was read of the pan yet");
        probe.say(40, 60);
        Hearing.await("the pan", () -> kitchen.state().join().pan().status().isPresent());
        assertThat(call("POST", "/api/test", "{\"id\": \"a\"}").body()).contains("does not boil yet");
    }

    @Test
    void fruitThatSimmers_mayBeTested_forTheCookKnowsWhatIsInIt() {
        probe.say(97.5, 120);
        probe.say(94, 300);
        Hearing.await(
                "simmering",
                () -> kitchen.state()
                        .join()
                        .pan()
                        .status()
                        .filter(status -> status.stage() == Stage.SIMMERING)
                        .isPresent());
        assertThat(tests("POST", "/api/test", "{\"id\": \"a\"}").path("open").asText())
                .isEqualTo("a");
    }

    @Test
    void aNewBase_keepsTheTestsAndMeasuresThemAnew() {
        boil();
        double before = tests("POST", "/api/test/seen", "{\"id\": \"c\", \"plate\": \"runs\"}")
                .path("list")
                .get(0)
                .path("riseC")
                .asDouble();
        JsonNode after = tests("POST", "/api/base", "{\"elevation\": \"1400m\"}");
        assertThat(after.path("list")).hasSize(1);
        assertThat(after.path("list").get(0).path("seen").asText()).isEqualTo("runs");
        assertThat(after.path("list").get(0).path("riseC").asDouble()).isGreaterThan(before + 0.3);
    }

    @Test
    void aPanIsNamedInThePath_orIsTheFirst() {
        boil();
        assertThat(tests("POST", "/api/pans/pan/test", "{\"id\": \"d\"}")
                        .path("open")
                        .asText())
                .isEqualTo("d");
        assertThat(call("POST", "/api/pans/nobody/test", "{\"id\": \"d\"}").statusCode())
                .isEqualTo(404);
    }
}
