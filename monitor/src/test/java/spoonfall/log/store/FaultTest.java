package spoonfall.log.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.CompletionException;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.log.CookInput;
import spoonfall.log.CookJournal;
import spoonfall.log.CookJson;
import spoonfall.log.CookNote;
import spoonfall.log.Diary;
import spoonfall.log.UnfinishedCook;
import spoonfall.log.store.cook.CookLine;
import spoonfall.log.store.cook.CookStore;
import spoonfall.log.store.cook.Moment;
import spoonfall.log.store.cook.StoredCook;
import spoonfall.log.store.file.Database;
import spoonfall.log.store.file.FailingDisk;
import spoonfall.probe.Hearing;
import spoonfall.probe.Quality;

/**
 * Faults at the file of all cooks: {@code -Dspoonfall.faults=N} for N times as many as usual, {@code -Dspoonfall.seed=N} for
 * the same ones again.
 */
@Timeout(600)
final class FaultTest {
    private static final int TIMES = Integer.getInteger("spoonfall.faults", 1);
    private static final long SEED = Long.getLong("spoonfall.seed", System.nanoTime() & 0xFFFF);
    private static final int PAGE = 4096;

    @TempDir
    private Path folder;

    private final Random random = new Random(SEED);
    private final List<CookInput> inputs = new ArrayList<>();
    private int events;

    @BeforeEach
    void sayTheSeed() {
        System.out.println("seed " + SEED);
    }

    private Path file() {
        return folder.resolve("cooks.db");
    }

    private void say(CookJournal journal, int readings) {
        for (int i = 0; i < readings; i++) {
            int n = inputs.size();
            CookInput input = n % 40 == 39
                    ? new CookInput.Word(
                            1000L * n, "acknowledge", CookJson.object().put("id", "stalled-" + n))
                    : new CookInput.Heard(
                            "pan", 1000L * n, 1000L * n, OptionalDouble.of(20 + n % 900 / 10.0), Quality.GOOD);
            inputs.add(input);
            journal.input(input);
        }
        journal.event(1000L * inputs.size(), "stage", CookJson.object().put("n", events++));
    }

    /** The recorder tries to write what it holds, however that ends. */
    private static void attempt(Recorder recorder) {
        try {
            recorder.ask(CookStore::list).join();
        } catch (CompletionException e) {
            assertThat(e.getCause()).isNotNull();
        }
    }

    private static String integrity(Path file) throws SQLException {
        try (Database database = Database.open(file)) {
            return String.join(
                    "; ",
                    database.handle()
                            .createQuery("PRAGMA integrity_check")
                            .mapTo(String.class)
                            .list());
        }
    }

    @Test
    void aDiskThatFailsAtAnyStatementOrCommit_losesNothing() throws SQLException {
        FailingDisk disk = new FailingDisk(random);
        int rounds = 200 * TIMES;
        try (Recorder recorder = new Recorder(file(), disk::open, Moment::now)) {
            CookJournal journal = recorder.journal("");
            Diary diary = recorder.diary("jars");
            journal.began(RecorderTest.header(1));
            diary.began(CookJson.object());
            for (int round = 0; round < rounds; round++) {
                disk.fails(random.nextInt(4) == 0 ? 0 : Math.pow(10, -3 * random.nextDouble()));
                say(journal, 1 + random.nextInt(30));
                diary.line(new Diary.Line(round, "stands", CookJson.object().put("n", round)));
                journal.note(new CookNote("n" + round % CookNote.MOST, round, Instant.EPOCH, "round " + round));
                attempt(recorder);
            }
            disk.fails(0);
            Hearing.await("the end of the trouble", () -> journal.settle());
            UnfinishedCook left = journal.unfinished().found().orElseThrow();
            assertThat(left.inputs()).isEqualTo(inputs);
            assertThat(left.events()).isEqualTo(events);
            assertThat(left.notes()).hasSize(Math.min(rounds, CookNote.MOST));
            assertThat(diary.left().found().orElseThrow().lines())
                    .extracting(Diary.Line::atMillis)
                    .containsExactlyElementsOf(
                            java.util.stream.LongStream.range(0, rounds).boxed().toList());
            assertThat(recorder.dropped()).isZero();
        }
        assertThat(integrity(file())).isEqualTo("ok");
        int tried =
                disk.failures().values().stream().mapToInt(Integer::intValue).sum();
        System.out.println(tried + " failures of the disk tried, all survived, nothing lost of " + inputs.size()
                + " inputs and " + events + " events: " + disk.failures());
        assertThat(tried)
                .as("how many depends on how often the recorder tries again meanwhile")
                .isPositive();
    }

    @Test
    void aPowerCutAtAnyByteOfTheLog_losesNothingThatWasCommitted() throws IOException, SQLException {
        int cuts = 0;
        int more = 0;
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            journal.began(RecorderTest.header(1));
            say(journal, 200);
            Hearing.await("the beginning", () -> journal.settle());
            for (int round = 0; round < 15 * TIMES; round++) {
                List<CookInput> committed = List.copyOf(inputs);
                byte[] databaseThen = Files.readAllBytes(file());
                byte[] logThen = Files.readAllBytes(wal(file()));
                for (int commit = 0; commit < 3; commit++) {
                    say(journal, 1 + random.nextInt(100));
                    Hearing.await("the next ones", () -> journal.settle());
                }
                byte[] logNow = Files.readAllBytes(wal(file()));
                if (!Arrays.equals(databaseThen, Files.readAllBytes(file())) || logNow.length < logThen.length) {
                    continue; // folded in between: another kind of cut
                }
                byte[] torn = torn(logThen, logNow);
                Path copy =
                        Files.createDirectories(folder.resolve("cut" + round)).resolve("cooks.db");
                Files.write(copy, databaseThen);
                Files.write(wal(copy), torn);
                List<CookInput> kept = kept(copy);
                assertThat(kept.size()).isBetween(committed.size(), inputs.size());
                assertThat(kept).isEqualTo(inputs.subList(0, kept.size()));
                cuts++;
                more += kept.size() - committed.size();
            }
        }
        System.out.println(cuts + " power cuts while the log was written: all survived, nothing committed lost, " + more
                + " inputs of later commits were there as well");
        assertThat(cuts).isPositive();
    }

    /** The log as it was, and of what came after only a part, or with its tail never written as meant. */
    private byte[] torn(byte[] then, byte[] now) {
        int cut = then.length + random.nextInt(Math.max(1, now.length - then.length));
        byte[] torn = Arrays.copyOf(now, random.nextBoolean() ? cut : now.length);
        for (int i = cut; i < torn.length; i++) {
            torn[i] = (byte) random.nextInt();
        }
        return torn;
    }

    @Test
    void aPowerCutWhileTheLogIsFoldedIn_losesNothing() throws IOException, SQLException {
        int cuts = 0;
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            journal.began(RecorderTest.header(1));
            for (int round = 0; round < 10 * TIMES; round++) {
                say(journal, 100 + random.nextInt(300));
                Hearing.await("these", () -> journal.settle());
                byte[] before = Files.readAllBytes(file());
                byte[] log = Files.readAllBytes(wal(file()));
                recorder.ask(store -> store.handle()
                                .createQuery("PRAGMA wal_checkpoint(PASSIVE)")
                                .mapTo(Integer.class)
                                .first())
                        .join();
                byte[] after = Files.readAllBytes(file());
                Path copy =
                        Files.createDirectories(folder.resolve("fold" + round)).resolve("cooks.db");
                Files.write(copy, halfFolded(before, after));
                Files.write(wal(copy), log);
                assertThat(kept(copy)).isEqualTo(inputs);
                cuts++;
            }
        }
        System.out.println(cuts + " power cuts while the log was folded in: all survived, nothing lost");
    }

    /** Some sectors are written, some are not, and the file has its new length or not. */
    private byte[] halfFolded(byte[] before, byte[] after) {
        byte[] half = Arrays.copyOf(before, random.nextBoolean() ? before.length : after.length);
        for (int sector = 0; sector < half.length; sector += 512) {
            if (random.nextBoolean()) {
                System.arraycopy(after, sector, half, sector, Math.min(512, half.length - sector));
            }
        }
        return half;
    }

    private static Path wal(Path file) {
        return file.resolveSibling(file.getFileName() + "-wal");
    }

    private static List<CookInput> kept(Path file) throws SQLException {
        assertThat(integrity(file)).isEqualTo("ok");
        try (Database database = Database.open(file)) {
            StoredCook cook = new CookStore(database.handle()).read(1).orElseThrow();
            assertThat(cook.damaged()).isZero();
            return cook.inputs();
        }
    }

    @Test
    void damageAnywhere_isSurvived_andWhatCanBeReadIsSaved() throws IOException, SQLException {
        byte[] whole;
        byte[] log;
        try (Recorder recorder = Recorder.open(file())) {
            for (int number = 1; number <= 4; number++) {
                CookJournal journal = recorder.journal("");
                journal.began(RecorderTest.header(number));
                say(journal, 1500);
                Hearing.await("all of it", () -> journal.settle());
                if (number == 3) {
                    recorder.ask(store -> store.handle()
                                    .createQuery("PRAGMA wal_checkpoint(PASSIVE)")
                                    .mapTo(Integer.class)
                                    .first())
                            .join();
                }
            }
            whole = Files.readAllBytes(file());
            log = Files.readAllBytes(wal(file()));
        }
        long all = inputs.stream().filter(CookInput.Heard.class::isInstance).count();
        long least = all;
        long sum = 0;
        int setAside = 0;
        int tried = 18 * TIMES;
        for (int i = 0; i < tried; i++) {
            Path copy = Files.createDirectories(folder.resolve("damage" + i)).resolve("cooks.db");
            Files.write(copy, whole);
            Files.write(wal(copy), log);
            damage(i % 6, copy);
            long saved = goOn(copy);
            least = Math.min(least, saved);
            sum += saved;
            try (Stream<Path> files = Files.list(copy.resolveSibling("").toAbsolutePath())) {
                setAside += files.anyMatch(one -> one.toString().contains("damaged")) ? 1 : 0;
            }
        }
        System.out.println(tried + " damaged files tried, all survived, " + setAside + " set aside; of " + all
                + " readings " + sum / tried + " were saved on average, " + least + " at least");
    }

    private void damage(int kind, Path copy) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(copy.toFile(), "rw");
                RandomAccessFile log = new RandomAccessFile(wal(copy).toFile(), "rw")) {
            long pages = file.length() / PAGE;
            switch (kind) {
                case 0 -> overwrite(file, random.nextInt(100), 1 + random.nextInt(100)); // the header
                case 1 -> overwrite(file, PAGE * random.nextLong(pages), PAGE); // a page
                case 2 -> overwrite(file, random.nextLong(file.length()), 1); // a bit of something
                case 3 -> overwrite(log, random.nextLong(log.length()), 1 + random.nextInt(PAGE));
                case 4 -> file.setLength(random.nextLong(file.length()));
                default -> log.setLength(random.nextLong(log.length()));
            }
        }
    }

    private void overwrite(RandomAccessFile file, long at, int length) throws IOException {
        byte[] noise = new byte[(int) Math.min(length, file.length() - at)];
        random.nextBytes(noise);
        file.seek(at);
        file.write(noise);
    }

    /** The service begins, whatever is in the file, and writes; says how many readings of before are there. */
    private long goOn(Path copy) throws SQLException {
        long saved;
        try (Recorder recorder = Recorder.open(copy)) {
            CookJournal journal = recorder.journal("");
            journal.unfinished();
            recorder.diary("jars").left();
            saved = recorder.ask(CookStore::list).join().stream()
                    .mapToLong(CookLine::readings)
                    .sum();
            journal.began(RecorderTest.header(9));
            journal.input(inputs.get(0));
            Hearing.await("a new cook in " + copy, () -> journal.settle());
        }
        assertThat(integrity(copy)).isEqualTo("ok");
        return saved;
    }

    @Test
    void aFileThatIsTakenAway_isNoticed_andANewOneBegins() throws IOException, SQLException {
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            journal.began(RecorderTest.header(1));
            say(journal, 50);
            Hearing.await("the first", () -> journal.settle());
            Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
            for (String part : List.of("", "-wal", "-shm")) {
                Files.move(folder.resolve("cooks.db" + part), elsewhere.resolve("cooks.db" + part));
            }
            int before = inputs.size();
            say(journal, 50);
            Hearing.await("the second", () -> journal.settle());
            assertThat(kept(elsewhere.resolve("cooks.db"))).isEqualTo(inputs.subList(0, before));
            List<CookInput> after = journal.unfinished().found().orElseThrow().inputs();
            assertThat(after).endsWith(inputs.subList(before, inputs.size()).toArray(CookInput[]::new));
        }
        assertThat(integrity(file())).isEqualTo("ok");
    }

    @Test
    void aFileThatBecomesReadOnly_isSaid_andGoesOnWhenItCanBeWritten() {
        try (Recorder recorder = Recorder.open(file())) {
            CookJournal journal = recorder.journal("");
            journal.began(RecorderTest.header(1));
            Hearing.await("the file", () -> journal.settle());
            recorder.ask(store -> store.handle().execute("PRAGMA query_only = ON"))
                    .join();
            say(journal, 100);
            Hearing.await("all of it in the end", () -> {
                attempt(recorder);
                return journal.settle();
            });
            assertThat(journal.unfinished().found().orElseThrow().inputs()).isEqualTo(inputs);
        }
    }
}
