package spoonfall.log.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.calibration.Correction;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;
import spoonfall.cook.CookSettings;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.WaterBoil;
import spoonfall.log.CookBasis;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJournal;
import spoonfall.log.CookJson;
import spoonfall.log.CookNote;
import spoonfall.log.Diary;
import spoonfall.log.Recalled;
import spoonfall.log.UnfinishedCook;
import spoonfall.log.store.cook.CookLine;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.Moment;
import spoonfall.log.store.file.CookFile;
import spoonfall.log.store.file.Database;
import spoonfall.probe.Hearing;
import spoonfall.probe.Quality;

@Timeout(60)
final class RecorderTest {
    private static final Instant STARTED = Instant.parse("2026-11-25T14:00:00Z");

    private static final CookNote NOTE = new CookNote("n-1", 12_500, STARTED, "skimmed twice");

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("cooks.db");
    }

    static CookHeader header(int number) {
        CookSettings settings = new CookSettings(WaterBoil.atElevation(1240), 4.4);
        CookBasis basis = new CookBasis(
                settings,
                List.of(ProbeTrust.unchecked("pan"), new ProbeTrust("second", OptionalDouble.of(0.31))),
                WaterBoil.atElevation(1240),
                java.util.Optional.of(new CookBasis.Measured(95.61, 0.03, STARTED)));
        Correction correction =
                new Correction(List.of(new Point(Reference.boilingWater(95.88, 0.4), 95.4, 0.01, 0.02)));
        return new CookHeader(
                number,
                "",
                "Hollin Bank",
                "batch 14",
                "live",
                1,
                STARTED,
                settings,
                basis,
                Map.of("second", correction));
    }

    private static CookInput.Heard heard(int i) {
        return new CookInput.Heard(
                "pan", 1000L * i, 1000L * i, OptionalDouble.of(20 + Math.rint(i % 2000 * 3.7) / 100), Quality.GOOD);
    }

    /** A reading of the other thermometer, a little old when it was taken. */
    static CookInput.Heard second(int i) {
        return new CookInput.Heard(
                "second", 1000L * i, 1000L * i - 40, OptionalDouble.of(20 + i / 100.0), Quality.GOOD);
    }

    /** Writes what {@link OldLogTest} finds in the file of this version. */
    static void writeSample(Path file) {
        try (Recorder recorder = Recorder.open(file)) {
            CookJournal journal = recorder.journal("");
            journal.began(header(1));
            for (int i = 0; i < 300; i++) {
                journal.input(heard(i));
                journal.input(second(i));
            }
            journal.input(
                    new CookInput.Word(299_000, "acknowledge", CookJson.object().put("id", "stalled-1")));
            journal.event(299_000, "stage", CookJson.object().put("stage", "warming"));
            journal.note(NOTE);
            Hearing.await("all of it", () -> journal.settle());
            journal.ended(300_000);
            Diary diary = recorder.diary("jars");
            diary.began(CookJson.object().put("what", "header"));
            diary.line(new Diary.Line(1000, "stands", CookJson.object().put("t", 1.0)));
            Hearing.await("the diary", () -> diary.settle());
        }
    }

    @Test
    void aDiary_isReadBackInOrder_acrossRuns() {
        try (Recorder recorder = Recorder.open(file())) {
            Diary jars = recorder.diary("jars");
            assertThat(jars.left()).isEqualTo(Recalled.nothing());
            jars.began(CookJson.object().put("n", 1));
            jars.line(new Diary.Line(5, "a", CookJson.object()));
            jars.alive(4000);
            Hearing.await("all of it", () -> jars.settle());
            assertThat(recorder.diary("afternoon pan").left()).isEqualTo(Recalled.nothing());
        }
        try (Recorder recorder = Recorder.open(file())) {
            Diary jars = recorder.diary("jars");
            Diary.Left left = jars.left().found().orElseThrow();
            assertThat(left.aliveMillis()).isEqualTo(4000);
            assertThat(left.away()).isBetween(Duration.ZERO, Duration.ofSeconds(30));
            jars.resumed(left);
            jars.line(new Diary.Line(6000, "b", CookJson.object().put("x", "y")));
            Hearing.await("all of it", () -> jars.settle());
            assertThat(jars.left().found().orElseThrow().lines())
                    .containsExactly(
                            new Diary.Line(5, "a", CookJson.object()),
                            new Diary.Line(6000, "b", CookJson.object().put("x", "y")));
            jars.began(CookJson.object().put("n", 2));
            Hearing.await("all of it", () -> jars.settle());
            assertThat(jars.left().found().orElseThrow().lines()).isEmpty();
            assertThat(jars.left().found().orElseThrow().header().path("n").asInt())
                    .isEqualTo(2);
        }
    }

    @Test
    void theSampleOfThisVersion_isWrittenForLaterOnes() {
        Path file = Path.of("target", "cooks-v" + Database.VERSION + ".db");
        file.toFile().delete();
        writeSample(file);
        assertThat(file).isNotEmptyFile();
    }

    private static void say(CookJournal journal, List<CookInput> inputs) {
        inputs.forEach(journal::input);
    }

    private static List<CookInput> inputs(int from, int until) {
        List<CookInput> inputs = new ArrayList<>();
        for (int i = from; i < until; i++) {
            inputs.add(heard(i));
            if (i % 100 == 50) {
                inputs.add(new CookInput.Word(
                        1000L * i, "acknowledge", CookJson.object().put("id", "stalled-" + i)));
            }
        }
        return inputs;
    }

    @Test
    void whatIsWritten_isReadBackInOrder_acrossRuns() {
        List<CookInput> all = inputs(0, 1000);
        int half = all.size() / 2;
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            assertThat(journal.unfinished()).isEqualTo(Recalled.nothing());
            assertThat(journal.lastNumber().found()).contains(0);
            journal.began(header(1));
            say(journal, all.subList(0, half));
            journal.event(12_000, "stage", CookJson.object().put("stage", "warming"));
            journal.note(NOTE);
            journal.note(NOTE);
            journal.alive(501_000);
            Hearing.await("all of it", () -> journal.settle());
        }
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            UnfinishedCook left = journal.unfinished().found().orElseThrow();
            assertThat(left.header()).isEqualTo(header(1));
            same(left.inputs(), all.subList(0, half));
            assertThat(left.events()).isOne();
            assertThat(left.notes()).containsExactly(NOTE);
            assertThat(left.aliveMillis()).isEqualTo(501_000);
            assertThat(left.away()).isBetween(Duration.ZERO, Duration.ofSeconds(30));
            journal.resumed(left);
            say(journal, all.subList(half, all.size()));
            Hearing.await("all of it", () -> journal.settle());
            same(journal.unfinished().found().orElseThrow().inputs(), all);
            assertThat(recorder.journal("other").unfinished()).isEqualTo(Recalled.nothing());
            journal.ended(1_000_000);
            assertThat(journal.unfinished()).isEqualTo(Recalled.nothing());
            assertThat(journal.lastNumber().found()).contains(1);
        }
    }

    @Test
    void aSecondProgram_isRefusedTheFolder() {
        try (Recorder recorder = Recorder.open(file())) {
            assertThat(recorder.trouble()).isEmpty();
            assertThatThrownBy(() -> Recorder.open(file()))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("--data");
        }
        Recorder.open(file()).close();
    }

    @Test
    void aFullDisk_isSaid_andWhatMemoryHeldIsWrittenWhenThereIsRoom() {
        AtomicReference<@Nullable Database> open = new AtomicReference<>();
        Recorder.Opener opener = path -> {
            Database database = CookFile.open(path);
            open.set(database);
            return database;
        };
        try (Recorder recorder = new Recorder(file(), opener, Moment::now)) {
            CookJournal journal = recorder.journal("");
            journal.began(header(1));
            Hearing.await("the file", () -> journal.settle());
            recorder.ask(store -> limit(Objects.requireNonNull(open.get()), "PRAGMA max_page_count = 1"))
                    .join();
            List<CookInput> all = inputs(0, 20_000);
            say(journal, all);
            Hearing.await("the trouble", () -> recorder.trouble().isPresent());
            assertThat(recorder.trouble().orElseThrow().why()).isEqualTo("the disk is full");
            assertThat(journal.settle()).isFalse();
            assertThat(recorder.dropped()).isZero();
            recorder.ask(store -> limit(Objects.requireNonNull(open.get()), "PRAGMA max_page_count = 1000000"))
                    .join();
            Hearing.await("the end of the trouble", () -> recorder.trouble().isEmpty());
            Hearing.await("all of it", () -> journal.settle());
            same(journal.unfinished().found().orElseThrow().inputs(), all);
        }
    }

    private static void same(List<CookInput> found, List<CookInput> expected) {
        for (int i = 0; i < Math.min(found.size(), expected.size()); i++) {
            assertThat(found.get(i)).as("input %d", i).isEqualTo(expected.get(i));
        }
        assertThat(found.size()).isEqualTo(expected.size());
    }

    private static int limit(Database database, String pragma) {
        return database.handle().createQuery(pragma).mapTo(Integer.class).one();
    }

    @Test
    void aDiskThatFailsNowAndThen_losesNothing() {
        AtomicBoolean broken = new AtomicBoolean();
        Recorder.Opener opener = path -> {
            if (broken.get()) {
                throw new SQLException("told on purpose", "", 10);
            }
            return CookFile.open(path);
        };
        List<CookInput> all = inputs(0, 300);
        broken.set(true);
        try (Recorder recorder = new Recorder(file(), opener, Moment::now)) {
            CookJournal journal = recorder.journal("");
            Hearing.await("the trouble", () -> recorder.trouble().isPresent());
            assertThat(journal.unfinished()).isEqualTo(Recalled.notKnown());
            journal.began(header(1));
            say(journal, all);
            broken.set(false);
            Hearing.await("the end of the trouble", () -> recorder.trouble().isEmpty());
            Hearing.await("all of it", () -> journal.settle());
            same(journal.unfinished().found().orElseThrow().inputs(), all);
        }
    }

    @Test
    void aFileThatTakesLongToOpen_isSpokenOf_andWhatItHoldsIsNotTakenForNothing() {
        writeSample(file());
        CountDownLatch opens = new CountDownLatch(1);
        Recorder.Opener opener = path -> {
            Hearing.await("the test", () -> opens.getCount() == 0);
            return CookFile.open(path);
        };
        try (Recorder recorder = new Recorder(file(), opener, Moment::now)) {
            CookJournal journal = recorder.journal("");
            assertThat(journal.trouble().orElseThrow().why()).contains("takes long to open");
            opens.countDown();
            Hearing.await("the file", () -> journal.trouble().isEmpty());
            assertThat(recorder.diary("jars").left().found()).isPresent();
        }
    }

    @Test
    void aRecorderThatEndsWithAnError_saysSo_andAnswersThatItDoesNotKnow() {
        Recorder.Opener opener = path -> {
            throw new UnsatisfiedLinkError("told on purpose");
        };
        try (Recorder recorder = new Recorder(file(), opener, Moment::now)) {
            CookJournal journal = recorder.journal("");
            Hearing.await(
                    "the trouble",
                    () -> journal.trouble()
                            .filter(words -> words.why().equals("the recorder stopped"))
                            .isPresent());
            Hearing.await("the end of its thread", () -> !journal.healthy());
            assertThat(journal.unfinished()).isEqualTo(Recalled.notKnown());
            assertThat(journal.settle()).isFalse();
        }
    }

    @Test
    void whatCanNeverBeWritten_isLeftOutAndCounted_andHoldsUpNothing() {
        List<CookInput> all = inputs(0, 300);
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            journal.began(header(1));
            say(journal, all.subList(0, 100));
            recorder.offer((handle, writers) -> {
                throw new IllegalStateException("told on purpose");
            });
            say(journal, all.subList(100, 200));
            recorder.offer((handle, writers) -> handle.execute("INSERT INTO word (cook) VALUES (NULL)"));
            say(journal, all.subList(200, all.size()));
            Hearing.await("all else", () -> journal.settle());
            same(journal.unfinished().found().orElseThrow().inputs(), all);
            assertThat(recorder.leftOut()).isEqualTo(2);
            assertThat(recorder.trouble()).isEmpty();
        }
    }

    @Test
    void aFolderThatCannotBeWritten_isTroubleAndNoMore() throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("file"), "not a folder");
        try (Recorder recorder = Recorder.open(inTheWay.resolve("data").resolve("cooks.db"))) {
            Hearing.await("the trouble", () -> recorder.trouble().isPresent());
            CookJournal journal = recorder.journal("");
            assertThat(journal.unfinished()).isEqualTo(Recalled.notKnown());
            journal.began(header(1));
            say(journal, inputs(0, 100));
            assertThat(journal.settle()).isFalse();
            assertThat(recorder.trouble().orElseThrow().why()).contains("cannot be written");
        }
    }

    @Test
    void memoryThatIsFull_dropsReadingsAndCountsThem_butKeepsWords() {
        Recorder.Opener opener = path -> {
            throw new SQLException("told on purpose", "", 13);
        };
        try (Recorder recorder = new Recorder(file(), opener, Moment::now)) {
            CookJournal journal = recorder.journal("");
            journal.began(header(1));
            int many = Inbox.MOST_HELD + 30_000;
            for (int i = 0; i < many; i++) {
                journal.input(heard(i));
            }
            int before = recorder.held();
            journal.input(new CookInput.Word(1, "acknowledge", CookJson.object()));
            assertThat(recorder.held()).isBetween(before - 10_001, before + 1);
            assertThat(recorder.dropped()).isBetween(many - Inbox.MOST_HELD - 10_001L, (long) many);
        }
    }

    @Test
    void aDamagedFile_isSetAside_andWhatCanBeReadIsSaved() throws IOException, SQLException {
        for (int number = 1; number <= 6; number++) {
            try (Recorder recorder = Recorder.open(file())) {
                CookJournal journal = recorder.journal("");
                journal.began(header(number));
                say(journal, inputs(0, 3000));
                Hearing.await("all of it", () -> journal.settle());
                journal.ended(3_000_000);
            }
        }
        byte[] before = Files.readAllBytes(file());
        int page = 4096;
        try (RandomAccessFile damage = new RandomAccessFile(file().toFile(), "rw")) {
            for (int i = before.length / page / 2; i < before.length / page / 2 + 2; i++) {
                damage.seek((long) i * page);
                damage.write(new byte[page]);
            }
        }
        byte[] damaged = Files.readAllBytes(file());
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            List<CookLine> saved = recorder.ask(CookStore::list).join();
            assertThat(saved).hasSize(6);
            long readings = saved.stream().mapToLong(CookLine::readings).sum();
            System.out.println("saved " + readings + " of 18000 readings after two of " + before.length / page
                    + " pages were zeroed");
            assertThat(readings).isBetween(9_000L, 18_000L);
            journal.began(header(7));
            say(journal, inputs(0, 10));
            Hearing.await("all of it", () -> journal.settle());
        }
        try (Stream<Path> files = Files.list(folder)) {
            Path aside = files.filter(one -> one.getFileName().toString().matches("cooks-damaged-.*\\.db"))
                    .findFirst()
                    .orElseThrow();
            assertThat(Files.readAllBytes(aside)).isEqualTo(damaged);
        }
        try (Database database = Database.open(file())) {
            assertThat(database.handle()
                            .createQuery("PRAGMA quick_check(1)")
                            .mapTo(String.class)
                            .one())
                    .isEqualTo("ok");
        }
    }

    @Test
    void aFileThatIsNoDatabase_isSetAside() throws IOException {
        Files.writeString(file(), "Dear diary, today we made marmalade. ".repeat(300));
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            journal.began(header(1));
            Hearing.await("all of it", () -> journal.settle());
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(one -> one.getFileName().toString()))
                    .anyMatch(name -> name.startsWith("cooks-damaged-"));
        }
    }

    @Test
    void anHourByWhichTheWallClockJumps_isNoTimeAway_inOneRunOfTheSystem() {
        Moment earlier = new Moment(1_000_000_000L, "boot", 50_000);
        assertThat(new Moment(1_003_600_000L, "boot", 52_000).since(earlier)).isEqualTo(Duration.ofSeconds(2));
        assertThat(new Moment(996_400_000L, "boot", 52_000).since(earlier)).isEqualTo(Duration.ofSeconds(2));
        assertThat(new Moment(1_000_060_000L, "another", 1_000).since(earlier)).isEqualTo(Duration.ofMinutes(1));
        assertThat(new Moment(999_000_000L, "another", 1_000).since(earlier)).isZero();
    }
}
