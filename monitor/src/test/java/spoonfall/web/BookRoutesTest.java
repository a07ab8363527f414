package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.KitchenPlan;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.lab.Scenario;
import spoonfall.log.Diary;
import spoonfall.log.store.BatchBook;
import spoonfall.log.store.CookLog;
import spoonfall.probe.trace.Trace;

final class BookRoutesTest {
    @TempDir
    private Path folder;

    private final Caller caller = new Caller();
    private Kitchens kitchens = Kitchens.one(kitchen());
    private WebServer server = new WebServer(kitchens, "127.0.0.1", 0);

    private static Kitchen kitchen() {
        KitchenPlan plan =
                KitchenPlan.live("Hollin Bank", "batch 14", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
        return new Kitchen(plan, clock -> List.of(new ToldProbe("pan", 0)), System::nanoTime);
    }

    @BeforeEach
    void serve() {
        Path file = folder.resolve("cooks.db");
        try (CookLog log = CookLog.openOrMake(file)) {
            Trace trace = Cooks.trace(Scenario.CLEAN, 4);
            log.take(trace, Cooks.settings(trace));
        }
        kitchens = new Kitchens(List.of(kitchen()), Optional.empty(), Diary.none(), Optional.of(new BatchBook(file)));
        server = new WebServer(kitchens, "127.0.0.1", 0);
        server.start();
    }

    @AfterEach
    void stop() {
        server.close();
        kitchens.close();
    }

    private HttpResponse<String> ask(String method, String path, String body) {
        return caller.send(server.port(), method, path, body);
    }

    private JsonNode json(String path) {
        return Caller.json(ask("GET", path, ""));
    }

    @Test
    void theBook_listsACook_andShowsItWithItsClimb() {
        JsonNode list = json("/api/book");
        assertThat(list.path("found").asInt()).isOne();
        JsonNode cook = list.path("cooks").path(0);
        assertThat(cook.path("id").asInt()).isOne();
        assertThat(cook.path("finalRiseC").asDouble()).isBetween(3.0, 7.0);
        assertThat(cook.path("jars").isNull()).isTrue();
        JsonNode page = json("/api/book/1");
        assertThat(page.path("events").findValuesAsText("kind")).contains("stage", "alarm");
        JsonNode climb = json("/api/book/1/climb");
        assertThat(climb.path("points").size()).isBetween(200, 1600);
        assertThat(climb.path("marks").path("gelS").asDouble()).isPositive();
        assertThat(climb.path("syrup").size()).isGreaterThan(5);
        assertThat(json("/api/book?text=nothing%20like%20it").path("found").asInt())
                .isZero();
    }

    @Test
    void anOutcome_isKept_andWhatCannotBeIsSaid() {
        HttpResponse<String> answer = ask(
                "POST",
                "/api/book/1/outcome",
                "{\"after\":\"day\",\"set\":\"firm\",\"taste\":[\"bitter\"],\"jars\":6}");
        assertThat(answer.statusCode()).isEqualTo(200);
        JsonNode said = Caller.json(answer);
        assertThat(said.path("outcomes").path("day").path("set").asText()).isEqualTo("firm");
        assertThat(said.path("jars").asInt()).isEqualTo(6);
        assertThat(json("/api/book?set=firm").path("found").asInt()).isOne();
        refused("{\"after\":\"day\",\"set\":\"hard\"}", "runny, soft, right, firm, stiff");
        refused("{\"set\":\"firm\"}", "\\\"after\\\" is needed");
        refused("{\"after\":\"day\",\"taste\":\"bitter\"}", "must be a list");
        refused("{\"after\":\"day\",\"jars\":-2}", "0 to 999");
        refused("{\"after\":\"day\",\"fruit\":\"a\\u0007b\"}", "U+0007");
        refused("[]", "a JSON object is needed");
        assertThat(json("/api/book/1").path("outcomes").path("day").path("set").asText())
                .isEqualTo("firm");
    }

    private void refused(String body, String why) {
        HttpResponse<String> answer = ask("POST", "/api/book/1/outcome", body);
        assertThat(answer.statusCode()).as(body).isEqualTo(400);
        assertThat(answer.body()).contains(why);
    }

    @Test
    void whatIsNotThere_isNotFound_andNonsenseIsRefused() {
        for (String path :
                List.of("/api/book/7", "/api/book/7/climb", "/api/book/x", "/api/book/99999999999999999999")) {
            assertThat(ask("GET", path, "").statusCode()).as(path).isEqualTo(404);
        }
        for (String query : List.of("page=-1", "page=x", "from=yesterday", "set=hard", "text=" + "x".repeat(101))) {
            assertThat(ask("GET", "/api/book?" + query, "").statusCode())
                    .as(query)
                    .isEqualTo(400);
        }
    }

    @Test
    void aServiceThatKeepsNothing_saysSo() {
        try (Kitchens other = Kitchens.one(kitchen());
                WebServer bare = new WebServer(other, "127.0.0.1", 0)) {
            bare.start();
            HttpResponse<String> answer = caller.send(bare.port(), "GET", "/api/book", "");
            assertThat(answer.statusCode()).isEqualTo(400);
            assertThat(answer.body()).contains("there is no book");
        }
    }
}
