package spoonfall.kitchen.desk;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.pan.PanKeeper;
import spoonfall.kitchen.pantry.Pantry;
import spoonfall.kitchen.plan.PlanState;
import spoonfall.log.planned.PlannedBatch;

/**
 * Where somebody says what batch is in a pan and how many jars it filled. Everything is done by the kitchen's thread, and kept in
 * the cook's record; what cannot be ends in a {@link Refusal}.
 */
public final class PlanDesk {
    private final String name;
    private final PanKeeper keeper;
    private final Pan pan;

    PlanDesk(String name, PanKeeper keeper, Pan pan) {
        this.name = name;
        this.keeper = keeper;
        this.pan = pan;
    }

    /** What was planned, and what came of it. */
    public CompletableFuture<PlanState> state() {
        return keeper.ask(pan.batch()::state);
    }

    /** That batch is in the pan, or comes into it next if none is on the heat; empty for none. */
    public CompletableFuture<PlanState> cook(Optional<PlannedBatch> batch) {
        return keeper.ask(() -> {
            pan.batch().say(batch);
            return pan.batch().state();
        });
    }

    /**
     * So many jars were filled. Whoever counts says that the cook is over: the first count teaches what the boil showed of the hob, and
     * another one only corrects the jars.
     *
     * @param pantry where what is learnt of the hob is kept
     */
    public CompletableFuture<PlanState> filled(int jars, Pantry pantry) {
        return keeper.ask(() -> {
            boolean first = pan.batch().state().filled().isEmpty();
            try {
                pan.batch().filled(jars);
            } catch (IllegalArgumentException e) {
                throw new Refusal(String.valueOf(e.getMessage()), e);
            }
            PlanState state = pan.batch().state();
            if (first) {
                pantry.learn(name, state.waterKgPerMin());
            }
            return state;
        });
    }
}
