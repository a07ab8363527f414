package spoonfall.kitchen.thermometer;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import spoonfall.calibration.Plateau;
import spoonfall.calibration.Point;
import spoonfall.calibration.Reference;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/**
 * A thermometer in boiling water or ice, waited for until it stands still. Sees what it shows, uncorrected. Time is
 * that of the readings.
 */
final class Check {
    private static final double SHOWN_FOR_S = 120;
    private static final int MOST_SHOWN = 120;

    /** What was found no longer holds when it climbs on by so much: it was not boiling yet. */
    private static final double CLIMBED_ON_C = 0.3;

    private final String probe;
    private final Reference.Kind in;
    private final Optional<Point> boiled;
    private final Deque<CheckView.Shown> shown = new ArrayDeque<>();
    private Plateau plateau;
    private double beganS = Double.NaN;
    private OptionalDouble latestC = OptionalDouble.empty();
    private Optional<Point> found = Optional.empty();
    private String why = "Nothing has come from the thermometer yet.";

    /**
     * A check that has seen nothing.
     *
     * @param probe the thermometer's name
     * @param sought what it is compared with
     * @param boiled its plateau in boiling water, when this one is in ice and follows it
     */
    Check(String probe, Reference sought, Optional<Point> boiled) {
        this.probe = probe;
        this.in = sought.kind();
        this.boiled = boiled;
        plateau = new Plateau(sought);
    }

    String probe() {
        return probe;
    }

    Reference.Kind in() {
        return in;
    }

    Optional<Point> found() {
        return found;
    }

    Optional<Point> boiled() {
        return boiled;
    }

    String why() {
        return why;
    }

    /** The reference is another one: what was seen is judged anew. */
    void seek(Reference sought) {
        plateau = new Plateau(sought);
        found = Optional.empty();
        shown.forEach(one -> judge(one.s(), one.temperatureC()));
    }

    /** Takes an uncorrected reading; bad ones tell nothing. */
    void accept(Reading raw) {
        if (raw.quality() != Quality.GOOD) {
            return;
        }
        double atS = raw.atNanos() / 1e9;
        if (Double.isNaN(beganS)) {
            beganS = atS;
        }
        double s = atS - beganS;
        double temperatureC = raw.temperatureC().orElseThrow();
        latestC = OptionalDouble.of(temperatureC);
        if (shown.isEmpty() || s - shown.getLast().s() >= SHOWN_FOR_S / MOST_SHOWN) {
            shown.addLast(new CheckView.Shown(s, temperatureC));
        }
        while (shown.size() > MOST_SHOWN || shown.getFirst().s() < s - SHOWN_FOR_S) {
            shown.removeFirst();
        }
        judge(s, temperatureC);
    }

    /** A plateau stays found when the heat goes off, and not when the water had not boiled yet. */
    private void judge(double s, double temperatureC) {
        Plateau.Verdict verdict = plateau.accept(s, temperatureC);
        if (verdict.point().isPresent()) {
            found = verdict.point();
        } else if (found.isPresent() && temperatureC > found.get().shownC() + CLIMBED_ON_C) {
            found = Optional.empty();
        }
        why = found.map(point ->
                        String.format(Locale.ROOT, "It has stood still for a minute, at {temp:%.2f}.", point.shownC()))
                .orElse(verdict.why());
    }

    CheckView view(Optional<Reference> reference, OptionalDouble waterBoilC, Optional<String> cannotCorrect) {
        Optional<Point> point = found.map(one -> reference.map(one::with).orElse(one));
        Optional<Point> compared = point.filter(one -> reference.isPresent());
        return new CheckView(
                probe,
                CheckView.In.of(in),
                why,
                latestC,
                List.copyOf(shown),
                known(reference.map(Reference::temperatureC)),
                known(point.map(Point::shownC)),
                known(compared.map(Point::correctionC)),
                known(compared.map(Point::half95C)),
                waterBoilC,
                cannotCorrect,
                boiled.isPresent());
    }

    private static OptionalDouble known(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
