package spoonfall.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The bill of materials and the licences are those of the jars that run. {@code ./lock --write} makes them anew. */
final class BillTest {
    private static final Path BILL = Path.of("../docs/bill-of-materials.json");
    private static final Path LICENCES = Path.of("../docs/licences.md");

    /** Written while Maven builds, see monitor/pom.xml. */
    private static final Path RUNTIME = Path.of("target/runtime-classpath");

    private static List<JsonNode> parts() throws IOException {
        List<JsonNode> parts = new ArrayList<>();
        for (JsonNode part : new ObjectMapper().readTree(BILL.toFile()).path("components")) {
            if (!part.path("group").asText().equals("spoonfall")) {
                parts.add(part);
            }
        }
        return parts;
    }

    @Test
    void theBill_holdsExactlyTheJarsThatRun_byTheirChecksums() throws IOException, NoSuchAlgorithmException {
        Map<String, String> running = new TreeMap<>();
        Path ours = Path.of("..").toRealPath();
        for (String entry : Files.readString(RUNTIME).strip().split(File.pathSeparator, -1)) {
            Path jar = Path.of(entry);
            if (!jar.toRealPath().startsWith(ours)) {
                MessageDigest digest = MessageDigest.getInstance("SHA-256");
                String sum = HexFormat.of().formatHex(digest.digest(Files.readAllBytes(jar)));
                running.put(String.valueOf(jar.getFileName()), sum);
            }
        }
        Map<String, String> billed = new TreeMap<>();
        for (JsonNode part : parts()) {
            String jar = part.path("name").asText() + "-" + part.path("version").asText() + ".jar";
            billed.put(jar, part.path("hashes").path(0).path("content").asText());
        }
        assertThat(billed).hasSizeGreaterThan(30).isEqualTo(running);
    }

    @Test
    void everyPart_hasALicence_thatTheListNames() throws IOException {
        String list = Files.readString(LICENCES);
        for (JsonNode part : parts()) {
            String row = "| " + part.path("group").asText() + " | "
                    + part.path("name").asText() + " | "
                    + part.path("version").asText() + " | ";
            assertThat(part.path("licenses")).as(row).isNotEmpty();
            assertThat(list).contains(row);
            String licence = list.substring(list.indexOf(row) + row.length())
                    .lines()
                    .findFirst()
                    .orElse("");
            assertThat(licence).as(row).matches("[\\w].* \\|");
        }
        assertThat(list.lines().filter(line -> line.startsWith("| ")).count()).isEqualTo(parts().size() + 1L);
    }

    @Test
    void theBill_leadsNowhere() throws IOException {
        assertThat(Files.readString(BILL)).doesNotContain("repository_url", "externalReferences");
    }

    @Test
    void licences_printsTheList() throws IOException {
        StringWriter out = new StringWriter();
        assertThat(Main.run(new PrintWriter(out), new PrintWriter(out), "licences"))
                .isZero();
        assertThat(out.toString()).isEqualTo(Files.readString(LICENCES));
    }
}
