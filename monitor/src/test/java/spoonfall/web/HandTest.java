package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.hand.HandProbe;

/** Readings typed over HTTP, on a clock that the test moves. */
final class HandTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-6);

    private final AtomicLong nanos = new AtomicLong(1_000_000_000L);
    private final Caller caller = new Caller();
    private int ids;
    private @Nullable Kitchen kitchen;
    private @Nullable WebServer server;

    @BeforeEach
    void serve() {
        serveWith(new HandProbe("pan", nanos::get));
        Hearing.await(
                "the thermometer",
                () -> state().path("probe").path("detail").asText().startsWith("typed by hand"));
    }

    private void serveWith(Probe probe) {
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", new CookSettings(WaterBoil.atElevation(1240), 4.44), 1);
        Kitchen started = new Kitchen(plan, clock -> List.of(probe), nanos::get);
        kitchen = started;
        server = new WebServer(started, "127.0.0.1", 0);
        started.start();
        server.start();
    }

    @AfterEach
    void stop() {
        if (server != null) {
            server.close();
        }
        if (kitchen != null) {
            kitchen.close();
        }
    }

    private HttpResponse<String> send(String method, String path, String body) {
        if (server == null) {
            throw new IllegalStateException("nothing is served");
        }
        return caller.send(server.port(), method, path, body);
    }

    private JsonNode state() {
        return Caller.json(send("GET", "/api/state", ""));
    }

    private String trace() {
        return send("GET", "/api/trace", "").body().replace("\r", "");
    }

    private void pass(double seconds) {
        nanos.addAndGet(Math.round(seconds * 1e9));
    }

    private HttpResponse<String> type(String id, String reading) {
        return send("POST", "/api/readings", "{\"id\": \"" + id + "\", \"reading\": \"" + reading + "\"}");
    }

    private String typed(String reading) {
        String id = "r" + ids++;
        HttpResponse<String> answer = type(id, reading);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return id;
    }

    @Test
    void aNote_isKeptOnce_andWhatIsNoneIsRefusedWithTheWayOut() {
        String note = "{\"id\": \"n-1\", \"text\": \" skimmed twice \"}";
        assertThat(send("POST", "/api/notes", note).statusCode()).isEqualTo(400);
        typed("90C");
        assertThat(send("POST", "/api/notes", note).statusCode()).isEqualTo(200);
        assertThat(send("POST", "/api/notes", note).statusCode()).isEqualTo(200);
        JsonNode notes = state().path("notes");
        assertThat(notes).hasSize(1);
        assertThat(notes.get(0).path("text").asText()).isEqualTo("skimmed twice");
        for (String bad : List.of(" ", "a\\u0007b", "two\\nlines", "x".repeat(501), "\\u202Eback", "\\ud800")) {
            HttpResponse<String> answer =
                    send("POST", "/api/pans/pan/notes", "{\"id\": \"n-2\", \"text\": \"" + bad + "\"}");
            assertThat(answer.statusCode()).as(bad).isEqualTo(400);
            assertThat(Caller.json(answer).path("error").asText()).contains(";");
        }
        assertThat(send("POST", "/api/notes", "{\"id\": \"\", \"text\": \"x\"}").statusCode())
                .isEqualTo(400);
        assertThat(send("GET", "/api/trace?metadata", "").body()).contains("skimmed twice");
        send("POST", "/api/cook", "");
        assertThat(state().path("notes")).isEmpty();
    }

    @Test
    void aTypedReading_isThePansTemperatureAtOnce() {
        JsonNode taken = Caller.json(send("POST", "/api/readings", "{\"id\": \"a-1\", \"temperatureC\": 98.5}"))
                .path("taken");
        assertThat(taken.path("id").asText()).isEqualTo("a-1");
        assertThat(taken.path("temperatureC").asDouble()).isEqualTo(98.5);
        pass(120);
        typed("212.0F");
        pass(2);
        Hearing.await(
                "the view", () -> state().path("status").path("temperatureC").asDouble() == 100);
        JsonNode status = state().path("status");
        assertThat(status.path("fresh").asBoolean()).isTrue();
        assertThat(status.path("hand").path("last").path("reading").asText()).isEqualTo("212F");
        assertThat(state().path("probe").path("state").asText()).isEqualTo("reading");
        assertThat(trace()).isEqualTo("elapsed_s,temperature_c\n0,98.5\n120,100\n");
    }

    @Test
    void theFirstReading_isSaidToBeIn_fromTheSecondInWhichItWasTyped() {
        typed("98C");
        Hearing.await(
                "the first reading",
                () -> state().path("status").path("quality").asText().equals("good"));
        for (int second = 0; second < 3; second++) {
            JsonNode say = state().path("status").path("say");
            assertThat(say.path("state").asText()).isEqualTo("The first reading is in.");
            assertThat(say.path("note").asText()).startsWith("A reading every minute or two will tell.");
            pass(1);
        }
    }

    @Test
    void aTapThatArrivesTwice_isOneReading() {
        typed("98C");
        pass(60);
        assertThat(type("twice", "98.5C").statusCode()).isEqualTo(200);
        pass(3);
        JsonNode again = Caller.json(type("twice", "98.5C")).path("taken");
        assertThat(again.path("t").asDouble()).isCloseTo(60, EXACT);
        assertThat(trace().lines()).hasSize(3);
    }

    @Test
    void whatCanHardlyBeSo_isAskedAbout_andTakenOnlyWhenAnswered() {
        typed("99.5C");
        pass(60);
        HttpResponse<String> asked = type("x", "1004C");
        assertThat(asked.statusCode()).isEqualTo(409);
        JsonNode question = Caller.json(asked).path("question");
        assertThat(question.path("text").asText()).isEqualTo("Did you mean 100.4 °C?");
        assertThat(question.path("choices").get(0).path("reading").asText()).isEqualTo("100.4C");
        assertThat(question.path("choices").get(1).path("reading").isNull()).isTrue();
        assertThat(trace().lines()).hasSize(2);
        assertThat(send("POST", "/api/readings", "{\"id\": \"x\", \"reading\": \"100.4C\", \"sure\": true}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(trace()).endsWith("60,100.4\n");
    }

    @Test
    void fahrenheitWhereCelsiusIsSet_isAskedAbout() {
        typed("100C");
        pass(60);
        JsonNode question = Caller.json(type("x", "213C")).path("question");
        assertThat(question.path("about").asText()).isEqualTo("unit");
        assertThat(question.path("text").asText()).isEqualTo("Is that °F?");
        assertThat(question.path("choices").get(0).path("reading").asText()).isEqualTo("213F");
    }

    @Test
    void theLatest_isTakenBackWithinAMinute_andTheCookIsGoneThroughAgain() {
        typed("97C");
        pass(60);
        typed("97.5C");
        pass(60);
        String wrong = typed("99.5C");
        pass(30);
        HttpResponse<String> answer = send("DELETE", "/api/readings/" + wrong, "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        JsonNode status = Caller.json(answer).path("status");
        assertThat(status.path("temperatureC").asDouble()).isEqualTo(97.5);
        assertThat(status.path("hand").path("last").isNull()).isTrue();
        assertThat(trace()).isEqualTo("elapsed_s,temperature_c\n0,97\n60,97.5\n");
        JsonNode climb = state().path("climb");
        assertThat(climb.get(climb.size() - 1).get(1).asDouble()).isEqualTo(97.5);
        assertThat(send("DELETE", "/api/readings/" + wrong, "").statusCode()).isEqualTo(200);
        assertThat(Caller.json(type(wrong, "99.5C")).path("taken").isNull())
                .as("a late copy of the tap")
                .isTrue();
        assertThat(trace().lines()).hasSize(3);
    }

    @Test
    void theOnlyReading_canBeTakenBackToo() {
        String only = typed("97C");
        assertThat(send("DELETE", "/api/readings/" + only, "").statusCode()).isEqualTo(200);
        assertThat(state().path("status").path("say").path("state").asText())
                .isEqualTo("Type what the thermometer shows.");
        typed("60C");
        assertThat(trace()).isEqualTo("elapsed_s,temperature_c\n0,60\n");
    }

    @Test
    void anOlderReading_orAnUnknownOne_isNotTakenBack() {
        String first = typed("97C");
        pass(20);
        String second = typed("97.5C");
        HttpResponse<String> older = send("DELETE", "/api/readings/" + first, "");
        assertThat(older.statusCode()).isEqualTo(400);
        assertThat(older.body()).contains("only the latest reading");
        pass(61);
        assertThat(send("DELETE", "/api/readings/" + second, "").body()).contains("more than a minute ago");
        assertThat(send("DELETE", "/api/readings/nobody", "").statusCode()).isEqualTo(404);
    }

    @Test
    void itIsTimeToReadAgain_afterTwoMinutes_andItIsSilentAfterFive() {
        typed("60C");
        pass(100);
        assertThat(dueSoon()).isFalse();
        pass(25);
        Hearing.await("the reminder", this::dueSoon);
        assertThat(state().path("alarms")).isEmpty();
        pass(200);
        Hearing.await("silence", () -> !state().path("alarms").isEmpty());
        assertThat(state().path("alarms").get(0).path("title").asText())
                .isEqualTo("No reading was typed since {clock:0}.");
        assertThat(state().path("probe").path("state").asText()).isEqualTo("silent");
        typed("80C");
        pass(2);
        Hearing.await("a voice", () -> state().path("status").path("fresh").asBoolean());
    }

    private boolean dueSoon() {
        return state().path("status").path("hand").path("due").asBoolean();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{}|\"id\" is needed",
                "{\"id\": \"a b\", \"reading\": \"98C\"}|\"id\" is needed",
                "{\"id\": 7, \"reading\": \"98C\"}|\"id\" is needed",
                "{\"id\": \"a\"}|give \"reading\"",
                "{\"id\": \"a\", \"reading\": \"98\"}|write it like 100.4C or 212.7F",
                "{\"id\": \"a\", \"reading\": \"98C\", \"temperatureC\": 98}|give \"reading\"",
                "{\"id\": \"a\", \"temperatureC\": 1e300}|not a temperature",
                "{\"id\": \"a\", \"temperatureC\": \"98\"}|give \"reading\"",
                "{\"id\": \"a\", \"reading\": \"98C\", \"sure\": 1}|\"sure\" must be true or false",
                "{\"id\": \"a\", \"reading\": \"1004C\", \"sure\": true}|is not what a pan thermometer shows",
                "{\"id\": \"a\", \"reeding\": \"98C\"}|\"reeding\" is not known here",
                "[]|a JSON object is needed"
            })
    void whatIsNoReading_isRefusedWithTheWayOut_andLosesNothing(String body, String why) {
        typed("97C");
        HttpResponse<String> answer = send("POST", "/api/readings", body);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
        assertThat(Caller.json(answer).path("error").asText()).contains(why);
        assertThat(trace().lines()).hasSize(2);
    }

    @Test
    void aThermometerThatSpeaksByItself_isNotTypedFor() {
        stop();
        serveWith(new ToldProbe("pan", 0));
        HttpResponse<String> answer = type("a", "98C");
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(Caller.json(answer).path("error").asText())
                .contains("pan speaks by itself")
                .contains("serve --hand");
        assertThat(state().path("status").path("hand").isNull()).isTrue();
    }

    @Test
    void aThermometerThatIsReadByHand_isNotComparedHere() {
        HttpResponse<String> answer = send("POST", "/api/check", "{\"probe\": \"pan\", \"in\": \"boiling-water\"}");
        assertThat(answer.statusCode()).isEqualTo(400);
    }
}
