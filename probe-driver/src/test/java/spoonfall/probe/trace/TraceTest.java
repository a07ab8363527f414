package spoonfall.probe.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class TraceTest {
    @TempDir
    Path folder = Path.of("");

    private Path csv(String text) throws IOException {
        return Files.writeString(folder.resolve("cook.csv"), text);
    }

    @Test
    void aTraceThatIsWritten_readsBackTheSame() {
        Trace.Builder rows = new Trace.Builder();
        rows.add(0, OptionalDouble.of(21.4));
        rows.add(1.001, OptionalDouble.empty());
        rows.add(2, OptionalDouble.of(98.123456789));
        TraceInfo info = new TraceInfo(
                "A cook",
                "Of \"Seville\" orange",
                "simulated",
                OptionalDouble.of(1240),
                OptionalDouble.empty(),
                OptionalDouble.of(4.4444),
                OptionalLong.of(7),
                Optional.of(Instant.parse("2026-01-17T14:48:00Z")),
                List.of(new TraceInfo.Label(1.5, "boil")));
        Path file = folder.resolve("cook.csv");
        rows.build(info).write(file);
        Trace back = Trace.read(file);
        assertThat(back.info()).isEqualTo(info);
        assertThat(back.size()).isEqualTo(3);
        assertThat(back.elapsedS(1)).isEqualTo(1.001);
        assertThat(back.temperatureC(1)).isEmpty();
        assertThat(back.temperatureC(2)).hasValue(98.123456789);
    }

    @Test
    void metadata_isCsvOnTheWeb() {
        String json = TraceMetadata.json(TraceInfo.titled("A cook"), "cook.csv");
        assertThat(json)
                .contains(
                        "\"@context\" : \"http://www.w3.org/ns/csvw\"",
                        "\"url\" : \"cook.csv\"",
                        "\"name\" : \"elapsed_s\"",
                        "\"name\" : \"temperature_c\"",
                        "\"dc:title\" : \"A cook\"");
    }

    @Test
    void columns_mayComeInAnyOrderWithOthersBetween() throws IOException {
        Trace trace = Trace.read(csv("note,Temperature_C,elapsed_s\nhello,21.5,0\nthere,,3\n"));
        assertThat(trace.size()).isEqualTo(2);
        assertThat(trace.temperatureC(0)).hasValue(21.5);
        assertThat(trace.temperatureC(1)).isEmpty();
    }

    @Test
    void aValueThatNoThermometerShows_isALostReading_asItIsLive() throws IOException {
        Trace trace = Trace.read(csv("elapsed_s,temperature_c\n0,20\n1,-127\n2,1e6\n3,20.5\n"));
        assertThat(trace.size()).isEqualTo(4);
        assertThat(trace.temperatureC(1)).isEmpty();
        assertThat(trace.temperatureC(2)).isEmpty();
        assertThat(trace.temperatureC(3)).hasValue(20.5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "elapsed_s,temp\\n0,20\\n|has no column temperature_c",
                "elapsed_s,temperature_c\\n|has no rows",
                "elapsed_s,temperature_c\\n0,20\\n5,21\\n4,22\\n|line 4: time runs backwards from 5.0 s to 4.0 s",
                "elapsed_s,temperature_c\\n0,warm\\n|line 2: temperature_c is \"warm\", not a number",
                "elapsed_s,temperature_c\\n0,NaN\\n|line 2 has NaN as temperature_c",
                "elapsed_s,temperature_c\\n0,1e400\\n|line 2 has 1e400 as temperature_c",
                "elapsed_s,temperature_c\\n-1,20\\n|line 2: not a time",
                "elapsed_s,temperature_c\\n0,999\\n|which no pan thermometer shows",
                "elapsed_s,temperature_c\\n0\\n|line 2 has too few columns",
                "elapsed_s,temperature_c\\n1e9,20\\n|more than 48 hours",
                "elapsed_s,temperature_c\\n0,209.1F\\n|line 2: temperature_c is \"209.1F\", not a number",
                "elapsed_s,temperature_c\\n0,0x1p3\\n|line 2: temperature_c is \"0x1p3\", not a number",
                "elapsed_s,temperature_c\\n0,\"wa\\nrm\"\\n|temperature_c is \"wa·rm\", not a number",
                "elapsed_s,temperature_c,temperature_c\\n0,20,30\\n|has several columns temperature_c"
            })
    void aWrongTrace_isNamedWithItsPlace(String text, String message) throws IOException {
        Path file = csv(text.replace("\\n", "\n"));
        assertThatThrownBy(() -> Trace.read(file))
                .isInstanceOf(TraceException.class)
                .hasMessageStartingWith(file.toString())
                .hasMessageContaining(message)
                .hasMessageNotContaining("\n");
    }

    @Test
    void aMissingFileAndAFolder_areNamed() {
        assertThatThrownBy(() -> Trace.read(folder.resolve("none.csv"))).hasMessageContaining("there is no file");
        assertThatThrownBy(() -> Trace.read(folder)).hasMessageContaining("is a folder");
    }

    @Test
    void bytesThatAreNoText_areRefused() throws IOException {
        Path file = folder.resolve("cook.csv");
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
        assertThatThrownBy(() -> Trace.read(file))
                .isInstanceOf(TraceException.class)
                .hasMessageContaining("UTF-8");
    }

    @Test
    void wrongMetadata_isNamedWithItsPlace() throws IOException {
        Path file = csv("elapsed_s,temperature_c\n0,20\n");
        Path metadata = folder.resolve("cook.csv-metadata.json");
        Files.writeString(metadata, "{\n\"dc:title\": oops}");
        assertThatThrownBy(() -> Trace.read(file)).hasMessageContaining(metadata + ", line 2 is not JSON");
        Files.writeString(metadata, "{\"urn:spoonfall:riseC\": \"high\"}");
        assertThatThrownBy(() -> Trace.read(file)).hasMessageContaining("riseC must be a number");
        Files.writeString(metadata, "{\"urn:spoonfall:startedAt\": \"soon\"}");
        assertThatThrownBy(() -> Trace.read(file)).hasMessageContaining("startedAt must be a time");
    }

    @Test
    void aByteOrderMark_isPassedOver() throws IOException {
        assertThat(Trace.read(csv("\ufeffelapsed_s,temperature_c\n0,20\n")).size())
                .isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[]|must be a JSON object",
                "42|must be a JSON object",
                "''|must be a JSON object",
                "{\"urn:spoonfall:labels\": 5}|labels must be a list",
                "{\"urn:spoonfall:seed\": \"x\"}|seed must be a whole number",
                "{\"urn:spoonfall:seed\": 1.5}|seed must be a whole number",
                "{\"urn:spoonfall:provenance\": \"maybe\"}|provenance must be recorded or simulated"
            })
    void metadataOfAWrongKind_isNamed(String json, String message) throws IOException {
        Path file = csv("elapsed_s,temperature_c\n0,20\n");
        Path metadata = Files.writeString(folder.resolve("cook.csv-metadata.json"), json);
        assertThatThrownBy(() -> Trace.read(file))
                .isInstanceOf(TraceException.class)
                .hasMessageStartingWith(metadata.toString())
                .hasMessageContaining(message)
                .hasMessageNotContaining("\n");
    }
}
