package spoonfall.bench;

import com.sun.management.OperatingSystemMXBean;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import spoonfall.cook.Cooks;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.lab.PanSettings;
import spoonfall.lab.Scenario;
import spoonfall.lab.Simulator;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;
import spoonfall.score.Observed;
import spoonfall.score.Scorer;

/** What watching costs: one reading's time and bytes, and a thousand cooks replayed and scored. Prints figures only. */
public final class WatchBench {
    /** Of the cook that is timed and of the first of those that are scored. */
    public static final long SEED = 1;

    private static final int WARM_UPS = 60;
    private static final int TIMED = 40;
    private static final int COOKS = 1000;
    private static final int DIFFERENT_COOKS = 100;

    private WatchBench() {}

    /** Runs all of it. */
    public static void main(String[] args) {
        System.out.printf(
                "Java %s, %d processors, %s%n",
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("os.arch"));
        timeOfAReading();
        bytesOfAReading();
        thousandCooks();
    }

    /** A cook of about two hours, read once a second. */
    public static Trace twoHours(Scenario scenario, long seed) {
        return Simulator.cook(scenario, new PanSettings(6.6, 0.33, 60, 1.35, 1240, 8 / 1.8, 1, 5, 0.08, 0.1), seed);
    }

    private static Trace fourHours() {
        return Simulator.cook(
                Scenario.CLEAN, new PanSettings(10, 0.15, 60, 1.15, 1240, 8 / 1.8, 1, 5, 0.08, 0.1), SEED);
    }

    /** The good readings of a trace. */
    public static List<Reading> readings(Trace trace) {
        return new ArrayList<>(IntStream.range(0, trace.size())
                .filter(i -> trace.temperatureC(i).isPresent())
                .mapToObj(i -> Reading.good(
                        "pan",
                        Math.round(trace.elapsedS(i) * 1e9),
                        trace.temperatureC(i).getAsDouble(),
                        ""))
                .toList());
    }

    private static void timeOfAReading() {
        Trace trace = twoHours(Scenario.CLEAN, SEED);
        List<Reading> readings = readings(trace);
        long[] nanos = new long[TIMED * readings.size()];
        int taken = 0;
        long events = 0;
        for (int cook = 0; cook < WARM_UPS + TIMED; cook++) {
            CookMonitor monitor = new CookMonitor(Cooks.settings(trace), 0);
            for (Reading reading : readings) {
                long begun = System.nanoTime();
                events += monitor.accept(reading).size();
                long took = System.nanoTime() - begun;
                if (cook >= WARM_UPS) {
                    nanos[taken++] = took;
                }
            }
        }
        Arrays.sort(nanos);
        System.out.printf(
                Locale.ROOT,
                "%-52s median %.2f, mean %.2f, p99 %.2f (%,d readings, clock's own %.2f, %d events a cook, seed %d)%n",
                "one reading at 1 Hz, microseconds",
                nanos[nanos.length / 2] / 1e3,
                Arrays.stream(nanos).average().orElseThrow() / 1e3,
                nanos[(int) (0.99 * nanos.length)] / 1e3,
                nanos.length,
                clockMicros(),
                events / (WARM_UPS + TIMED),
                SEED);
    }

    private static double clockMicros() {
        long[] nanos = new long[100_000];
        for (int i = 0; i < nanos.length; i++) {
            long begun = System.nanoTime();
            nanos[i] = System.nanoTime() - begun;
        }
        Arrays.sort(nanos);
        return nanos[nanos.length / 2] / 1e3;
    }

    private static void bytesOfAReading() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        Trace trace = fourHours();
        List<Reading> readings = readings(trace);
        double[] bytes = new double[4];
        for (int round = 0; round < 10; round++) {
            CookMonitor monitor = new CookMonitor(Cooks.settings(trace), 0);
            for (int quarter = 0; quarter < 4; quarter++) {
                int from = quarter * readings.size() / 4;
                int to = (quarter + 1) * readings.size() / 4;
                long before = threads.getThreadAllocatedBytes(thread);
                for (int i = from; i < to; i++) {
                    monitor.accept(readings.get(i));
                }
                bytes[quarter] = (threads.getThreadAllocatedBytes(thread) - before) / (double) (to - from);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%-52s %.0f, %.0f, %.0f, %.0f in its quarters (%.2f h at 1 Hz, seed %d)%n",
                "bytes allocated by a reading of a long cook",
                bytes[0],
                bytes[1],
                bytes[2],
                bytes[3],
                readings.size() / 3600.0,
                SEED);
    }

    private static void thousandCooks() {
        Scenario[] scenarios = Scenario.values();
        List<Trace> traces = IntStream.range(0, DIFFERENT_COOKS)
                .parallel()
                .mapToObj(i -> twoHours(scenarios[i % scenarios.length], SEED + i))
                .toList();
        double hours = traces.stream()
                .mapToDouble(trace -> trace.elapsedS(trace.size() - 1) / 3600)
                .average()
                .orElseThrow();
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        double[] seconds = new double[3];
        double[] processorS = new double[3];
        for (int round = 0; round < seconds.length; round++) {
            long begun = System.nanoTime();
            long usedBefore = system.getProcessCpuTime();
            long alarms = IntStream.range(0, COOKS)
                    .parallel()
                    .mapToLong(i -> {
                        Trace trace = traces.get(i % DIFFERENT_COOKS);
                        return Scorer.score("cook " + i, trace, Observed.of(trace))
                                .falseAlarms()
                                .size();
                    })
                    .sum();
            seconds[round] = (System.nanoTime() - begun) / 1e9;
            processorS[round] = (system.getProcessCpuTime() - usedBefore) / 1e9;
            if (alarms < 0) {
                throw new IllegalStateException("never");
            }
        }
        Arrays.sort(seconds);
        Arrays.sort(processorS);
        System.out.printf(
                Locale.ROOT,
                "%-52s median %.1f, least %.1f, most %.1f; %.1f of processor (%d cooks of %.2f h, ten times; seeds %d to %d)%n",
                "1,000 cooks at 1 Hz replayed and scored, seconds",
                seconds[1],
                seconds[0],
                seconds[2],
                processorS[1],
                DIFFERENT_COOKS,
                hours,
                SEED,
                SEED + DIFFERENT_COOKS - 1);
    }
}
