package spoonfall.log.store.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.book.After;
import spoonfall.book.Firmness;
import spoonfall.book.Made;
import spoonfall.book.OutcomeWords;
import spoonfall.book.Taste;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;
import spoonfall.log.store.CookLog;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.file.Database;
import spoonfall.log.store.file.Salvaged;
import spoonfall.log.store.upkeep.CookPacker;
import spoonfall.probe.trace.Trace;

final class BatchBookTest {
    @TempDir
    private Path folder;

    private Path file = Path.of("");
    private BatchBook book = new BatchBook(file);

    @BeforeEach
    void twoCooks() {
        file = folder.resolve("cooks.db");
        book = new BatchBook(file);
        assertThat(book.list(BookQuery.ALL).cooks()).isEmpty();
        assertThat(book.outcomes()).isEmpty();
        try (CookLog log = CookLog.openOrMake(file)) {
            for (Scenario scenario : List.of(Scenario.CLEAN, Scenario.STALL)) {
                Trace trace = Cooks.trace(scenario, 4);
                log.take(trace, Cooks.settings(trace));
            }
            log.note(1, "skimmed twice, 100% clear");
        }
    }

    private static OutcomeWords words(String after, String set) {
        return OutcomeWords.of(
                after, Optional.of(set), Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.empty());
    }

    private List<Long> found(String text, String fruit, Optional<Firmness> set) {
        return book.list(new BookQuery(text, fruit, set, Optional.empty(), Optional.empty(), 0)).cooks().stream()
                .map(BookLine::id)
                .toList();
    }

    @Test
    void whatHappened_isToldAsThePageTellsOfIt() {
        assertThat(book.page(1).events())
                .extracting(BookEvent::text)
                .contains("Close to setting.", "At the setting point.")
                .noneMatch(text -> text.toLowerCase(java.util.Locale.ROOT).matches(".*(gel point|test window).*"));
    }

    @Test
    void aTableThatIsGone_isSaidOfTheRecord() throws SQLException {
        try (Database database = Database.open(file)) {
            database.handle().execute("DROP TABLE photo");
        }
        assertThatThrownBy(() -> book.page(1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the record cannot be used: ");
    }

    @Test
    void anOutcome_isSaidInParts_andWhatIsNotSaidStays() {
        book.say(
                1,
                OutcomeWords.of(
                        "day",
                        Optional.of("firm"),
                        Optional.of(List.of("caramel", "bitter")),
                        Optional.empty(),
                        Optional.of("Seville orange"),
                        OptionalInt.of(6)));
        book.say(1, words("day", "right"));
        BookSaid said = book.say(1, words("month", "firm"));
        assertThat(said.made()).isEqualTo(new Made("Seville orange", OptionalInt.of(6)));
        assertThat(said.outcomes()).extracting(one -> one.after()).containsExactly(After.DAY, After.MONTH);
        assertThat(said.outcomes().get(0).set()).contains(Firmness.RIGHT);
        assertThat(said.outcomes().get(0).taste()).isEqualTo(Set.of(Taste.BITTER, Taste.CARAMEL));
        assertThat(book.page(1).outcomes()).isEqualTo(said.outcomes());
        assertThatThrownBy(() -> book.say(9, words("day", "firm"))).isInstanceOf(BatchBook.NoSuchCook.class);
    }

    @Test
    void outcomes_tellWhatTheBatchCameTo() {
        book.say(1, words("day", "soft"));
        book.say(2, words("month", "stiff"));
        List<BatchOutcome> all = book.outcomes();
        assertThat(all).hasSize(2);
        BatchOutcome first =
                all.stream().filter(one -> one.id() == 1).findFirst().orElseThrow();
        BookPage page = book.page(1);
        assertThat(first.finalRiseC()).isEqualTo(page.marks().finalRiseC());
        assertThat(first.waterBoilC()).isEqualTo(page.settings().waterBoil().temperatureC());
        assertThat(first.finalRiseC().orElseThrow()).isCloseTo(page.settings().riseC(), within(1.0));
        assertThat(first.boilMinutes().orElseThrow()).isBetween(5.0, 120.0);
        assertThat(first.outcome().after()).isEqualTo(After.DAY);
    }

    @Test
    void search_findsByEveryWord_andTakesNoneForAPattern() {
        book.say(
                2,
                OutcomeWords.of(
                        "day",
                        Optional.of("soft"),
                        Optional.of(List.of("bright")),
                        Optional.of("lovely with cheese"),
                        Optional.of("Quince"),
                        OptionalInt.empty()));
        assertThat(found("", "", Optional.empty())).containsExactlyInAnyOrder(1L, 2L);
        assertThat(found("SKIMMED", "", Optional.empty())).containsExactly(1L);
        assertThat(found("100%", "", Optional.empty())).containsExactly(1L);
        assertThat(found("%", "", Optional.empty())).containsExactly(1L);
        assertThat(found("cheese", "", Optional.empty())).containsExactly(2L);
        assertThat(found("bright", "", Optional.empty())).containsExactly(2L);
        assertThat(found("", "quince", Optional.empty())).containsExactly(2L);
        assertThat(found("", "quin", Optional.empty())).isEmpty();
        assertThat(found("", "", Optional.of(Firmness.SOFT))).containsExactly(2L);
        assertThat(found("' OR 1=1 --", "", Optional.empty())).isEmpty();
        Instant tomorrow = Instant.now().plus(Duration.ofDays(1));
        BookQuery later = new BookQuery("", "", Optional.empty(), Optional.of(tomorrow), Optional.empty(), 0);
        assertThat(book.list(later).cooks()).isEmpty();
        BookQuery second = new BookQuery("", "", Optional.empty(), Optional.empty(), Optional.of(tomorrow), 1);
        assertThat(book.list(second).cooks()).isEmpty();
        assertThat(book.list(second).found()).isEqualTo(2);
        assertThat(book.list(BookQuery.ALL).fruits()).containsExactly("Quince");
    }

    @Test
    void aCookThatIsOver_isPackedWithoutLoss_inLessThanTwoBytesAReading() throws Exception {
        List<StoredCook> before;
        try (CookLog log = CookLog.open(file)) {
            before = List.of(log.cook(1), log.cook(2));
        }
        try (Database database = Database.open(file)) {
            while (CookPacker.next(database.handle())) {
                assertThat(database.handle()).isNotNull();
            }
            double bytes = database.handle()
                    .createQuery("SELECT 1.0 * sum(length(readings)) / sum(count) FROM chunk")
                    .mapTo(Double.class)
                    .one();
            System.out.println("packed: " + bytes + " bytes a reading");
            assertThat(bytes).isLessThan(2);
        }
        try (CookLog log = CookLog.open(file)) {
            assertThat(log.cook(1).inputs()).isEqualTo(before.get(0).inputs());
            assertThat(log.cook(2).inputs()).isEqualTo(before.get(1).inputs());
        }
    }

    @Test
    void whatWasSaid_goesWithABackup_andWithItsCook() {
        book.say(1, words("day", "soft"));
        book.add(1, "digest", 2, 1, new byte[] {1, 2, 3});
        Path copy = folder.resolve("copy.db");
        try (CookLog log = CookLog.open(file)) {
            log.backup(copy);
            log.delete(1);
        }
        assertThat(book.outcomes()).isEmpty();
        assertThatThrownBy(() -> book.page(1)).hasMessageContaining("there is no cook 1");
        BatchBook copied = new BatchBook(copy);
        assertThat(copied.page(1).outcomes()).hasSize(1);
        long photo = copied.page(1).photos().get(0).id();
        assertThat(copied.photo(1, photo).orElseThrow()).containsExactly(1, 2, 3);
        assertThat(copied.photo(2, photo)).isEmpty();
    }

    @Test
    void whatWasSaid_isSavedFromADamagedFile() throws Exception {
        book.say(1, words("day", "soft"));
        book.add(1, "digest", 2, 1, new byte[] {1, 2, 3});
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length - 100] ^= 0x55;
        try (Database fresh = Database.open(folder.resolve("fresh.db"))) {
            assertThat(Salvaged.cooks(fresh, file)).isEqualTo(2);
        }
        BatchBook saved = new BatchBook(folder.resolve("fresh.db"));
        assertThat(saved.page(1).outcomes()).hasSize(1);
        assertThat(saved.page(1).photos()).hasSize(1);
    }
}
