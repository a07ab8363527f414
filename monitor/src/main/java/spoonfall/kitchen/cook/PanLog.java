package spoonfall.kitchen.cook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import spoonfall.calibration.Correction;
import spoonfall.cook.CookEvent;
import spoonfall.cook.Unrecorded;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometer;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.log.CookEventJson;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJournal;
import spoonfall.log.CookJson;
import spoonfall.log.CookNote;
import spoonfall.log.UnfinishedCook;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;

/** Writes into a pan's journal what goes into its cook and what comes out of it. Used by the kitchen's thread alone. */
public final class PanLog {
    private final KitchenPlan plan;
    private final Thermometers thermometers;
    private final CookJournal journal;
    private final Map<String, Correction> corrections = new HashMap<>();
    private int skipEvents;
    private boolean goesAgain;
    private boolean unsettled;
    private @Nullable Cook cook;

    /** Writes into a journal. */
    public PanLog(KitchenPlan plan, Thermometers thermometers, CookJournal journal) {
        this.plan = plan;
        this.thermometers = thermometers;
        this.journal = journal;
    }

    /** A cook begins. */
    public void began(int number, Cook begun) {
        cook = begun;
        skipEvents = 0; // of a cook that could not be gone on with, and was never ended
        corrections.clear();
        Stream.concat(Stream.of(thermometers.first()), thermometers.others().stream())
                .forEach(one -> one.correction().ifPresent(correction -> corrections.put(one.name(), correction)));
        journal.began(new CookHeader(
                number,
                journal.pan(),
                plan.name(),
                plan.batch(),
                plan.source().wireName(),
                plan.speed(),
                begun.startedAt(),
                plan.settings(),
                thermometers.cookBasis(),
                corrections));
    }

    /** A cook that an earlier run left goes on: its events are in the record already. */
    public void resumed(UnfinishedCook left, Cook again, Map<String, Correction> correctionsThen) {
        cook = again;
        corrections.clear();
        corrections.putAll(correctionsThen);
        skipEvents = left.events();
        goesAgain = true;
        journal.resumed(left);
    }

    /** All that the earlier run had written was gone through: what comes now is new. */
    public void caughtUp() {
        goesAgain = false;
    }

    /** Whether what happens is in the record already. */
    boolean again() {
        return goesAgain;
    }

    /** The monitor has taken a reading. */
    public void heard(Cook current, Thermometer thermometer, Reading raw) {
        Optional<Correction> now = thermometer.correction();
        if (!now.equals(Optional.ofNullable(corrections.get(thermometer.name())))) {
            now.ifPresentOrElse(
                    one -> corrections.put(thermometer.name(), one), () -> corrections.remove(thermometer.name()));
            ObjectNode detail = CookJson.correction(now).put("probe", thermometer.name());
            journal.input(new CookInput.Word(current.takenMillis(), Words.CORRECTION, detail));
        }
        OptionalDouble shownC = raw.quality() == Quality.GOOD ? raw.temperatureC() : OptionalDouble.empty();
        long atMillis = current.millisAt(raw.atNanos());
        journal.input(new CookInput.Heard(thermometer.name(), current.takenMillis(), atMillis, shownC, raw.quality()));
    }

    /** Somebody said something that the cook goes by. */
    public void said(Cook current, String kind, ObjectNode detail) {
        if (goesAgain) {
            return;
        }
        journal.input(new CookInput.Word(current.takenMillis(), kind, detail));
        unsettled = true;
    }

    /** Something came out of the cook; statuses are left out. */
    void happened(CookEvent event) {
        String kind = CookEventJson.kind(event);
        if (cook == null || kind.isEmpty()) {
            return;
        }
        if (skipEvents > 0) {
            skipEvents--;
            return;
        }
        journal.event(Math.round(event.t() * 1000), kind, CookEventJson.detail(event));
        unsettled = true;
    }

    /** Somebody wrote a line of the cook. */
    void noted(CookNote note) {
        journal.note(note);
        unsettled = true;
    }

    /** What came out is about to be told: it is written first, if the disk is quick. */
    public void settle() {
        if (unsettled) {
            unsettled = false;
            journal.settle();
        }
    }

    /** The cook has been watched so far. */
    public void alive(Cook current) {
        journal.alive(current.takenMillis());
    }

    /** The cook is over. */
    public void ended(Cook current) {
        cook = null;
        goesAgain = false;
        skipEvents = 0;
        journal.ended(current.takenMillis());
    }

    /** Why nothing can be written just now. */
    public Optional<Unrecorded> trouble() {
        return journal.trouble();
    }
}
