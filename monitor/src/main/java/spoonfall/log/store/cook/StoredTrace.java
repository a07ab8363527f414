package spoonfall.log.store.cook;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import spoonfall.calibration.Correction;
import spoonfall.cook.CookSettings;
import spoonfall.log.CookBasis;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.CookRecord;
import spoonfall.log.RecordedTrace;
import spoonfall.probe.Quality;
import spoonfall.probe.Reading;
import spoonfall.probe.trace.Trace;

/** A cook out of the record as a trace: the good readings of the thermometer that it followed, corrected. */
public final class StoredTrace {
    private StoredTrace() {}

    /** The trace of a cook, measured against what it was last measured against. */
    public static Trace of(StoredCook cook) {
        CookHeader header = cook.header();
        String first = header.basis().probes().get(0);
        Map<String, Correction> corrections = new HashMap<>(header.corrections());
        CookRecord record = new CookRecord();
        for (CookInput input : cook.inputs()) {
            if (input instanceof CookInput.Heard heard && heard.probe().equals(first)) {
                Optional<Correction> correction = Optional.ofNullable(corrections.get(first));
                heard.shownC().ifPresent(shownC -> {
                    double trueC = correction.map(one -> one.trueC(shownC)).orElse(shownC);
                    if (Reading.qualityOf(trueC) == Quality.GOOD) {
                        record.add(heard.takenMillis() / 1000.0, trueC);
                    }
                });
            } else if (input instanceof CookInput.Word word && word.kind().equals("correction")) {
                String probe = CookJson.text(word.detail(), "probe");
                CookJson.correction(word.detail())
                        .ifPresentOrElse(one -> corrections.put(probe, one), () -> corrections.remove(probe));
            }
        }
        return RecordedTrace.of(record, settings(cook), header.batch(), Optional.of(header.startedAt()), cook.notes());
    }

    /** What a cook was last measured against. */
    public static CookSettings settings(StoredCook cook) {
        CookSettings settings = cook.header().basis().settings();
        for (CookInput input : cook.inputs()) {
            if (input instanceof CookInput.Word word && word.kind().equals("basis")) {
                CookBasis basis = CookJson.basis(word.detail());
                settings = basis.settings();
            }
        }
        return settings;
    }
}
