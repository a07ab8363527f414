package spoonfall.kitchen.thermometer;

import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.calibration.Correction;
import spoonfall.cook.Pace;
import spoonfall.cook.ProbeTrust;
import spoonfall.log.CalibrationBook;
import spoonfall.probe.Probe;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.SensorClass;
import spoonfall.probe.hand.HandProbe;

/** One thermometer: how it is, and what makes its readings true. Used by the kitchen's thread alone. */
public final class Thermometer {
    private static final Logger LOG = LoggerFactory.getLogger(Thermometer.class);

    private final String name;
    private final String place;
    private final Thermometry thermometry;
    private final Optional<SensorClass> sensorClass;
    private final boolean byHand;
    private String identity;
    private Optional<CalibrationBook.Entry> calibration = Optional.empty();
    private Optional<String> bookTrouble = Optional.empty();
    private ProbeState.State state = ProbeState.State.WAITING;
    private String detail = "";

    /** The thermometer of a probe, as it is plugged in now. */
    public Thermometer(Probe probe, Thermometry thermometry) {
        name = probe.name();
        place = probe.place();
        byHand = probe instanceof HandProbe;
        this.thermometry = thermometry;
        sensorClass = thermometry.sensorClass().apply(name);
        identity = thermometry.identity().apply(name).orElse(place);
        readBook();
    }

    /** As the kitchen calls it. */
    public String name() {
        return name;
    }

    String place() {
        return place;
    }

    /** Whether somebody reads it and types what it shows. */
    public boolean byHand() {
        return byHand;
    }

    String identity() {
        return identity;
    }

    /** One sentence on how it is, for people; may be empty. */
    public String detail() {
        return detail;
    }

    /** How it is. */
    public ProbeState.State state() {
        return state;
    }

    /** Whether it says nothing more for now: it was unplugged, or its recording is over. */
    public boolean isGone() {
        return state == ProbeState.State.LOST || state == ProbeState.State.ENDED;
    }

    Optional<CalibrationBook.Entry> calibration() {
        return calibration;
    }

    /** What makes its readings true now; empty if they are taken as they are. */
    public Optional<Correction> correction() {
        return calibration.map(CalibrationBook.Entry::correction);
    }

    /**
     * It was plugged in, perhaps another one: the calibration is that of the one that is there. If the book of them cannot be read now,
     * another one is taken at its word until it can: what the first was off by says nothing of it.
     */
    public void identify(String newIdentity) {
        if (identity.equals(newIdentity) && bookTrouble.isEmpty()) {
            return;
        }
        identity = newIdentity;
        try {
            readBook();
        } catch (IllegalArgumentException | UncheckedIOException e) {
            calibration = Optional.empty();
            bookTrouble = Optional.of("Whether it was ever checked is not known: " + e.getMessage() + ".");
            LOG.warn("{} is taken at its word: {}", name, e.getMessage());
        }
    }

    /** Why its calibration is not known; empty if the book of them could be read. */
    public Optional<String> bookTrouble() {
        return bookTrouble;
    }

    /** Takes the calibration that counts for it from the book. */
    void readBook() {
        calibration = thermometry.book().flatMap(book -> book.latest(identity));
        bookTrouble = Optional.empty();
    }

    /** A reading made true; what it sent stays as the raw text. */
    public Reading corrected(Reading raw) {
        return corrected(raw, correction());
    }

    /** The same by another correction, as when a cook is gone through again. */
    public static Reading corrected(Reading raw, Optional<Correction> correction) {
        if (raw.quality() != Quality.GOOD || correction.isEmpty()) {
            return raw;
        }
        double trueC = correction.get().trueC(raw.temperatureC().orElseThrow());
        Quality quality = Reading.qualityOf(trueC);
        return quality == Quality.GOOD
                ? Reading.good(raw.probe(), raw.atNanos(), trueC, raw.raw())
                : Reading.bad(raw.probe(), raw.atNanos(), raw.raw(), quality);
    }

    /** The true temperature in °C for one that it shows. */
    double trueC(double shownC) {
        return correction().map(one -> one.trueC(shownC)).orElse(shownC);
    }

    /** What it shows in °C at a true temperature near boiling. */
    double shownC(double trueC) {
        return trueC - (trueC(trueC) - trueC);
    }

    /** How far it may be off at {@code temperatureC}, in °C, 19 times of 20: by its calibration, its class or neither. */
    double doubtC(double temperatureC) {
        double classC = classLimitC(temperatureC);
        return calibration
                .map(entry -> entry.correction().half95C(shownC(temperatureC), classC))
                .orElse(classC);
    }

    /** The limit in °C of its class; that of K 2, 2.5 °C, if nobody said which (common practice, no source). */
    double classLimitC(double temperatureC) {
        return sensorClass.orElse(SensorClass.K_2).limitC(temperatureC);
    }

    ProbeTrust trust(double temperatureC) {
        return new ProbeTrust(
                name,
                calibration.isPresent() ? OptionalDouble.of(doubtC(temperatureC)) : OptionalDouble.empty(),
                byHand ? Pace.BY_HAND : Pace.BY_ITSELF);
    }

    /** Whether that changed anything. */
    public boolean becomes(ProbeState.State newState, String newDetail) {
        boolean news = newState != state || !newDetail.equals(detail);
        state = newState;
        detail = newDetail;
        return news;
    }

    /** The same, with nothing else to say of it. */
    public boolean becomes(ProbeState.State newState) {
        return becomes(newState, detail);
    }

    /** How it is, for others; {@code due} says why it ought to be checked. */
    ProbeState view(double temperatureC, Optional<String> due) {
        return new ProbeState(
                name,
                place,
                state,
                detail,
                calibration.map(entry -> Calibrated.of(entry, doubtC(temperatureC), classLimitC(temperatureC))),
                due);
    }
}
