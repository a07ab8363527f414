package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.Cooks;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.log.Diary;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.book.BatchBook;
import spoonfall.probe.trace.Trace;

final class LessonRoutesTest {
    @TempDir
    private Path folder;

    private final Caller caller = new Caller();

    private void change(Path file, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    @Test
    void aLesson_isMadeOfACookThatIsOver_andOfNothingElse() throws SQLException {
        Path file = folder.resolve("cooks.db");
        Trace trace = Cooks.trace(Scenario.CLEAN, 4);
        try (CookLog log = CookLog.openOrMake(file)) {
            log.take(trace, Cooks.settings(trace));
            log.take(trace, Cooks.settings(trace));
        }
        change(file, "UPDATE cook SET ended_ms = NULL WHERE id = 2");
        change(file, "DELETE FROM event WHERE cook = 2 AND detail LIKE '%off-the-heat%'");
        Kitchen kitchen = new Kitchen(
                KitchenPlan.live("Hollin Bank", "batch 14", Cooks.settings(trace), 1),
                clock -> List.of(new ToldProbe("pan", 0)),
                System::nanoTime);
        try (Kitchens kitchens = new Kitchens(
                        List.of(kitchen), Optional.empty(), Diary.none(), Optional.of(new BatchBook(file)));
                WebServer server = new WebServer(kitchens, "127.0.0.1", 0)) {
            server.start();
            JsonNode lesson = Caller.json(caller.send(server.port(), "GET", "/api/book/1/lesson", ""));
            assertThat(lesson.path("frames").size()).isBetween(200, 1200);
            assertThat(lesson.path("moments").findValuesAsText("kind")).contains("alarm", "stage");
            JsonNode last = lesson.path("frames").path(lesson.path("frames").size() - 1);
            assertThat(last.path("t").asDouble()).isBetween(trace.lastS() - 10, trace.lastS());
            for (JsonNode frame : lesson.path("frames")) {
                assertThat(lesson.path("sayings").has(frame.path("saying").asInt()))
                        .isTrue();
            }
            assertThat(lesson.toString().length()).as("characters on the wire").isLessThan(300_000);
            HttpResponse<String> running = caller.send(server.port(), "GET", "/api/book/2/lesson", "");
            assertThat(running.statusCode()).isEqualTo(400);
            assertThat(running.body()).contains("in the pan still");
            for (String path : List.of("/api/book/9/lesson", "/api/book/x/lesson")) {
                assertThat(caller.send(server.port(), "GET", path, "").statusCode())
                        .as(path)
                        .isEqualTo(404);
            }
        }
    }
}
