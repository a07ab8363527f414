package spoonfall.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import spoonfall.cook.CookSettings;
import spoonfall.cook.Cooks;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.Kitchen;
import spoonfall.kitchen.Kitchens;
import spoonfall.kitchen.ToldProbe;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.lab.Scenario;
import spoonfall.log.Diary;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.book.BatchBook;
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
    void aPicture_isAnSvgThatNeedsNothing_inTheUnitAndTheClockThatWereAskedFor() throws Exception {
        HttpResponse<String> plain = ask("GET", "/api/book/1/picture.svg?zone=UTC", "");
        assertThat(plain.headers().firstValue("Content-Type")).hasValue("image/svg+xml");
        Document svg = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(plain.body().getBytes(StandardCharsets.UTF_8)));
        assertThat(svg.getElementsByTagName("script").getLength()).isZero();
        JsonNode climb = json("/api/book/1/climb");
        assertThat(svg.getDocumentElement().getTextContent())
                .contains(String.format(
                        Locale.ROOT,
                        "was to set here · %.1f °C",
                        climb.path("gelPointC").asDouble()))
                .containsPattern("\\b\\d\\d:\\d\\d");
        String elsewhere = ask("GET", "/api/book/1/picture.svg?zone=Asia/Kolkata&unit=F", "")
                .body();
        assertThat(elsewhere)
                .contains(String.format(
                        Locale.ROOT,
                        "was to set here · %.1f °F",
                        climb.path("gelPointC").asDouble() * 1.8 + 32));
        Pattern clock = Pattern.compile(">(\\d\\d):(\\d\\d)<");
        Matcher here = clock.matcher(plain.body());
        Matcher there = clock.matcher(elsewhere);
        assertThat(here.find() && there.find()).isTrue();
        assertThat(LocalTime.parse(here.group(1) + ":" + here.group(2)).plusMinutes(330))
                .isEqualTo(LocalTime.parse(there.group(1) + ":" + there.group(2)));
    }

    @Test
    void aPictureOfTwo_isLinedUpAtTheGelPoint() {
        String two = ask("GET", "/api/book/1/picture.svg?beside=1", "").body();
        assertThat(two).contains("class=\"beside\"").contains(">-10 min<").contains(">0 min<");
    }

    @Test
    void aPicture_isRefusedInWords_whereThereIsNone() {
        assertThat(ask("GET", "/api/book/99/picture.svg", "").statusCode()).isEqualTo(404);
        assertThat(ask("GET", "/api/book/1/picture.svg?beside=99", "").body())
                .as("the other one is gone")
                .contains("class=\"climb\"")
                .doesNotContain("class=\"beside\"");
        assertThat(ask("GET", "/api/book/1/picture.svg?beside=%3Csvg%3E", "").body())
                .contains("whole number");
        HttpResponse<String> nowhere = ask("GET", "/api/book/1/picture.svg?zone=%3Cscript%3E", "");
        assertThat(nowhere.statusCode()).isEqualTo(400);
        assertThat(nowhere.body()).contains("such as Europe/London").doesNotContain("<script>");
    }

    @Test
    void aDamagedBook_isRefusedInTheSameWords_asAListAndAsAPage() throws Exception {
        Files.writeString(folder.resolve("cooks.db"), "this is no record of cooks".repeat(1000));
        HttpResponse<String> page = ask("GET", "/api/book/1", "");
        HttpResponse<String> list = ask("GET", "/api/book", "");
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body()).contains("the record cannot be used");
        assertThat(list.statusCode()).isEqualTo(400);
        assertThat(list.body()).isEqualTo(page.body());
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

    private HttpResponse<byte[]> photo(String method, String path, byte[] body) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .header("Content-Type", "text/html")
                .header("Content-Disposition", "attachment; filename=\"<script>alert(1)</script>.jpg\"")
                .method(method, HttpRequest.BodyPublishers.ofByteArray(body))
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void aPhoto_comesInWhateverItIsCalled_andGoesOut() throws Exception {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(2000, 1500, BufferedImage.TYPE_INT_RGB), "png", png);
        HttpResponse<byte[]> answer = photo("POST", "/api/book/1/photos", png.toByteArray());
        assertThat(answer.statusCode()).isEqualTo(201);
        assertThat(photo("POST", "/api/book/1/photos", png.toByteArray()).statusCode())
                .isEqualTo(201);
        JsonNode photos = json("/api/book/1").path("photos");
        assertThat(photos.size()).as("one that came twice").isOne();
        assertThat(ask("GET", "/api/book/1", "").body()).doesNotContain("script");
        String path = "/api/book/1/photos/" + photos.path(0).path("id").asLong();
        HttpResponse<byte[]> shown = photo("GET", path, new byte[0]);
        assertThat(shown.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(shown.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(ImageIO.read(new ByteArrayInputStream(shown.body())).getWidth())
                .isEqualTo(1600);
        assertThat(photo("DELETE", path, new byte[0]).statusCode()).isEqualTo(200);
        assertThat(photo("GET", path, new byte[0]).statusCode()).isEqualTo(404);
        assertThat(photo("POST", "/api/book/9/photos", png.toByteArray()).statusCode())
                .isEqualTo(404);
        byte[] page = "<script>alert(1)</script>".getBytes(StandardCharsets.UTF_8);
        assertThat(photo("POST", "/api/book/1/photos", page).statusCode()).isEqualTo(400);
        assertThat(photo("POST", "/api/book/1/photos", new byte[13 * 1024 * 1024])
                        .statusCode())
                .isEqualTo(413);
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
