package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.log.CalibrationBook;
import spoonfall.probe.Hearing;

/** Two thermometers in a pan, checked over HTTP. Readings carry their own time, so that minutes pass at once. */
final class TrustTest {
    private static final Instant NOW = Instant.parse("2026-11-25T18:00:00Z");

    @TempDir
    Path folder = Path.of("");

    private final AtomicReference<Instant> now = new AtomicReference<>(NOW);
    private final ToldProbe pan = new ToldProbe("pan", 0);
    private final ToldProbe second = new ToldProbe("second", 0);
    private final Caller caller = new Caller();
    private @Nullable Kitchen kitchen;
    private @Nullable WebServer server;

    private void serve(WaterBoil boil) {
        KitchenPlan plan = KitchenPlan.live("Hollin Bank", "", new CookSettings(boil, 4.4), 1);
        Thermometry thermometry = new Thermometry(
                Optional.of(book()),
                name -> Optional.of("by-id/" + name),
                name -> Optional.empty(),
                Optional.empty(),
                (InstantSource) now::get);
        Kitchen started = new Kitchen(plan, clock -> List.of(pan, second), System::nanoTime, thermometry);
        kitchen = started;
        server = new WebServer(started, "127.0.0.1", 0);
        started.start();
        server.start();
    }

    private CalibrationBook book() {
        return new CalibrationBook(folder.resolve("calibrations.json"));
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

    private JsonNode done(String method, String path, String body) {
        HttpResponse<String> response = send(method, path, body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        return Caller.json(response);
    }

    private String refused(String method, String path, String body) {
        HttpResponse<String> response = send(method, path, body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(400);
        String error = Caller.json(response).path("error").asText();
        assertThat(error).isNotBlank().doesNotContain("\n", "Exception");
        return error;
    }

    private JsonNode check() {
        return state().path("status").path("check");
    }

    private void boils(double shownC) {
        done("POST", "/api/check", "{\"probe\":\"pan\",\"in\":\"boiling-water\"}");
        pan.say(shownC, 70);
        assertThat(check().path("state").asText()).isEqualTo("found");
    }

    @Test
    void aCheckThatStandsStill_becomesTodaysWaterBoil() {
        serve(WaterBoil.atElevation(1240));
        assertThat(check().isNull()).isTrue();
        boils(95.4);
        assertThat(check().path("pointC").asDouble()).isEqualTo(95.4);
        assertThat(check().path("points").size()).isBetween(60, 120);
        JsonNode after = done("POST", "/api/check/keep", "{\"as\":\"water-boil\"}");
        assertThat(after.path("basis").path("from").asText()).isEqualTo("measured");
        assertThat(after.path("basis").path("waterBoilC").asDouble()).isEqualTo(95.4);
        assertThat(after.path("basis").path("measuredAtMs").asLong()).isEqualTo(NOW.toEpochMilli());
        assertThat(after.path("basis").path("probeDoubtC").isNull()).isTrue();
        assertThat(after.path("basis").path("totalDoubtC").asDouble()).isEqualTo(0.1, Offset.offset(0.01));
        assertThat(after.path("cook").path("number").asInt()).isEqualTo(2);
        JsonNode forgotten = done("DELETE", "/api/base/measured", "");
        assertThat(forgotten.path("basis").path("from").asText()).isEqualTo("elevation");
        // by elevation: 0.4 °C of weather and 2.5 °C of a thermometer that nobody checked
        assertThat(forgotten.path("basis").path("totalDoubtC").asDouble())
                .isEqualTo(Math.hypot(0.4, 2.5), Offset.offset(1e-3));
    }

    @Test
    void aCheckThatStandsStill_correctsTheThermometerAtOnce_untilThatIsTakenBack() {
        serve(WaterBoil.atElevation(1240));
        boils(95.4);
        double offsetC = check().path("correctionC").asDouble();
        JsonNode after = done("POST", "/api/check/keep", "{\"as\":\"calibration\"}");
        JsonNode calibration = after.path("probe").path("calibration");
        assertThat(calibration.path("offsetC").asDouble()).isEqualTo(offsetC);
        assertThat(calibration.path("half95C").asDouble()).isBetween(0.38, 0.55);
        assertThat(calibration.path("referenceDoubtC").asDouble()).isEqualTo(0.4);
        assertThat(after.path("probe").path("calibrationDue").isNull()).isTrue();
        assertThat(after.path("cook").path("number").asInt()).isEqualTo(2);
        assertThat(book().latest("by-id/pan")).isPresent();
        pan.say(95.4, 10);
        assertThat(state().path("status").path("temperatureC").asDouble())
                .isEqualTo(95.4 + offsetC, Offset.offset(1e-3));
        // the next check sees what the thermometer itself says
        boils(95.4);
        assertThat(check().path("pointC").asDouble()).isEqualTo(95.4);
        done("DELETE", "/api/check", "");
        done("POST", "/api/calibration/undo", "{\"probe\":\"pan\"}");
        pan.say(95.4, 10);
        assertThat(state().path("status").path("temperatureC").asDouble()).isEqualTo(95.4);
        assertThat(refused("POST", "/api/calibration/undo", "{\"probe\":\"pan\"}"))
                .contains("no correction to take back");
    }

    @Test
    void iceToo_makesALine() {
        serve(WaterBoil.atElevation(1240));
        boils(95.4);
        done("POST", "/api/check", "{\"probe\":\"pan\",\"in\":\"ice\"}");
        assertThat(state().path("status").path("say").path("state").asText())
                .isEqualTo("Checking the thermometer in ice.");
        pan.say(60, 5);
        assertThat(check().path("why").asText()).contains("Still too warm for ice");
        pan.say(0.2, 130);
        assertThat(check().path("state").asText()).isEqualTo("found");
        assertThat(refused("POST", "/api/check/keep", "{\"as\":\"water-boil\"}"))
                .contains("ice is no water boil");
        JsonNode after = done("POST", "/api/check/keep", "{\"as\":\"calibration\"}");
        assertThat(after.path("probe").path("calibration").path("points").asInt())
                .isEqualTo(2);
        pan.say(0.2, 10);
        assertThat(state().path("status").path("temperatureC").asDouble()).isEqualTo(0, Offset.offset(1e-6));
    }

    @Test
    void iceAlone_isNoCorrection() {
        serve(WaterBoil.atElevation(1240));
        done("POST", "/api/check", "{\"probe\":\"pan\",\"in\":\"ice\"}");
        pan.say(0.2, 70);
        assertThat(refused("POST", "/api/check/keep", "{\"as\":\"calibration\"}"))
                .contains("check it in boiling water first");
    }

    @Test
    void aPanThatIsBoiling_keepsItsThermometer() {
        serve(WaterBoil.atElevation(1240));
        pan.say(60, 60);
        for (int i = 0; i < 180; i++) {
            pan.say(Math.min(96.6, 60 + 0.4 * i), 1);
        }
        pan.say(96.9, 200);
        assertThat(state().path("status").path("stage").asText()).isEqualTo("rolling-boil");
        assertThat(refused("POST", "/api/check", "{\"probe\":\"pan\",\"in\":\"ice\"}"))
                .contains("the pan is boiling");
    }

    @Test
    void sixtyDegrees_areNeverBoilingWater() {
        serve(WaterBoil.standard());
        done("POST", "/api/check", "{\"probe\":\"pan\",\"in\":\"boiling-water\"}");
        pan.say(60, 100);
        assertThat(check().path("state").asText()).isEqualTo("watching");
        assertThat(check().path("referenceC").isNull()).isTrue();
        assertThat(refused("POST", "/api/check/keep", "{\"as\":\"water-boil\"}"))
                .contains("nothing to keep yet: Not boiling yet, or the thermometer is not in the water.");
    }

    @Test
    void whereNobodySaidHowHigh_onlyTheWaterBoilCanBeKept() {
        serve(WaterBoil.standard());
        boils(95.4);
        assertThat(check().path("cannotCorrect").asText()).contains("Nobody said how high the kitchen is");
        assertThat(refused("POST", "/api/check/keep", "{\"as\":\"calibration\"}"))
                .contains("Say the elevation or the air pressure below");
        done("POST", "/api/base", "{\"elevation\":\"1240m\"}");
        assertThat(check().path("state").asText()).isEqualTo("found");
        assertThat(check().path("correctionC").asDouble()).isEqualTo(0.45, Offset.offset(0.01));
        done("POST", "/api/check/keep", "{\"as\":\"water-boil\"}");
    }

    @Test
    void aBoilThatContradictsTheKitchen_isSaidWithNumbers() {
        serve(WaterBoil.atElevation(1240));
        boils(95.8);
        done("POST", "/api/check/keep", "{\"as\":\"calibration\"}");
        boils(98);
        JsonNode after = done("POST", "/api/check/keep", "{\"as\":\"water-boil\"}");
        assertThat(after.path("probe").path("calibrationDue").asText())
                .contains("Today's boiling water was {temp:98.0", "1,240 m", "{diff:2.");
    }

    @Test
    void aReminder_comesWhenNeverCheckedOrLongAgo() {
        serve(WaterBoil.atElevation(1240));
        assertThat(state().path("probe").path("calibrationDue").asText())
                .isEqualTo("Never checked in boiling water: it may be off by ±{diff:2.50}. Check it.");
        boils(95.4);
        done("POST", "/api/check/keep", "{\"as\":\"calibration\"}");
        now.set(NOW.plusSeconds(181 * 86_400L));
        assertThat(state().path("probe").path("calibrationDue").asText()).contains("181 days ago");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/api/check|{\"probe\":\"spoon\",\"in\":\"ice\"}|no thermometer is called \"spoon\"; it can be pan, second",
                "/api/check|{\"probe\":\"pan\",\"in\":\"tea\"}|\"in\" must be boiling-water or ice, not \"tea\"",
                "/api/check|{\"probe\":\"pan\"}|\"in\" is needed",
                "/api/check|{\"probe\":7,\"in\":\"ice\"}|\"probe\" must be a text",
                "/api/check|{\"prob\":\"pan\"}|\"prob\" is not known here; it can be probe, in",
                "/api/check|[]|a JSON object is needed",
                "/api/check|{|that is no JSON",
                "/api/check/keep|{\"as\":\"water-boil\"}|no check is running; begin one first",
                "/api/check/keep|{\"as\":\"tea\"}|\"as\" must be water-boil or calibration",
                "/api/calibration/undo|{\"probe\":\"pan\"}|pan has no correction to take back",
                "/api/base|{}|give an elevation, such as 1240m, or an air pressure",
                "/api/base|{\"elevation\":\"1240\"}|needs a unit",
                "/api/base|{\"pressure\":\"898hPa\"}|say where the pressure was measured",
                "/api/base|{\"pressure\":\"1016hPa\",\"where\":\"sea-level\"}|needs the kitchen's elevation too"
            })
    void nonsense_isRefusedInOneLine(String path, String body, String message) {
        serve(WaterBoil.atElevation(1240));
        assertThat(refused("POST", path, body)).contains(message);
    }

    @Test
    void anotherBase_leavesTheCookAndWhatWasAcknowledged() {
        serve(WaterBoil.atElevation(1240));
        pan.say(60, 60);
        for (int i = 0; i < 1200; i++) {
            pan.say(Math.min(100.4, 95.6 + 0.004 * i), 1);
        }
        Hearing.await("the call", () -> state().path("alarms").size() > 0);
        for (JsonNode alarm : state().path("alarms")) {
            send("POST", "/api/alarms/" + alarm.path("id").asText() + "/acknowledge", "");
        }
        JsonNode before = state();
        JsonNode after = done("POST", "/api/base", "{\"pressure\":\"872hPa\",\"where\":\"kitchen\"}");
        assertThat(after.path("cook").path("number").asInt()).isEqualTo(1);
        assertThat(after.path("cook").path("startedAtMs"))
                .isEqualTo(before.path("cook").path("startedAtMs"));
        assertThat(after.path("basis").path("from").asText()).isEqualTo("pressure");
        assertThat(after.path("climb").size()).isEqualTo(before.path("climb").size());
        for (JsonNode alarm : after.path("alarms")) {
            assertThat(alarm.path("state").asText()).as(alarm.toString()).isNotEqualTo("unacknowledged");
        }
    }

    @Test
    void aSecondThermometer_isComparedAndItsLossDisturbsNothing() {
        serve(WaterBoil.atElevation(1240));
        for (int i = 0; i < 120; i++) {
            pan.say(80, 1);
            second.say(84, 1);
        }
        JsonNode state = state();
        assertThat(state.path("probes").size()).isEqualTo(2);
        assertThat(state.path("probes").get(0)).isEqualTo(state.path("probe"));
        JsonNode other = state.path("status").path("others").get(0);
        assertThat(other.path("name").asText()).isEqualTo("second");
        assertThat(other.path("temperatureC").asDouble()).isEqualTo(84);
        assertThat(other.path("quality").asText()).isEqualTo("good");
        assertThat(state.path("status").path("quality").asText()).isEqualTo("good");
        assertThat(state.path("alarms").get(0).path("alarm").asText()).isEqualTo("probes-disagree");
        second.lose();
        Hearing.await(
                "the loss",
                () -> state().path("probes").get(1).path("state").asText().equals("lost"));
        pan.say(80, 30);
        assertThat(state().path("status").path("temperatureC").asDouble()).isEqualTo(80);
        assertThat(state().path("status")
                        .path("others")
                        .get(0)
                        .path("temperatureC")
                        .isNull())
                .isTrue();
        assertThat(send("GET", "/metrics", "").body())
                .contains("spoonfall_readings_total{pan=\"pan\",probe=\"second\",quality=\"good\"} 120.0");
    }
}
