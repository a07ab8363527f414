package spoonfall.kitchen.cook;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spoonfall.cook.CookStatus;
import spoonfall.cook.Stage;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.kitchen.thermometer.Thermometers;

/** The cook that is in a pan, from its first reading on; none before. Used by the kitchen's thread alone. */
public final class PanCook {
    private final Thermometers thermometers;
    private @Nullable Cook cook;

    /** No cook has begun. */
    public PanCook(Thermometers thermometers) {
        this.thermometers = thermometers;
    }

    /** The cook, if one has begun. */
    public Optional<Cook> now() {
        return Optional.ofNullable(cook);
    }

    /** That cook is in the pan from now on: a new one, or the same gone through again. */
    public void is(Cook begun) {
        cook = begun;
    }

    /** No cook is in the pan. */
    public void over() {
        cook = null;
    }

    /** How the pan is; empty before the first reading. */
    public Optional<CookStatus> status() {
        return now().map(begun -> begun.monitor().status());
    }

    /** What is told of the forecast, everywhere alike, in seconds of the cook; nothing once the thermometer is gone. */
    public Optional<CalmForecast.Shown> foretold() {
        return thermometers.first().isGone()
                ? Optional.empty()
                : now().flatMap(begun -> begun.monitor().foretold());
    }

    /** Whether the latest set test found it not set yet, so that it goes back on the heat. */
    public boolean goesBack() {
        return now().filter(begun -> begun.monitor().tests().goesBack()).isPresent();
    }

    /** Whether the cook is at such a stage; never before the first reading. */
    boolean isAt(Stage stage) {
        return status().filter(status -> status.stage() == stage).isPresent();
    }

    /** Seconds of the cook up to which it has been watched; 0 before it. */
    public double watchedS() {
        return now().map(begun -> begun.monitor().timeS()).orElse(0.0);
    }

    /** Seconds of the cook at an instant on the readings' scale; 0 before it. */
    public double timeS(long atNanos) {
        return now().map(begun -> (atNanos - begun.originNanos()) / 1e9).orElse(0.0);
    }
}
