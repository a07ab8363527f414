package spoonfall.kitchen.again;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoonfall.calibration.Correction;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookEvent;
import spoonfall.cook.CookStatus;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.estimate.warming.PanPrior;
import spoonfall.kitchen.cook.AlarmAnswers;
import spoonfall.kitchen.cook.Cook;
import spoonfall.kitchen.cook.Words;
import spoonfall.kitchen.plan.PlannedCook;
import spoonfall.log.CookBasis;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.planned.PlannedBatch;
import spoonfall.probe.Reading;
import spoonfall.words.Outlook;
import spoonfall.words.Saying;

/**
 * A cook out of the record, gone through again as it was watched: every reading and every word in its place, with what was said at each
 * second. What cannot be taken, a newer Spoonfall's words perhaps, is passed over.
 */
public final class CookAgain {
    /** A record that has its cook begun anew again and again may cost so many readings; what comes after them is passed over. */
    private static final long MOST_READ_AGAIN = 1_000_000;

    private final Witness witness;
    private final Map<String, Correction> corrections;
    private CookBasis basis;
    private Optional<PanPrior> prior = Optional.empty();
    private Cook cook;
    private long nextS;
    private long leftToReadAgain = MOST_READ_AGAIN;

    private CookAgain(CookHeader header, Witness witness) {
        this.witness = witness;
        corrections = new HashMap<>(header.corrections());
        basis = header.basis();
        cook = Cook.start(basis.settings(), basis.trusts(), 0, header.startedAt());
    }

    /** Whoever watches a cook that is gone through again. */
    public interface Witness {
        /** Something came out of the cook. */
        void happened(CookEvent event);

        /**
         * A whole second of the cook has passed.
         *
         * @param status how the pan was
         * @param foretold what was told of the forecast
         * @param saying what was said
         */
        void saw(CookStatus status, Optional<CalmForecast.Shown> foretold, Saying saying);

        /** Nobody watched between two seconds of the cook. */
        void away(double fromT, double untilT);
    }

    /**
     * Goes through a cook.
     *
     * @param header what was known at its beginning
     * @param inputs what went into it, in order
     * @param untilMillis milliseconds of the cook up to which to go, at most
     */
    public static void watch(CookHeader header, List<CookInput> inputs, long untilMillis, Witness witness) {
        CookAgain again = new CookAgain(header, witness);
        for (CookInput input : inputs) {
            if (input.takenMillis() > untilMillis) {
                break;
            }
            again.take(input);
        }
        again.lookBefore(untilMillis + 1);
    }

    private void take(CookInput input) {
        long atNanos = cook.nanosAt(input.takenMillis());
        if (input instanceof CookInput.Word word && word.kind().equals(Words.CAME_BACK)) {
            comeBack(word, atNanos);
            return;
        }
        lookBefore(input.takenMillis());
        if (input instanceof CookInput.Heard heard) {
            hear(heard, atNanos);
        } else if (input instanceof CookInput.Word word) {
            try {
                say(word.kind(), word.detail(), atNanos);
            } catch (IllegalArgumentException e) {
                // the record was damaged, or written by others: the cook is told without that word
                cook.monitor().advanceTo(atNanos).forEach(witness::happened);
            }
        }
    }

    private void hear(CookInput.Heard heard, long atNanos) {
        Reading reading = Resumption.reading(heard, atNanos, corrections);
        if (heard.probe().equals(basis.probes().get(0))) {
            cook.accept(reading).forEach(witness::happened);
        } else if (basis.probes().contains(heard.probe())) {
            cook.monitor().advanceTo(atNanos).forEach(witness::happened);
            cook.monitor().compare(reading);
        }
    }

    private void say(String kind, ObjectNode detail, long atNanos) {
        CookMonitor monitor = cook.monitor();
        switch (kind) {
            case Words.ACKNOWLEDGE -> answered(monitor.acknowledge(CookJson.text(detail, "id"), atNanos));
            case Words.SHELVE ->
                answered(
                        monitor.shelve(CookJson.text(detail, "id"), (int) CookJson.number(detail, "minutes"), atNanos));
            case Words.UNSHELVE -> answered(monitor.unshelve(CookJson.text(detail, "id"), atNanos));
            case Words.BASIS -> rebase(CookJson.basis(detail), atNanos);
            case Words.CORRECTION -> {
                String probe = CookJson.text(detail, "probe");
                CookJson.correction(detail)
                        .ifPresentOrElse(one -> corrections.put(probe, one), () -> corrections.remove(probe));
            }
            case Words.SET_TEST -> monitor.say(Words.testWord(detail), atNanos).forEach(witness::happened);
            case Words.PLAN -> {
                prior = PlannedBatch.of(detail).flatMap(PlannedCook::prior);
                prior.ifPresent(monitor::expect);
            }
            case Words.TAKEN_BACK -> {
                if (cook.record().size() > 0) {
                    cook.record().removeLast();
                    rebase(basis, atNanos);
                }
            }
            case Words.RECORDING ->
                monitor.recording(Resumption.unrecorded(detail), atNanos).forEach(witness::happened);
            default -> monitor.advanceTo(atNanos).forEach(witness::happened);
        }
    }

    private void answered(Optional<CookMonitor.Answer> answer) {
        answer.ifPresent(done -> done.events().forEach(witness::happened));
    }

    private void rebase(CookBasis next, long atNanos) {
        leftToReadAgain -= cook.record().size();
        if (leftToReadAgain < 0) {
            return;
        }
        List<CookAlarm> before = cook.monitor().alarms();
        basis = next;
        cook = cook.again(next.settings(), next.probes().get(0), next.trusts(), atNanos, prior);
        AlarmAnswers.putAsideAgain(before, cook.monitor(), atNanos);
    }

    private void comeBack(CookInput.Word word, long atNanos) {
        long leftMillis = Math.min(
                word.takenMillis(),
                Math.max(cook.takenMillis(), word.detail().path("leftMillis").asLong()));
        lookBefore(leftMillis + 1);
        cook.monitor().advanceTo(cook.nanosAt(leftMillis)).forEach(witness::happened);
        cook.monitor().comeBack(atNanos).forEach(witness::happened);
        witness.away(leftMillis / 1000.0, cook.monitor().timeS());
        nextS = Math.max(nextS, (long) Math.ceil(cook.monitor().timeS()));
    }

    /** Looks at the pan at each whole second before a millisecond of the cook, as the page did. */
    private void lookBefore(long millis) {
        for (; nextS * 1000 < millis; nextS++) {
            cook.monitor().advanceTo(cook.nanosAt(nextS * 1000)).forEach(witness::happened);
            CookMonitor monitor = cook.monitor();
            CookStatus status = monitor.status();
            Outlook told = cook.story().tell(status, monitor.foretold(), monitor.alarms(), monitor.tests());
            witness.saw(status, monitor.foretold(), told.saying());
        }
    }
}
