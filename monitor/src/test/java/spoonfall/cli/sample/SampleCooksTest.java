package spoonfall.cli.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.book.Firmness;
import spoonfall.cli.option.FolderMemory;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.learn.Finding;
import spoonfall.lesson.LessonMaker;
import spoonfall.log.DataFolder;
import spoonfall.log.memory.BatchMemory;
import spoonfall.log.store.book.BatchBook;
import spoonfall.log.store.book.BookLine;
import spoonfall.log.store.book.BookQuery;
import spoonfall.log.store.book.BookTest;

/** The batch book that the demo brings. */
final class SampleCooksTest {
    @TempDir
    private Path folder;

    @Test
    void theDemosBook_hasCooksToFindCompareLearnFromAndTeachWith() {
        DataFolder data = new DataFolder(folder);
        Instant before = Instant.parse("2026-01-17T14:48:00Z");
        SampleCooks.write(data, new CookSettings(WaterBoil.atElevation(1240), 4.44), before);
        BatchBook book = new BatchBook(data.cooks());
        List<BookLine> cooks = book.list(BookQuery.ALL).cooks();
        assertThat(cooks).hasSize(6).allSatisfy(cook -> {
            assertThat(cook.startedAt()).isBefore(before);
            assertThat(cook.outcomes()).isNotEmpty();
            assertThat(cook.made().jars()).isPresent();
            assertThat(LessonMaker.of(book.cook(cook.id())).moments()).hasSizeGreaterThan(3);
        });
        assertThat(cooks).anyMatch(cook -> cook.notes() > 0);
        assertThat(cooks.stream()
                        .flatMap(cook -> book.page(cook.id()).tests().stream())
                        .map(BookTest::set))
                .contains(true, false);
        assertThat(cooks.stream().map(cook -> book.page(cook.id()).plan())).anyMatch(Optional::isPresent);

        BatchMemory memory = FolderMemory.of(data);
        assertThat(memory.learning().batches()).hasSize(10);
        long soft = cooks.stream()
                .filter(cook -> cook.outcomes().get(0).set().equals(Optional.of(Firmness.SOFT)))
                .findFirst()
                .orElseThrow()
                .id();
        assertThat(memory.diagnosis(soft).findings())
                .filteredOn(Finding::cause)
                .extracting(Finding::id)
                .contains("stopped-short");
        assertThat(cooks)
                .anyMatch(cook -> BatchMemory.recookOf(book.cook(cook.id())).equals(OptionalLong.of(soft)));
    }
}
