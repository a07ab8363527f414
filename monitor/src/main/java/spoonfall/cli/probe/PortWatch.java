package spoonfall.cli.probe;

import java.io.PrintWriter;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** Shows what a thermometer says, line by line, and counts its readings by what they are. */
final class PortWatch implements ProbeListener {
    private static final int MOST_LINES_A_SECOND = 10;

    private final PrintWriter out;
    private final Map<Quality, Long> counts = new EnumMap<>(Quality.class);
    private long second;
    private int linesThisSecond;
    private long notShown;

    private PortWatch(PrintWriter out) {
        this.out = out;
    }

    /** Watches for so many seconds, or until the process is told to stop; the counts are printed either way. */
    static void watch(String probe, double seconds, PrintWriter out) throws InterruptedException {
        ProbeSpec spec = ProbeSpec.parse(probe.indexOf(':') < 0 ? "auto:" + probe : probe);
        PortWatch watch = new PortWatch(out);
        CountDownLatch stopped = new CountDownLatch(1);
        Thread hook = new Thread(
                () -> {
                    stopped.countDown();
                    watch.summary();
                },
                "stop");
        Runtime.getRuntime().addShutdownHook(hook);
        try (Probe opened = spec.open("probe", System::nanoTime)) {
            opened.start(watch);
            boolean told = stopped.await((long) Math.min(1e9, seconds * 1000), TimeUnit.MILLISECONDS);
            if (!told) {
                Runtime.getRuntime().removeShutdownHook(hook);
            }
        }
        if (stopped.getCount() > 0) {
            watch.summary();
        }
    }

    @Override
    public synchronized void reading(Reading reading) {
        counts.merge(reading.quality(), 1L, Long::sum);
        long now = reading.atNanos() / 1_000_000_000L;
        if (now != second) {
            second = now;
            linesThisSecond = 0;
        }
        if (++linesThisSecond > MOST_LINES_A_SECOND) {
            notShown++;
            return;
        }
        String value = reading.temperatureC().isPresent()
                ? String.format(Locale.ROOT, "%.2f °C", reading.temperatureC().getAsDouble())
                : words(reading.quality());
        out.printf(Locale.ROOT, "%14s   %s%n", value, reading.raw());
    }

    @Override
    public synchronized void found(String probe, String description, long atNanos) {
        out.println(description);
    }

    @Override
    public synchronized void lost(String probe, String trouble, long atNanos) {
        out.println(trouble);
    }

    @Override
    public synchronized void ended(String probe, long atNanos) {
        out.println("The recording is over.");
    }

    private synchronized void summary() {
        String text = counts.entrySet().stream()
                .map(entry -> entry.getValue() + " " + words(entry.getKey()))
                .collect(Collectors.joining(", "));
        out.println(text.isEmpty() ? "Nothing was heard." : "Heard: " + text + ".");
        if (notShown > 0) {
            out.println("(" + notShown + " of them were not shown: more than " + MOST_LINES_A_SECOND + " a second.)");
        }
        out.flush();
    }

    private static String words(Quality quality) {
        return quality.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
