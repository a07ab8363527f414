package spoonfall.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;
import spoonfall.log.TraceReplay;
import spoonfall.probe.trace.Trace;

/** What {@code ./bench} measures: start, wire to page, replay, idling. Prints figures; judges nothing. */
public final class Bench {
    private static final int STARTS = 9;
    private static final int READINGS = 400;
    private static final double IDLE_S = 30;
    private static final int REPLAYS = 600;

    private Bench() {}

    /** Runs everything; {@code args[0]} is the launcher. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path launcher = Path.of(args[0]);
        System.out.printf(
                "Java %s, %d cores%n",
                System.getProperty("java.version"), Runtime.getRuntime().availableProcessors());
        start(launcher);
        for (int pages : new int[] {1, 20}) {
            wireToPage(launcher, pages);
        }
        idle(launcher);
        replay();
    }

    private static void start(Path launcher) throws IOException, InterruptedException {
        double[] seconds = new double[STARTS];
        double[] megabytes = new double[STARTS];
        for (int i = 0; i < STARTS; i++) {
            try (ServedKitchen kitchen = ServedKitchen.start(launcher)) {
                seconds[i] = kitchen.firstPageS();
                megabytes[i] = kitchen.residentMb();
            }
        }
        print("cold start to first page, s", seconds, "%.2f");
        print("resident after the first page, MB", megabytes, "%.0f");
    }

    private static void wireToPage(Path launcher, int pages) throws IOException, InterruptedException {
        try (ServedKitchen kitchen = ServedKitchen.start(launcher)) {
            double[] millis = kitchen.latenciesMillis(READINGS, 10, pages);
            Arrays.sort(millis);
            System.out.printf(
                    Locale.ROOT,
                    "%-46s median %.1f, p99 %.1f, most %.1f (%d readings at 10 a second)%n",
                    "wire to page with " + pages + (pages == 1 ? " page, ms" : " pages, ms"),
                    millis[millis.length / 2],
                    millis[(int) Math.ceil(0.99 * millis.length) - 1],
                    millis[millis.length - 1],
                    millis.length);
        }
    }

    private static void idle(Path launcher) throws IOException, InterruptedException {
        try (ServedKitchen kitchen = ServedKitchen.start(launcher)) {
            kitchen.latenciesMillis(10, 1, 1);
            double share = kitchen.cpuShare(IDLE_S);
            System.out.printf(
                    Locale.ROOT, "%-46s %.2f%n", "processor time with a probe at 1 Hz and a page, %", 100 * share);
        }
    }

    private static void replay() {
        Trace trace = Cooks.trace(Scenario.CLEAN, 1);
        double[] perMinute = new double[5];
        for (int round = 0; round < perMinute.length; round++) {
            long begun = System.nanoTime();
            long readings = 0;
            for (int i = 0; i < REPLAYS; i++) {
                TraceReplay replay = new TraceReplay(trace, Cooks.settings(trace));
                while (replay.hasNext()) {
                    replay.next();
                    readings++;
                }
            }
            perMinute[round] = readings / ((System.nanoTime() - begun) / 60e9) / 1e6;
        }
        print("replay on one thread, million readings a minute", perMinute, "%.1f");
    }

    private static void print(String what, double[] values, String format) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        String line = "%-46s median " + format + ", least " + format + ", most " + format + " (%d runs)%n";
        System.out.printf(
                Locale.ROOT,
                line,
                what,
                sorted[sorted.length / 2],
                sorted[0],
                sorted[sorted.length - 1],
                sorted.length);
    }
}
