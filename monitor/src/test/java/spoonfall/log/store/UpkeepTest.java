package spoonfall.log.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJournal;
import spoonfall.log.CookJson;
import spoonfall.log.CookNote;
import spoonfall.log.Keep;
import spoonfall.log.KeepRules;
import spoonfall.log.store.cook.CookLine;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.file.Database;
import spoonfall.log.store.upkeep.Upkeep;
import spoonfall.log.store.upkeep.UpkeepLine;
import spoonfall.probe.Hearing;
import spoonfall.probe.Quality;

/** What a kitchen file lets go of old cooks. */
@Timeout(60)
final class UpkeepTest {
    private final Instant now = Instant.now();
    private static final int READINGS = 600;

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("cooks.db");
    }

    /** Cooks of one pan, one for each age in days, the oldest first; the last one still runs. */
    private void record(int... daysAgo) {
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            for (int number = 1; number <= daysAgo.length; number++) {
                journal.began(begun(number, now.minus(daysAgo[number - 1], ChronoUnit.DAYS)));
                for (int i = 0; i < READINGS; i++) {
                    journal.input(new CookInput.Heard(
                            "pan", 1000L * i, 1000L * i, OptionalDouble.of(20 + i / 10.0), Quality.GOOD));
                }
                journal.input(new CookInput.Word(
                        5500, "acknowledge", CookJson.object().put("id", "stalled-1")));
                journal.event(5500, "stage", CookJson.object().put("stage", "warming"));
                journal.note(new CookNote("n", 5000, now, "a note"));
                if (number < daysAgo.length) {
                    journal.ended(1000L * READINGS);
                }
                Hearing.await("all of it", () -> journal.settle());
            }
        }
    }

    private static CookHeader begun(int number, Instant startedAt) {
        CookHeader usual = RecorderTest.header(number);
        return new CookHeader(
                number,
                usual.pan(),
                usual.kitchen(),
                usual.batch(),
                usual.source(),
                usual.speed(),
                startedAt,
                usual.asked(),
                usual.basis(),
                usual.corrections());
    }

    /** The service runs for as long as it has something to let go. */
    private List<CookLine> after(String thin, String keep) throws SQLException {
        try (Database database = Database.open(file())) {
            Upkeep upkeep = new Upkeep(new KeepRules(Keep.parse(thin), Keep.parse(keep)));
            int acts = 0;
            while (upkeep.next(database.handle(), now)) {
                assertThat(acts++).isLessThan(100);
            }
            return new CookStore(database.handle()).list();
        }
    }

    @Test
    void oldCooks_thinOutAndGo_andTheRecordSaysSo() throws SQLException {
        record(900, 400, 100, 800);
        List<CookLine> left = after("1 year", "2 years");
        assertThat(left).extracting(CookLine::number).containsExactly(3, 2, 4);
        assertThat(left.get(0).readings()).isEqualTo(READINGS);
        assertThat(left.get(1).readings()).isEqualTo(READINGS / 10);
        assertThat(left.get(2).readings()).as("the one that runs").isEqualTo(READINGS);
        try (CookLog log = CookLog.open(file())) {
            StoredCook thinned = log.cook(left.get(1).id());
            assertThat(thinned.events()).hasSize(1);
            assertThat(thinned.notes()).hasSize(1);
            assertThat(thinned.inputs())
                    .filteredOn(CookInput.Word.class::isInstance)
                    .hasSize(1);
            assertThat(log.upkeep())
                    .extracting(UpkeepLine::why)
                    .containsExactlyInAnyOrder("keep = \"2 years\"", "thin = \"1 year\"");
            assertThat(log.upkeep())
                    .extracting(UpkeepLine::readings)
                    .containsExactlyInAnyOrder((long) READINGS, READINGS * 9L / 10);
        }
        assertThat(after("1 year", "2 years")).isEqualTo(left);
    }

    @Test
    void soManyCooks_areKept() throws SQLException {
        record(5, 4, 3, 2);
        assertThat(after("1 cook", "3 cooks")).extracting(CookLine::number).containsExactly(4, 3, 2);
        assertThat(after("everything", "everything")).hasSize(3);
    }

    @Test
    void aServiceThatRuns_letsOldCooksGo() {
        record(900, 0);
        KeepRules rules = new KeepRules(Keep.EVERYTHING, Keep.parse("2 years"));
        try (Recorder recorder = Recorder.open(file(), rules)) {
            Hearing.await(
                    "the old one to go",
                    () -> recorder.ask(CookStore::list).join().size() == 1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "years", "0 days", "2 weeks", "-1 days", "two years", "99999999 days", ""})
    void whatCannotBeMeant_isRefusedWithAnExample(String text) {
        assertThatThrownBy(() -> Keep.parse(text)).hasMessageContaining("\"2 years\"");
    }
}
