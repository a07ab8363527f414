package spoonfall.kitchen.cook;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookSettings;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Pace;
import spoonfall.cook.ProbeTrust;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.cook.monitor.Retelling;
import spoonfall.estimate.warming.PanPrior;
import spoonfall.kitchen.told.Climb;
import spoonfall.log.CookRecord;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.words.Storyteller;

/**
 * What begins with the first reading of a cook.
 *
 * @param monitor judges it
 * @param story tells it
 * @param record its readings
 * @param climb its picture
 * @param startedAt the wall clock at its first reading
 * @param originNanos the same on the readings' scale
 */
public record Cook(
        CookMonitor monitor, Storyteller story, CookRecord record, Climb climb, Instant startedAt, long originNanos) {

    /** A cook that begins with a reading at that instant. */
    public static Cook start(CookSettings settings, List<ProbeTrust> trusts, long originNanos, Instant startedAt) {
        CookMonitor monitor = new CookMonitor(settings, originNanos, trusts);
        monitor.foretell();
        return new Cook(monitor, story(trusts), new CookRecord(), new Climb(), startedAt, originNanos);
    }

    private static Storyteller story(List<ProbeTrust> trusts) {
        return new Storyteller(trusts.isEmpty() ? Pace.BY_ITSELF : trusts.get(0).pace());
    }

    /** Takes a reading of the followed thermometer, corrected, and returns what came of it. */
    public List<CookEvent> accept(Reading reading) {
        List<CookEvent> events = monitor.accept(reading);
        if (reading.quality() == Quality.GOOD) {
            record.add(monitor.timeS(), reading.temperatureC().orElseThrow());
        }
        return events;
    }

    /** Puts how the pan is into the picture; of a thermometer that is read by hand, only what was seen. */
    public void draw(CookStatus status, boolean byHand) {
        if (byHand) {
            climb.addSeen(status);
        } else {
            climb.add(status);
        }
    }

    /** The latest reading was a mistake. */
    public void withoutLast() {
        record.removeLast();
        climb.cutAfter(record.t(record.size() - 1));
    }

    /** The same by a wall clock that was set by so many milliseconds. */
    public Cook withClockSet(long byMillis) {
        return new Cook(monitor, story, record, climb, startedAt.plusMillis(byMillis), originNanos);
    }

    /** Milliseconds of the cook at an instant on the readings' scale. */
    long millisAt(long atNanos) {
        return Math.floorDiv(atNanos - originNanos + 500_000, 1_000_000L);
    }

    /** The instant on the readings' scale of a millisecond of the cook. */
    public long nanosAt(long millis) {
        return originNanos + millis * 1_000_000L;
    }

    /** Milliseconds of the cook up to which it has been watched. */
    public long takenMillis() {
        return Math.round(monitor.timeS() * 1000);
    }

    /** The same readings up to {@code atNanos}, measured against something else; {@code plan} is what a plan tells the forecast. */
    public Cook again(
            CookSettings settings, String probe, List<ProbeTrust> trusts, long atNanos, Optional<PanPrior> plan) {
        CookMonitor next = new CookMonitor(settings, originNanos, trusts);
        plan.ifPresent(next::expect);
        Retelling words = monitor.retelling(next);
        for (int i = 0; i < record.size(); i++) {
            long heardNanos = originNanos + Math.round(record.t(i) * 1e9);
            words.until(heardNanos);
            next.accept(Reading.good(probe, heardNanos, record.temperatureC(i), ""));
        }
        long nowNanos = Math.max(atNanos, originNanos + Math.round(monitor.timeS() * 1e9));
        words.until(nowNanos + 1);
        next.advanceTo(nowNanos);
        next.foretell();
        return new Cook(next, story(trusts), record, climb, startedAt, originNanos);
    }
}
