package spoonfall.kitchen.cook;

import java.util.Optional;
import spoonfall.cook.Stage;
import spoonfall.kitchen.plan.PlanDiary;
import spoonfall.kitchen.plan.PlanState;
import spoonfall.kitchen.plan.PlannedCook;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.log.CookJson;
import spoonfall.log.Recalled;
import spoonfall.log.planned.PlannedBatch;

/** What is said of the batch in a pan, and kept in the cook's record. Used by the kitchen's thread alone. */
public final class PanPlan {
    private final PanCook cook;
    private final PanLog log;
    private final Thermometers thermometers;
    private final PlanDiary diary;
    private final PlannedCook planned = new PlannedCook();

    /** Nothing was said yet. */
    public PanPlan(PanCook cook, PanLog log, Thermometers thermometers, PlanDiary diary) {
        this.cook = cook;
        this.log = log;
        this.thermometers = thermometers;
        this.diary = diary;
    }

    /**
     * Takes up what an earlier run had planned for the next cook.
     *
     * @return whether it is known what that was; else it is to be asked again
     */
    public boolean recall() {
        Recalled<PlannedBatch> left = diary.left();
        left.found().ifPresent(batch -> planned.say(Optional.of(batch), true));
        return left.known();
    }

    /** The plans themselves. */
    public PlannedCook plans() {
        return planned;
    }

    /** Somebody says what batch is in the pan, or comes into it next; empty for none. */
    public void say(Optional<PlannedBatch> batch) {
        boolean over = cook.now().isEmpty() || cook.isAt(Stage.OFF_THE_HEAT);
        boolean next = batch.isPresent() ? over : cook.now().isEmpty() || planned.hasNext();
        if (next) {
            planned.say(batch, true);
            diary.next(batch);
        } else {
            isIn(batch);
            cook.now().ifPresent(current -> log.said(current, Words.PLAN, PlannedBatch.detail(batch)));
        }
    }

    /** That batch is in the pan. */
    public void isIn(Optional<PlannedBatch> batch) {
        planned.say(batch, false);
        cook.now().ifPresent(this::tellTheForecast);
    }

    /** A cook begins. */
    public void begin(Cook started) {
        planned.begin().ifPresent(batch -> {
            log.said(started, Words.PLAN, PlannedBatch.detail(Optional.of(batch)));
            diary.next(Optional.empty());
        });
        tellTheForecast(started);
    }

    private void tellTheForecast(Cook current) {
        planned.prior().ifPresent(current.monitor()::expect);
    }

    /** Somebody says how many jars this cook filled. */
    public void filled(int jars) {
        planned.filled(jars);
        cook.now()
                .ifPresent(current ->
                        log.said(current, Words.FILLED, CookJson.object().put("jars", jars)));
    }

    /** What was planned, and what came of it. */
    public PlanState state() {
        return planned.state(cook.now().map(Cook::record), thermometers.settings(), cook.status());
    }
}
