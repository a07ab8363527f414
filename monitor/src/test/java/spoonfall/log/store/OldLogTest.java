package spoonfall.log.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.log.CookInput;
import spoonfall.log.Recalled;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.cook.StoredTrace;
import spoonfall.log.store.file.Database;

/**
 * Files that every released version of the tables wrote, kept as they were: {@code cooks/vN.db} holds a finished cook of 300
 * readings of two thermometers with a word and an event. A new version adds its own and keeps the others.
 */
final class OldLogTest {
    @TempDir
    private Path folder;

    private Path copy(int version) throws IOException {
        Path file = folder.resolve("cooks.db");
        try (InputStream in = OldLogTest.class.getResourceAsStream("/cooks/v" + version + ".db")) {
            Files.copy(Objects.requireNonNull(in), file);
        }
        return file;
    }

    @ParameterizedTest(name = "version {0}")
    @ValueSource(ints = {1, 2, 3})
    void anOldFile_isReadAndGoneOnWith(int version) throws IOException {
        Path file = copy(version);
        try (CookLog log = CookLog.open(file)) {
            assertThat(log.list()).hasSize(1);
            StoredCook cook = log.cook(1);
            assertThat(cook.header()).isEqualTo(RecorderTest.header(1));
            assertThat(cook.inputs())
                    .hasSize(601)
                    .filteredOn(input -> input instanceof CookInput.Word)
                    .hasSize(1);
            assertThat(cook.inputs()).contains(RecorderTest.second(299));
            assertThat(cook.events()).hasSize(1);
            assertThat(cook.endedMillis()).hasValue(300_000);
            assertThat(StoredTrace.of(cook).size()).isEqualTo(300);
        }
        try (Recorder recorder = Recorder.open(file)) {
            assertThat(recorder.journal("").lastNumber().found()).contains(1);
            assertThat(recorder.journal("").unfinished()).isEqualTo(Recalled.nothing());
            assertThat(recorder.trouble()).isEmpty();
        }
    }

    @Test
    void theNewestVersion_hasAFileHere() {
        assertThat(OldLogTest.class.getResource("/cooks/v" + Database.VERSION + ".db"))
                .isNotNull();
    }

    @Test
    void aFileOfANewerProgram_isLeftAlone() throws IOException, SQLException {
        Path file = copy(Database.VERSION);
        try (Database database = Database.open(file)) {
            database.handle()
                    .execute("INSERT INTO flyway_schema_history (installed_rank, version, description, type, script,"
                            + " installed_by, execution_time, success) VALUES (999, '999', 'x', 'SQL', 'x', '', 1, 1)");
        }
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> CookLog.open(file)).hasMessageContaining("written by a newer Spoonfall");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }
}
