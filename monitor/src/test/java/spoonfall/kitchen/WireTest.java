package spoonfall.kitchen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.clock.AwakeClock;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.thermometer.Thermometry;
import spoonfall.kitchen.told.KitchenChange;
import spoonfall.kitchen.told.KitchenListener;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.kitchen.told.PanView;
import spoonfall.log.CookJournal;
import spoonfall.log.CookRecord;
import spoonfall.probe.Hearing;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.Reading;
import spoonfall.probe.serial.PseudoTerminal;
import spoonfall.words.Plain;

/**
 * What happens to a cable, a thermometer and a computer in a kitchen: {@code -Dspoonfall.wire=N} for N times as long as usual,
 * {@code -Dspoonfall.seed=N} for the same noise again.
 */
@Timeout(1200)
final class WireTest {
    private static final int TIMES = Integer.getInteger("spoonfall.wire", 1);
    private static final long SEED = Long.getLong("spoonfall.seed", System.nanoTime() & 0xFFFF);

    /** What a collector leaves lying about differs from run to run; a leak of this suite would be many times as much. */
    private static final long SLACK_BYTES = 16 << 20;

    @TempDir
    private Path folder;

    private final Random random = new Random(SEED);

    @BeforeEach
    void sayTheSeed() {
        System.out.println("seed " + SEED);
    }

    /** A kitchen with one pan at the end of a cable, and all that it said of it. */
    private static final class Watched implements KitchenListener, AutoCloseable {
        final Kitchen kitchen;
        final List<KitchenChange> changes = new CopyOnWriteArrayList<>();

        Watched(String pan, Path link, LongSupplier clock, CookJournal journal) {
            this(pan, clock, journal, nanos -> ProbeSpec.parse("text:" + link).open("pan", nanos));
        }

        Watched(
                String pan,
                LongSupplier clock,
                CookJournal journal,
                java.util.function.Function<LongSupplier, Probe> probe) {
            KitchenPlan plan =
                    KitchenPlan.live("Hollin Bank", "", new CookSettings(WaterBoil.atElevation(1240), 4.4), 1);
            kitchen = new Kitchen(
                    plan.inPan(pan), nanos -> List.of(probe.apply(nanos)), clock, Thermometry.none(), journal);
            kitchen.listen(this);
            kitchen.start();
        }

        @Override
        public void begin(KitchenState state) {
            // only changes matter here
        }

        @Override
        public void changed(KitchenChange change) {
            changes.add(change);
        }

        @Override
        public void pan(PanView view) {
            // only changes matter here
        }

        long said(ProbeState.State state) {
            return changes.stream()
                    .filter(change -> change instanceof KitchenChange.Probe probe
                            && probe.probe().state() == state)
                    .count();
        }

        /** How often it was said that the plug was pulled. */
        long unplugs() {
            return changes.stream()
                    .filter(change -> change instanceof KitchenChange.Probe probe
                            && probe.probe().state() == ProbeState.State.LOST
                            && probe.probe().detail().contains("unplugged"))
                    .count();
        }

        List<String> reminded(String name) {
            return changes.stream()
                    .flatMap(change -> change instanceof KitchenChange.Reminded reminded
                                    && reminded.name().equals(name)
                            ? java.util.stream.Stream.of(reminded.text())
                            : java.util.stream.Stream.empty())
                    .toList();
        }

        KitchenState state() {
            return kitchen.state().join();
        }

        ProbeState probe() {
            return state().probe();
        }

        List<Double> read() {
            CookRecord record = kitchen.record().join();
            List<Double> read = new ArrayList<>();
            for (int i = 0; i < record.size(); i++) {
                read.add(record.temperatureC(i));
            }
            return read;
        }

        @Override
        public void close() {
            kitchen.close();
        }
    }

    /** Threads and memory of this program, after everything that can go has gone. */
    private record Load(int threads, long bytes) {
        static Load now() {
            long least = Long.MAX_VALUE;
            for (int i = 0; i < 3; i++) {
                System.gc();
                Runtime runtime = Runtime.getRuntime();
                least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
            }
            return new Load(Thread.getAllStackTraces().size(), least);
        }

        void assertNoneLater(String what) {
            Load later = now();
            System.out.printf(
                    "%s: threads %d, then %d; heap %.1f MB, then %.1f MB%n",
                    what, threads, later.threads, bytes / 1e6, later.bytes / 1e6);
            assertThat(later.threads).isLessThanOrEqualTo(threads + 1);
            assertThat(later.bytes).isLessThan(bytes + SLACK_BYTES);
        }
    }

    /** The device is there under another name than before; the link is what the kitchen knows. */
    private static PseudoTerminal plug(Path link) throws IOException {
        PseudoTerminal line = PseudoTerminal.open();
        Files.createSymbolicLink(link, line.path());
        return line;
    }

    @Test
    void aHundredUnplugsAndReplugs_loseNoThread_andInventNoReading() throws Exception {
        int pans = 10;
        int cycles = 10 * TIMES;
        List<Path> links = new ArrayList<>();
        List<Watched> watched = new ArrayList<>();
        for (int pan = 0; pan < pans; pan++) {
            links.add(folder.resolve("thermometer" + pan));
            watched.add(new Watched("pan" + pan, links.get(pan), System::nanoTime, CookJournal.none()));
        }
        Set<Double> sent = new TreeSet<>();
        Load before = null;
        long startNanos = System.nanoTime();
        for (int cycle = 0; cycle < cycles; cycle++) {
            List<PseudoTerminal> lines = new ArrayList<>();
            for (Path link : links) {
                lines.add(plug(link));
            }
            double warmC = 60 + cycle % 300 / 10.0;
            sent.add(warmC);
            long told = cycle + 1L;
            for (int pan = 0; pan < pans; pan++) {
                Watched one = watched.get(pan);
                PseudoTerminal line = lines.get(pan);
                // the rest of a line, whole ones as fast as they go, and half of one when the plug is pulled
                line.send("7.2\n");
                Hearing.await("pan " + pan + " to be found", () -> {
                    line.send("T1: %.1f C\r\n".formatted(warmC));
                    return one.said(ProbeState.State.READING) >= told;
                });
                line.send("T1: %.1f C\r\n".formatted(warmC).repeat(40) + "T1: 9");
            }
            for (Path link : links) {
                Files.delete(link); // first, for whoever opens the next terminal of this machine may get its number
            }
            lines.forEach(PseudoTerminal::close);
            for (Watched one : watched) {
                Hearing.await("the loss to be said", () -> one.unplugs() >= told);
                assertThat(one.probe().detail()).contains("unplugged");
            }
            if (cycle == 2) {
                before = Load.now();
            }
        }
        System.out.printf(
                "%d unplugs and replugs of %d thermometers in %.1f s%n",
                pans * cycles, pans, (System.nanoTime() - startNanos) / 1e9);
        for (Watched one : watched) {
            assertThat(one.kitchen.healthy()).isTrue();
            assertThat(one.unplugs()).isEqualTo(cycles);
            assertThat(new TreeSet<>(one.read())).isEqualTo(sent);
        }
        java.util.Objects.requireNonNull(before).assertNoneLater("unplugs");
        watched.forEach(Watched::close);
    }

    @Test
    void aMegabyteOfNoiseASecond_isNoReading_andTheKitchenAnswers() throws Exception {
        Path link = folder.resolve("thermometer");
        try (PseudoTerminal line = plug(link);
                Watched pan = new Watched("pan", link, System::nanoTime, CookJournal.none())) {
            Hearing.await("a reading", () -> {
                line.send("x\nT1: 71.5 C\n");
                return pan.said(ProbeState.State.READING) == 1;
            });
            Load before = Load.now();
            byte[] noise = new byte[16 * 1024];
            long bytes = 0;
            int answers = 0;
            double slowestS = 0;
            long startNanos = System.nanoTime();
            double floodS = 3.0 * TIMES;
            while ((System.nanoTime() - startNanos) / 1e9 < floodS) {
                random.nextBytes(noise);
                line.send(noise);
                bytes += noise.length;
                if (bytes % (256 * 1024) == 0) {
                    long asked = System.nanoTime();
                    assertThat(pan.probe().detail()).isNotNull();
                    answers++;
                    slowestS = Math.max(slowestS, (System.nanoTime() - asked) / 1e9);
                }
                long due = startNanos + bytes * 1000; // 1 MB/s
                TimeUnit.NANOSECONDS.sleep(Math.max(0, due - System.nanoTime()));
            }
            System.out.printf(
                    "%.1f MB of noise in %.1f s, slowest answer %.3f s, %d readings dropped%n",
                    bytes / 1e6,
                    (System.nanoTime() - startNanos) / 1e9,
                    slowestS,
                    pan.kitchen.counts().dropped());
            assertThat(answers).isPositive();
            assertThat(pan.probe().state()).isEqualTo(ProbeState.State.LOST);
            assertThat(pan.probe().detail()).contains("no text at 9600 baud");
            Hearing.await("it to be heard again", () -> {
                line.send("\nT1: 72.5 C\n");
                return pan.read().contains(72.5);
            });
            assertThat(pan.read()).isNotEmpty().allMatch(c -> c == 71.5 || c == 72.5);
            assertThat(pan.kitchen.healthy()).isTrue();
            before.assertNoneLater("noise");
        }
    }

    @Test
    void halfLines_andStopsWithinAByte_areNoReadings() throws Exception {
        Path link = folder.resolve("thermometer");
        try (PseudoTerminal line = plug(link);
                Watched pan = new Watched("pan", link, System::nanoTime, CookJournal.none())) {
            Hearing.await("a reading", () -> {
                line.send("x\n71.5\n");
                return pan.said(ProbeState.State.READING) == 1;
            });
            line.send("1"); // stops within a line; what comes after belongs to another one
            pause();
            line.send("72.0\n72.5\n");
            line.send(new byte[] {(byte) 0xF8}); // the beginning of a byte, as the line sees it
            pause();
            line.send("73.0\n73.5\n");
            for (byte one : "74.0\n".getBytes(StandardCharsets.US_ASCII)) {
                line.send(new byte[] {one});
                TimeUnit.MILLISECONDS.sleep(20);
            }
            Hearing.await("the last one", () -> pan.read().contains(74.0));
            assertThat(new TreeSet<>(pan.read())).containsExactly(71.5, 72.5, 73.5, 74.0);
        }
    }

    /** A second of quiet ends what was begun, which nothing shows: a busy machine has three. */
    private static void pause() throws InterruptedException {
        TimeUnit.SECONDS.sleep(3);
    }

    @Test
    void aLaptopThatSleptForTenMinutes_saysSo_andNoProbeWasSilent() throws Exception {
        AtomicLong asleepNanos = new AtomicLong();
        AwakeClock clock = new AwakeClock(
                System::nanoTime,
                () -> OptionalDouble.of((System.nanoTime() + asleepNanos.get()) / 1e9),
                () -> Instant.ofEpochMilli((System.nanoTime() + asleepNanos.get()) / 1_000_000));
        Path link = folder.resolve("thermometer");
        try (PseudoTerminal line = plug(link);
                Watched pan = new Watched("pan", link, clock, CookJournal.none())) {
            sendFor(line, 71.5, 1500);
            long beforeNanos = System.nanoTime();
            double beforeT = pan.state().pan().status().orElseThrow().t();
            asleepNanos.addAndGet(Duration.ofMinutes(10).toNanos());
            sendFor(line, 78.5, 1500);
            double afterT = pan.state().pan().status().orElseThrow().t();
            double awakeS = (System.nanoTime() - beforeNanos) / 1e9; // on a busy machine more than what was sent takes
            assertThat(afterT - beforeT).isBetween(600.0, 603 + awakeS);
            List<CookEvent> events = pan.changes.stream()
                    .flatMap(change -> change instanceof KitchenChange.Cook cook
                            ? java.util.stream.Stream.of(cook.event())
                            : java.util.stream.Stream.empty())
                    .toList();
            assertThat(events)
                    .filteredOn(CookEvent.CameBack.class::isInstance)
                    .singleElement()
                    .satisfies(event ->
                            assertThat(((CookEvent.CameBack) event).forS()).isBetween(599.0, 603 + awakeS));
            assertThat(events).noneMatch(CookEvent.AlarmChanged.class::isInstance);
            assertThat(pan.state().pan().alarms()).isEmpty();
            assertThat(pan.reminded("clock-set")).isEmpty();
            CookRecord record = pan.kitchen.record().join();
            for (int i = 0; i < record.size(); i++) {
                assertThat(record.temperatureC(i)).isEqualTo(record.t(i) < beforeT + 300 ? 71.5 : 78.5);
            }
        }
    }

    private static void sendFor(PseudoTerminal line, double temperatureC, long millis) throws InterruptedException {
        for (long passed = 0; passed < millis; passed += 100) {
            line.send("\nT1: %.1f C\n".formatted(temperatureC));
            TimeUnit.MILLISECONDS.sleep(100);
        }
    }

    @Test
    void aWallClockThatIsSetByAnHour_isSaid_andMovesNothingOfTheCook() throws Exception {
        AtomicLong setMillis = new AtomicLong();
        KeptJournal journal = new KeptJournal();
        AwakeClock clock = new AwakeClock(
                System::nanoTime,
                OptionalDouble::empty,
                () -> Instant.ofEpochMilli(System.nanoTime() / 1_000_000 + setMillis.get()));
        Path link = folder.resolve("thermometer");
        Instant shownAt;
        try (PseudoTerminal line = plug(link);
                Watched pan = new Watched("pan", link, clock, journal)) {
            sendFor(line, 71.5, 600);
            Instant before = pan.state().startedAt().orElseThrow();
            for (long hours : List.of(1L, -2L)) {
                int told = pan.reminded("clock-set").size();
                setMillis.addAndGet(Duration.ofHours(hours).toMillis());
                Hearing.await("it to be said", () -> pan.reminded("clock-set").size() > told);
            }
            assertThat(pan.reminded("clock-set"))
                    .satisfiesExactly(
                            forward -> assertThat(Plain.text(forward)).contains("set forward by 60 minutes"),
                            back -> assertThat(Plain.text(back)).contains("set back by 120 minutes"));
            sendFor(line, 71.5, 600);
            shownAt = pan.state().startedAt().orElseThrow();
            assertThat(Duration.between(before, shownAt)).isEqualTo(Duration.ofHours(-1));
            assertThat(pan.state().pan().status().orElseThrow().t()).isLessThan(1800);
            assertThat(pan.state().pan().alarms()).isEmpty();
        }
        try (Watched again = new Watched("pan", link, clock, journal)) {
            assertThat(again.state().startedAt()).isEqualTo(Optional.of(shownAt));
        }
    }

    /** A thermometer whose listener a test talks to as fast as it likes. */
    private static final class FastProbe implements Probe {
        final List<ProbeListener> listeners = new CopyOnWriteArrayList<>();

        @Override
        public String name() {
            return "pan";
        }

        @Override
        public String place() {
            return "here";
        }

        @Override
        public void start(ProbeListener listener) {
            listeners.add(listener);
        }

        @Override
        public void close() {
            // there is nothing to free
        }
    }

    @Test
    void readingsThatCannotBeTaken_areCountedAndSaidOnThePage() throws Exception {
        FastProbe probe = new FastProbe();
        try (Watched pan = new Watched("pan", System::nanoTime, CookJournal.none(), nanos -> probe)) {
            Hearing.await("the start", () -> !probe.listeners.isEmpty());
            CountDownLatch held = new CountDownLatch(1);
            pan.kitchen.withState(state -> await(held));
            for (int i = 0; i < 25_000; i++) {
                probe.listeners.get(0).reading(Reading.good("pan", System.nanoTime(), 71.5, ""));
            }
            held.countDown();
            Hearing.await("it to be said", () -> !pan.reminded("readings-lost").isEmpty());
            long dropped = pan.kitchen.counts().dropped();
            assertThat(dropped).isBetween(4_900L, 5_100L);
            assertThat(pan.reminded("readings-lost").get(0)).startsWith(dropped + " readings were lost");
            assertThat(pan.kitchen.healthy()).isTrue();
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
