package spoonfall.lab;

import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** A simulated pan that somebody takes off the heat and puts back, with a thermometer in it. */
public final class HandledPan {
    private static final double STEP_S = 0.1;

    private final PanSettings settings;
    private final Pan pan;
    private final Thermometer thermometer;
    private double t;
    private double nextReadingT;

    /** A pan that stands on the heat. The same settings and seed give the same pan. */
    public HandledPan(PanSettings settings, long seed) {
        this.settings = settings;
        pan = new Pan(settings);
        thermometer = new Thermometer(settings, new SplittableRandom(seed));
    }

    /** Lets a second pass; what the thermometer shows then, if it shows anything new. */
    public OptionalDouble second(boolean onTheHeat) {
        OptionalDouble shown = OptionalDouble.empty();
        for (int i = 0; i < 10; i++) {
            pan.step(STEP_S, onTheHeat ? settings.netPowerKw() : 0);
            thermometer.step(STEP_S, pan.temperatureC(), pan.boiling() ? 1 : 0.2, true);
            t += STEP_S;
            if (t + STEP_S / 2 >= nextReadingT) {
                nextReadingT += settings.periodS();
                shown = OptionalDouble.of(thermometer.reading());
            }
        }
        return shown;
    }

    /** How far above boiling water its syrup boils, in °C, whether or not it boils. */
    public double syrupRiseC() {
        double pressurePa = PanPhysics.pressurePa(settings.elevationM());
        return PanPhysics.boilingPointC(pressurePa, pan.solids()) - PanPhysics.boilingPointC(pressurePa, 0);
    }
}
