package spoonfall.kitchen.desk;

import java.util.concurrent.CompletableFuture;
import spoonfall.cook.WaterBoil;
import spoonfall.kitchen.ask.Refusal;
import spoonfall.kitchen.pan.Pan;
import spoonfall.kitchen.pan.PanKeeper;
import spoonfall.kitchen.thermometer.CheckView;
import spoonfall.kitchen.thermometer.ThermometerCheck;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.kitchen.told.KitchenState;

/**
 * Where the thermometers of a kitchen are checked, and where somebody says how high it lies. Everything is done by the
 * kitchen's thread; what cannot be done now ends in a {@link Refusal}, and else the answer is where everything stands.
 */
public final class CheckDesk {
    private final PanKeeper keeper;
    private final Thermometers thermometers;
    private final ThermometerCheck check;
    private final Pan pan;

    CheckDesk(PanKeeper keeper, Thermometers thermometers, ThermometerCheck check, Pan pan) {
        this.keeper = keeper;
        this.thermometers = thermometers;
        this.check = check;
        this.pan = pan;
    }

    /**
     * Begins to compare a thermometer with boiling water or ice.
     *
     * @return where everything stands; a {@link Refusal} if it cannot be done now
     */
    public CompletableFuture<KitchenState> startCheck(String probe, CheckView.In in) {
        return keeper.ask(() -> {
            boolean first = thermometers.named(probe) == thermometers.first();
            boolean out = first && in == CheckView.In.ICE;
            if (out && pan.cooking() && check.boiledBefore(probe).isEmpty()) {
                throw new Refusal("the pan is boiling and " + probe + " watches it; check it in ice before or after");
            }
            check.start(probe, in.kind());
            return out ? keeper.afresh() : keeper.told();
        });
    }

    /** Ends a check without keeping anything; nothing happens if none is running. */
    public CompletableFuture<KitchenState> abandonCheck() {
        return keeper.ask(() -> {
            check.abandon();
            return keeper.told();
        });
    }

    /** Keeps what the check found as today's water boil, and begins a new cook: the pan held plain water. */
    public CompletableFuture<KitchenState> keepAsWaterBoil() {
        return afresh(check::keepWaterBoil);
    }

    /** Keeps what the check found as the thermometer's correction, and begins a new cook. */
    public CompletableFuture<KitchenState> keepAsCalibration() {
        return afresh(check::keepCalibration);
    }

    /** Takes the latest correction of a thermometer back, and begins a new cook. */
    public CompletableFuture<KitchenState> undoCalibration(String probe) {
        return afresh(() -> check.undo(probe));
    }

    private CompletableFuture<KitchenState> afresh(Runnable act) {
        return keeper.ask(() -> {
            act.run();
            return keeper.afresh();
        });
    }

    /** Somebody says where the kitchen is, or its air pressure; the cook goes on by that. */
    public CompletableFuture<KitchenState> declare(WaterBoil boil) {
        return rebased(() -> {
            thermometers.declare(boil);
            check.boilChanged();
        });
    }

    /** The measured water boil counts no longer; the cook goes on by what was said of the kitchen. */
    public CompletableFuture<KitchenState> forgetMeasured() {
        return rebased(thermometers::forgetMeasured);
    }

    private CompletableFuture<KitchenState> rebased(Runnable act) {
        return keeper.ask(() -> {
            act.run();
            return keeper.rebased();
        });
    }
}
