package spoonfall.kitchen.again;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.cook.CookEvent;
import spoonfall.kitchen.cook.Cook;
import spoonfall.kitchen.cook.PanCook;
import spoonfall.kitchen.cook.PanLog;
import spoonfall.kitchen.cook.PanTeller;
import spoonfall.kitchen.cook.Words;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.log.CookBasis;
import spoonfall.log.CookJson;
import spoonfall.log.UnfinishedCook;

/** Coming back to a pan that nobody watched: after a restart, or after the machine slept. Used by the kitchen's thread alone. */
public final class PanReturn {
    private static final Logger LOG = LoggerFactory.getLogger(PanReturn.class);

    private final Pan pan;
    private final PanCook cook;
    private final PanLog log;
    private final PanTeller teller;
    private final KitchenPlan plan;
    private final Thermometers thermometers;

    /** Coming back to that pan. */
    public PanReturn(Pan pan, KitchenPlan plan, Thermometers thermometers) {
        this.pan = pan;
        cook = pan.cook();
        log = pan.log();
        teller = pan.teller();
        this.plan = plan;
        this.thermometers = thermometers;
    }

    /**
     * Goes on with a cook that an earlier run left, unless it was over or is not this kitchen's; one that cannot be gone on
     * with stays in the record as it is, and the next one begins.
     *
     * @param atNanos now, on the readings' scale
     */
    public void after(UnfinishedCook left, long atNanos) {
        if (!Resumption.worthwhile(left, plan, thermometers)) {
            return;
        }
        try {
            resume(left, atNanos);
            boolean over = cook.status()
                    .filter(status -> Resumption.over(left, status.stage()))
                    .isPresent();
            if (over) {
                nextCook(atNanos);
            }
        } catch (RuntimeException e) {
            LOG.error("the cook that was left cannot be gone on with; a new one begins", e);
            cook.over();
            log.caughtUp();
            nextCook(atNanos);
        }
    }

    /** An afternoon that somebody is in the middle of goes on. */
    private void nextCook(long atNanos) {
        pan.afternoon().caughtUp();
        pan.endCook();
        if (!pan.afternoon().underWay()) {
            pan.afternoon().begin(atNanos);
        }
    }

    /** All that went into the cook is gone through again, so that everything stands as it stood. */
    private void resume(UnfinishedCook left, long atNanos) {
        CookBasis asked = thermometers.cookBasis();
        Resumption resumption = new Resumption(left, plan, thermometers, atNanos);
        pan.number(left.header().number());
        Cook begun = resumption.cook();
        cook.is(begun);
        log.resumed(left, begun, resumption.corrections());
        pan.notes().recall(left.notes());
        pan.afternoon().goOn(begun.originNanos(), begun.startedAt());
        PanRecall recall = new PanRecall(pan, cook, teller, thermometers, resumption);
        left.inputs().forEach(recall::take);
        Cook current = cook.now().orElse(begun);
        long leftNanos = current.nanosAt(left.aliveMillis());
        teller.happened(current.monitor().advanceTo(leftNanos));
        log.caughtUp();
        if (resumption.askedOtherwise()) {
            thermometers.restore(asked);
        }
        if (!thermometers.cookBasis().equals(resumption.basis())) {
            pan.rebase(leftNanos);
        }
        comeBack(atNanos);
    }

    /** The machine slept until now: nobody watched. */
    public void slept(long atNanos) {
        LOG.warn("{}: this computer slept, and nobody watched the pan meanwhile", plan.pan());
        comeBack(atNanos);
    }

    private void comeBack(long atNanos) {
        cook.now().ifPresent(current -> {
            ObjectNode left = CookJson.object().put("leftMillis", current.takenMillis());
            List<CookEvent> events = current.monitor().comeBack(atNanos);
            log.said(current, Words.CAME_BACK, left);
            teller.happened(events);
        });
    }
}
