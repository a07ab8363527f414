package spoonfall.kitchen.again;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.cook.CookEvent;
import spoonfall.kitchen.afternoon.AfternoonWord;
import spoonfall.kitchen.cook.Cook;
import spoonfall.kitchen.cook.PanCook;
import spoonfall.kitchen.cook.PanTeller;
import spoonfall.kitchen.cook.Words;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.planned.PlannedBatch;

/** Gives a pan again, one by one, what went into a cook that an earlier run left. Used by the kitchen's thread alone. */
final class PanRecall {
    private static final Logger LOG = LoggerFactory.getLogger(PanRecall.class);

    private final Pan pan;
    private final PanCook cook;
    private final PanTeller teller;
    private final Thermometers thermometers;
    private final Resumption resumption;

    PanRecall(Pan pan, PanCook cook, PanTeller teller, Thermometers thermometers, Resumption resumption) {
        this.pan = pan;
        this.cook = cook;
        this.teller = teller;
        this.thermometers = thermometers;
        this.resumption = resumption;
    }

    /** Takes one of them. */
    void take(CookInput input) {
        Optional<Cook> now = cook.now();
        if (now.isEmpty()) {
            return;
        }
        long atNanos = now.get().nanosAt(input.takenMillis());
        if (input instanceof CookInput.Heard heard) {
            hear(heard, now.get(), atNanos);
        } else if (input instanceof CookInput.Word word) {
            say(word, now.get(), atNanos);
        }
    }

    private void hear(CookInput.Heard heard, Cook current, long atNanos) {
        if (heard.probe().equals(thermometers.first().name())) {
            teller.happened(current.accept(resumption.reading(heard, atNanos)));
            pan.followAfternoon(atNanos);
        } else {
            teller.happened(current.monitor().advanceTo(atNanos));
            current.monitor().compare(resumption.reading(heard, current.nanosAt(heard.atMillis())));
        }
    }

    private void say(CookInput.Word word, Cook current, long atNanos) {
        ObjectNode detail = word.detail();
        switch (word.kind()) {
            case Words.ACKNOWLEDGE -> pan.alarms().acknowledge(CookJson.text(detail, "id"), atNanos);
            case Words.SHELVE ->
                pan.alarms().shelve(CookJson.text(detail, "id"), (int) CookJson.number(detail, "minutes"), atNanos);
            case Words.UNSHELVE -> pan.alarms().unshelve(CookJson.text(detail, "id"), atNanos);
            case Words.BASIS -> pan.rebase(resumption.basis(CookJson.basis(detail)), atNanos);
            case Words.CORRECTION -> resumption.correct(CookJson.text(detail, "probe"), CookJson.correction(detail));
            case Words.SET_TEST -> pan.say(Words.testWord(detail), atNanos);
            case Words.AFTERNOON -> sayOfOld(AfternoonWord.of(detail), atNanos);
            case Words.PLAN -> pan.batch().isIn(PlannedBatch.of(detail));
            case Words.FILLED -> pan.batch().plans().filled((int) CookJson.number(detail, "jars"));
            case Words.TYPED -> pan.typed().took(Words.entry(detail, cook.timeS(atNanos), atNanos));
            case Words.TAKEN_BACK -> {
                current.withoutLast();
                pan.typed().tookBack(detail.path("id").asText());
                pan.rebase(resumption.basis(), atNanos);
            }
            case Words.REMINDED -> teller.saidBefore(detail);
            case Words.CLOCK_SET -> cook.is(current.withClockSet((long) CookJson.number(detail, "byMillis")));
            case Words.CAME_BACK -> comeBack(detail, current, atNanos);
            case Words.RECOOK -> {
                // it moves nothing in this cook
            }
            case Words.RECORDING -> pan.recorded(Resumption.unrecorded(detail), current, atNanos);
            default -> resumption.unknown(word.kind());
        }
    }

    private void comeBack(ObjectNode detail, Cook current, long atNanos) {
        if (detail.has("leftMillis")) { // it was watched for longer than it was read
            long leftMillis = (long) CookJson.number(detail, "leftMillis");
            teller.happened(current.monitor().advanceTo(current.nanosAt(leftMillis)));
        }
        List<CookEvent> events = current.monitor().comeBack(atNanos);
        teller.happened(events);
    }

    /** A word on the afternoon, of a time when cooks kept them: it goes into the diary. */
    private void sayOfOld(AfternoonWord word, long atNanos) {
        if (!pan.afternoon().recalled()) {
            try {
                pan.afternoon().say(word, atNanos);
            } catch (IllegalArgumentException e) {
                LOG.warn("a word on the afternoon is passed over: {}", e.getMessage());
            }
        }
    }
}
