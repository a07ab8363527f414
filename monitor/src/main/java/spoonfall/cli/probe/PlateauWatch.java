package spoonfall.cli.probe;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import spoonfall.calibration.Plateau;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;
import spoonfall.cli.option.CommandException;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.ProbeSpec;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.words.Plain;

/** Listens to a thermometer until it stands still, and says why it does not yet. */
final class PlateauWatch implements AutoCloseable {
    private static final int MOST_WAITING = 10_000;

    private final Probe probe;
    private final double minutes;
    private final PrintWriter out;
    private final BlockingQueue<Reading> readings = new LinkedBlockingQueue<>(MOST_WAITING);

    private PlateauWatch(Probe probe, double minutes, PrintWriter out) {
        this.probe = probe;
        this.minutes = minutes;
        this.out = out;
    }

    static PlateauWatch open(ProbeSpec spec, double minutes, double speed, PrintWriter out) {
        long start = System.nanoTime();
        Probe probe = spec.open("pan", () -> (long) ((System.nanoTime() - start) * speed));
        PlateauWatch watch = new PlateauWatch(probe, minutes, out);
        watch.probe.start(watch.new Ear());
        return watch;
    }

    /** Waits for a plateau at {@code reference}. */
    Point await(Reference reference) throws InterruptedException {
        readings.clear();
        out.println("It waits up to " + minutes() + " for a minute that stands still. Ctrl-C stops it.");
        Plateau plateau = new Plateau(reference);
        long untilNanos = System.nanoTime() + (long) (minutes * 60e9);
        String said = "";
        while (System.nanoTime() - untilNanos < 0) {
            Reading reading = readings.poll(1, TimeUnit.SECONDS);
            if (reading == null) {
                continue;
            }
            double shownC = reading.temperatureC().orElseThrow();
            Plateau.Verdict verdict = plateau.accept(reading.atNanos() / 1e9, shownC);
            if (verdict.point().isPresent()) {
                return verdict.point().get();
            }
            if (!verdict.why().equals(said)) {
                said = verdict.why();
                out.printf(Locale.ROOT, "%8.2f °C  %s%n", shownC, Plain.text(said));
            }
        }
        throw new CommandException("it did not stand still within " + minutes()
                + (said.isEmpty() ? ": nothing readable came from the thermometer" : ": " + Plain.text(said)));
    }

    private String minutes() {
        String number = BigDecimal.valueOf(minutes).stripTrailingZeros().toPlainString();
        return number + (minutes == 1 ? " minute" : " minutes");
    }

    @Override
    public void close() {
        probe.close();
    }

    private final class Ear implements ProbeListener {
        @Override
        public void reading(Reading reading) {
            if (reading.quality() == Quality.GOOD && !readings.offer(reading)) {
                readings.poll();
            }
        }

        @Override
        public void found(String name, String description, long atNanos) {
            out.println(description);
        }

        @Override
        public void lost(String name, String trouble, long atNanos) {
            out.println(trouble);
            out.println("It is looked for all the while.");
        }

        @Override
        public void ended(String name, long atNanos) {
            out.println("The recording is over.");
        }
    }
}
