package spoonfall.kitchen.desk;

import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.pan.PanKeeper;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.kitchen.told.KitchenState;
import spoonfall.learn.SafeBand;

/**
 * Where somebody takes a proposed target for a pan, and says that it goes on with an earlier cook. Everything is done by the
 * kitchen's thread; what cannot be done ends in a {@link Refusal}, and else the answer is where everything stands.
 */
public final class TargetDesk {
    private final PanKeeper keeper;
    private final Thermometers thermometers;
    private final Pan pan;

    TargetDesk(PanKeeper keeper, Thermometers thermometers, Pan pan) {
        this.keeper = keeper;
        this.thermometers = thermometers;
        this.pan = pan;
    }

    /**
     * The cook in the pan, and those after it until the service stops, are to be boiled to that rise.
     *
     * @param riseC above the water boil in °C, within the safe band
     */
    public CompletableFuture<KitchenState> take(double riseC) {
        if (!(riseC >= SafeBand.LEAST_RISE_C && riseC <= SafeBand.MOST_RISE_C)) {
            throw new Refusal(String.format(
                    Locale.ROOT,
                    "a target that is taken from here is %.1f to %.1f °C above boiling water, not %.1f; --rise takes others",
                    SafeBand.LEAST_RISE_C,
                    SafeBand.MOST_RISE_C,
                    riseC));
        }
        return keeper.ask(() -> {
            thermometers.aim(riseC);
            return keeper.rebased();
        });
    }

    /** The cook in the pan goes on with the one that the record keeps under that number. */
    public CompletableFuture<KitchenState> recooks(long of) {
        return keeper.ask(() -> {
            pan.recooks(of);
            return keeper.told();
        });
    }
}
