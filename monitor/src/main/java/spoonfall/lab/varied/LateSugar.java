package spoonfall.lab.varied;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;

/** Fruit comes to the boil, simmers, and then the sugar goes in. */
final class LateSugar {
    private static final double BELOW_C = 2.5;
    private static final double KNOB_PER_C = 0.2;

    private final double sugarKg;
    private final double simmerS;
    private final double dissolvesS;
    private OptionalDouble boiledT = OptionalDouble.empty();
    private boolean in;

    LateSugar(double sugarKg, SplittableRandom random) {
        this.sugarKg = sugarKg;
        simmerS = random.nextDouble(180, 700);
        dissolvesS = random.nextDouble(20, 80);
    }

    /** Whether the sugar is in. */
    boolean in() {
        return in;
    }

    void take(double t, Moment moment, SyrupPan pan, BiConsumer<Double, String> labels) {
        if (in) {
            return;
        }
        if (boiledT.isEmpty() && pan.boiling()) {
            boiledT = OptionalDouble.of(t);
            labels.accept(t, "simmer-begins");
        }
        if (boiledT.isEmpty()) {
            return;
        }
        if (t - boiledT.getAsDouble() >= simmerS) {
            in = true;
            pan.addSugar(sugarKg, dissolvesS);
            labels.accept(t, "sugar-added");
            return;
        }
        moment.knob = Math.max(0, Math.min(1, KNOB_PER_C * (pan.boilC() - BELOW_C - pan.temperatureC()) + 0.15));
    }
}
