package spoonfall.log.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.book.After;
import spoonfall.book.Firmness;
import spoonfall.book.Made;
import spoonfall.book.Outcome;
import spoonfall.book.Taste;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.CookNote;
import spoonfall.log.store.book.WholePhoto;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.probe.Quality;
import spoonfall.probe.trace.Trace;

final class WholeCookJsonTest {
    private static final int COOKS = 6;
    private static final Path SCHEMA = Path.of("..", "docs", "cook.schema.json");

    @TempDir
    private Path folder;

    private WholeCook throughAFile(WholeCook cook) throws IOException {
        String json = cook.json();
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(SCHEMA), InputFormat.JSON);
        assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
        Path file = folder.resolve("cook.json");
        Files.writeString(file, json);
        WholeCook read = WholeCook.read(file, WholeCookJsonTest::asItIs);
        try (CookLog log = CookLog.openOrMake(folder.resolve("other.db"))) {
            return log.whole(log.take(read));
        }
    }

    private static WholePhoto asItIs(String digest, Instant takenInAt, byte[] file) {
        if (file.length == 0) {
            throw new IllegalArgumentException("a photo of nothing");
        }
        return new WholePhoto(digest, takenInAt, 4, 3, file);
    }

    private static void assertSame(WholeCook back, WholeCook cook) {
        assertThat(back.inputs()).isEqualTo(cook.inputs());
        assertThat(back.events()).isEqualTo(cook.events());
        assertThat(back.notes()).isEqualTo(cook.notes());
        assertThat(back.made()).isEqualTo(cook.made());
        assertThat(back.outcomes()).isEqualTo(cook.outcomes());
        assertThat(back.photos()).usingRecursiveComparison().isEqualTo(cook.photos());
        assertThat(back.endedMillis()).isEqualTo(cook.endedMillis());
        assertThat(back.header().basis()).isEqualTo(cook.header().basis());
        assertThat(back.header().corrections()).isEqualTo(cook.header().corrections());
        assertThat(back.header().startedAt()).isEqualTo(cook.header().startedAt());
        assertThat(back.header().batch()).isEqualTo(cook.header().batch());
    }

    @Test
    void simulatedCooks_goOutAndComeIn_identical() throws IOException {
        long seed = 20261126;
        System.out.println("WholeCookJsonTest draws with seed " + seed);
        Random random = new Random(seed);
        try (CookLog log = CookLog.openOrMake(folder.resolve("cooks.db"))) {
            for (int i = 0; i < COOKS; i++) {
                Scenario scenario = List.of(Scenario.values()).get(random.nextInt(Scenario.values().length));
                Trace trace = Cooks.trace(scenario, 1 + random.nextInt(9999));
                long id = log.take(trace, Cooks.settings(trace));
                log.note(id, "note " + random.nextInt() + " <&\"'> ü 🍊");
                WholeCook cook = log.whole(id);
                assertSame(throughAFile(cook), cook);
            }
        }
    }

    /** What simulated cooks have not: words, two thermometers, a correction, bad readings, outcomes. */
    private static WholeCook odd() {
        List<CookInput> inputs = new ArrayList<>();
        Quality[] bad = {Quality.NO_NUMBER, Quality.GOOD};
        for (int i = 0; i < 300; i++) {
            boolean good = bad[i % 7 == 3 ? 0 : 1] == Quality.GOOD;
            OptionalDouble shownC = good ? OptionalDouble.of(Math.sqrt(i) * 6) : OptionalDouble.empty();
            inputs.add(new CookInput.Heard(
                    i % 3 == 0 ? "second" : "pan",
                    1000L * i,
                    i % 3 == 0 ? 1000L * i - 17 : 1000L * i,
                    shownC,
                    good ? Quality.GOOD : Quality.NO_NUMBER));
            if (i % 50 == 20) {
                inputs.add(new CookInput.Word(
                        1000L * i, "acknowledge", CookJson.object().put("id", "stalled-" + i)));
            }
        }
        return new WholeCook(
                RecorderTest.header(1),
                inputs,
                List.of(new StoredCook.Event(5000, "stage", CookJson.object().put("stage", "warming"))),
                List.of(new CookNote("k-1", 9000, Instant.parse("2026-11-26T08:00:00.123Z"), "fine")),
                300_000,
                299_000,
                new Made("Quince", OptionalInt.of(7)),
                List.of(new Outcome(
                        After.MONTH,
                        Optional.of(Firmness.STIFF),
                        Set.of(Taste.CARAMEL, Taste.BITTER),
                        "spread it warm")),
                List.of(photo('a', 200_000), photo('b', 3)));
    }

    private static WholePhoto photo(char digest, int bytes) {
        byte[] jpeg = new byte[bytes];
        Arrays.fill(jpeg, (byte) digest);
        return new WholePhoto(String.valueOf(digest).repeat(64), Instant.parse("2026-11-26T09:00:00.456Z"), 4, 3, jpeg);
    }

    @Test
    void anOddCook_goesOutAndComesIn_identical() throws IOException {
        assertSame(throughAFile(odd()), odd());
    }

    @Test
    void whatCannotBe_isRefusedWithItsName_andNothingIsTakenIn() throws IOException {
        refused("[]", "not a JSON object");
        refused("{", "not JSON");
        refused("{\"form\":\"x\"}", "\"form\" is not spoonfall-cook");
        String whole = odd().json();
        refused(whole.replace("\"version\":1", "\"version\":2"), "newer Spoonfall");
        refused(whole.replace("\"aliveMillis\":300000", "\"aliveMillis\":\"x\""), "aliveMillis");
        refused(whole.replace("[0,1000,1000,6.0]", "[9,1000,1000,6.0]"), "a reading is [thermometer");
        refused(whole.replace("[0,1000,1000,6.0]", "[0,1000,1000,1e99]"), "no thermometer shows");
        refused(whole.replace("[0,1000,1000,6.0]", "[0,999000,1000,6.0]"), "go back in time");
        refused(whole.replace("\"stiff\"", "\"hard\""), "runny, soft, right, firm, stiff");
        refused(whole.replace("\"Quince\"", "\"a\\u0000b\""), "U+0000");
        refused(whole.replace("\"kind\":\"stage\"", "\"kind\":\"\""), "\"kind\" has 1 to");
        refused(whole.replace("\"" + "b".repeat(64), "\"" + "B".repeat(64)), "64 hexadecimal digits");
        refused(whole.replace("\"YmJi\"", "\"Ym!i\""), "Illegal base64");
        refused(whole.replace("\"YmJi\"", "\"\""), "a photo of nothing");
        refused(whole.replace("2026-11-26T09:00:00.456Z", "+900000000-01-01T00:00:00Z"), "\"takenInAt\" is not a time");
        refused("{\"a\":".repeat(100) + "1" + "}".repeat(100), "not JSON");
        assertThat(folder.resolve("cooks.db")).doesNotExist();
    }

    private void refused(String json, String why) throws IOException {
        Path file = folder.resolve("bad.json");
        Files.writeString(file, json);
        assertThatThrownBy(() -> WholeCook.read(file, WholeCookJsonTest::asItIs))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(why)
                .hasMessageContaining("bad.json");
    }
}
