package spoonfall.kitchen;

import spoonfall.calibration.Correction;
import spoonfall.probe.Probe;
import spoonfall.probe.ProbeListener;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** A probe whose good readings are made true by its calibration; what it sent stays as the raw text. */
public final class CorrectedProbe implements Probe {
    private final Probe probe;
    private final Correction correction;
    private final String since;

    /**
     * A probe that has not started.
     *
     * @param probe the thermometer
     * @param correction its calibration
     * @param since a few words on when it was made, for people
     */
    public CorrectedProbe(Probe probe, Correction correction, String since) {
        this.probe = probe;
        this.correction = correction;
        this.since = since;
    }

    @Override
    public String name() {
        return probe.name();
    }

    @Override
    public String place() {
        return probe.place();
    }

    @Override
    public void start(ProbeListener listener) {
        probe.start(new ProbeListener() {
            @Override
            public void reading(Reading reading) {
                listener.reading(corrected(reading));
            }

            @Override
            public void found(String name, String description, long atNanos) {
                listener.found(name, description + "; " + since, atNanos);
            }

            @Override
            public void lost(String name, String trouble, long atNanos) {
                listener.lost(name, trouble, atNanos);
            }

            @Override
            public void ended(String name, long atNanos) {
                listener.ended(name, atNanos);
            }
        });
    }

    private Reading corrected(Reading reading) {
        if (reading.quality() != Quality.GOOD) {
            return reading;
        }
        double trueC = correction.trueC(reading.temperatureC().orElseThrow());
        Quality quality = Reading.qualityOf(trueC);
        return quality == Quality.GOOD
                ? Reading.good(reading.probe(), reading.atNanos(), trueC, reading.raw())
                : Reading.bad(reading.probe(), reading.atNanos(), reading.raw(), quality);
    }

    @Override
    public void close() {
        probe.close();
    }
}
