package spoonfall.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import spoonfall.cook.Cooks;
import spoonfall.lab.Scenario;
import spoonfall.log.store.ManyCooks;
import spoonfall.probe.trace.Trace;

/** What the batch book costs when very many cooks are in it. Prints figures; judges nothing. */
public final class BookBench {
    private static final long SEED = 1;
    private static final int DRAWN_OF_EACH = 4;
    private static final int ASKED = 30;
    private static final int OPENED = 15;

    /** What is looked for: all, the end, words that are rare, common and nowhere, a fruit, a set, days, and several at once. */
    private static final List<String> QUESTIONS = List.of(
            "",
            "?page=400",
            "?text=weeps",
            "?text=ginger",
            "?text=no+such+word",
            "?text=batch+777",
            "?fruit=quince",
            "?set=runny",
            "?from=2020-01-01&until=2020-12-31",
            "?text=skimmed&fruit=damson&set=firm&from=2019-01-01");

    private BookBench() {}

    /** Runs everything; {@code args[0]} is the launcher, {@code args[1]} how many cooks there are to be. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("spoonfall-book");
        Path file = folder.resolve("cooks.db");
        int cooks = Integer.parseInt(args[1]);
        fill(file, cooks);
        try (BookedKitchen kitchen = BookedKitchen.start(Path.of(args[0]), folder)) {
            for (String question : QUESTIONS) {
                asked(kitchen, "list " + (question.isEmpty() ? "of all" : question), "/api/book" + question);
            }
            asked(kitchen, "one cook", "/api/book/" + cooks / 2);
            asked(kitchen, "its climb", "/api/book/" + cooks / 2 + "/climb");
            BookedPage.print(kitchen.address(), cooks, OPENED);
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path one : files.sorted((a, b) -> b.compareTo(a)).toList()) {
                    Files.delete(one);
                }
            }
        }
    }

    private static void fill(Path file, int cooks) throws IOException {
        List<Trace> drawn = Stream.of(Scenario.CLEAN, Scenario.STALL, Scenario.PAST, Scenario.SET_TESTS)
                .flatMap(scenario -> Stream.iterate(SEED, seed -> seed + 1)
                        .limit(DRAWN_OF_EACH)
                        .map(seed -> WatchBench.twoHours(scenario, seed)))
                .toList();
        long begun = System.nanoTime();
        ManyCooks.fill(file, drawn, Cooks.settings(drawn.get(0)), cooks, SEED);
        long readings = ManyCooks.readings(file);
        System.out.printf(
                Locale.ROOT,
                "%d cooks of %d readings each, made in %.0f s; %d MB, %.2f bytes a reading, all in all %.2f%n",
                cooks,
                readings / cooks,
                (System.nanoTime() - begun) / 1e9,
                Files.size(file) / 1_000_000,
                ManyCooks.readingBytes(file) / (double) readings,
                Files.size(file) / (double) readings);
    }

    /** What of it is processor time tells what it would take on a machine that has nothing else to do. */
    private static void asked(BookedKitchen kitchen, String what, String path)
            throws IOException, InterruptedException {
        double before = kitchen.cpuS();
        double[] millis = kitchen.millis(path, ASKED);
        double cpuMillis = 1000 * (kitchen.cpuS() - before) / ASKED;
        print(String.format(Locale.ROOT, "%s, ms (%.0f of the processor)", what, cpuMillis), millis);
    }

    /** Prints the middle one of some times, the longest and the first. */
    static void print(String what, double[] millis) {
        double[] sorted = millis.clone();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%-84s median %.0f, most %.0f, the first %.0f (%d runs)%n",
                what,
                sorted[sorted.length / 2],
                sorted[sorted.length - 1],
                millis[0],
                millis.length);
    }
}
