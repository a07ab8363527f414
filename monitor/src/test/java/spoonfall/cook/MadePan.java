package spoonfall.cook;

import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import spoonfall.cook.forecast.Forecaster;
import spoonfall.cook.signal.Senses;
import spoonfall.cook.signal.Signals;
import spoonfall.cook.stage.Stages;

/**
 * A pan whose readings are drawn by hand, one a second, with what the package makes of them: its signals, its stage and what is
 * known of its water. Water boils at 100 °C and the preserve sets at 104 °C.
 */
public final class MadePan {
    public static final CookSettings SETTINGS = new CookSettings(WaterBoil.measured(100, 0), 4, 1);

    /** How fast it climbs by itself, in °C a minute. */
    public static final double CLIMBS_PER_MIN_C = 0.1;

    private final DoubleUnaryOperator readC;
    private final Senses senses = new Senses(Pace.BY_ITSELF);
    private final Stages stages = new Stages(SETTINGS);
    private final Forecaster forecaster = new Forecaster(SETTINGS, Pace.BY_ITSELF);
    private Signals now = MadeSignals.at(0, 0);
    private double t;

    private MadePan(DoubleUnaryOperator readC) {
        this.readC = readC;
    }

    /** A pan that boils {@code fromC} above water and climbs steadily; {@code faultC} is added to what is read. */
    public static MadePan climbing(double fromC, DoubleUnaryOperator faultC) {
        return new MadePan(t -> 100 + fromC + CLIMBS_PER_MIN_C * t / 60 + faultC.applyAsDouble(t) + bubblesC(t));
    }

    /** The same from {@code sinceT} on with another pace, in °C a minute, instead of its climb. */
    public static MadePan climbing(double fromC, double sinceT, double thenPerMinC) {
        return climbing(fromC, t -> Math.max(0, t - sinceT) * (thenPerMinC - CLIMBS_PER_MIN_C) / 60);
    }

    private static double bubblesC(double t) {
        return 0.02 * Math.sin(1.7 * t);
    }

    /** Lets it be watched up to {@code untilT}. */
    public MadePan watch(double untilT) {
        return watch(untilT, signals -> {});
    }

    /** The same; {@code second} is told of every second that has ended. */
    public MadePan watch(double untilT, Consumer<Signals> second) {
        while (t < untilT) {
            double c = readC.applyAsDouble(t);
            senses.accept(c);
            forecaster.accept(t, c);
            t++;
            now = senses.endSecond(t).orElseThrow();
            stages.follow(now);
            forecaster.endSecond(now, stages.stage(), stages.boilingForS(t));
            second.accept(now);
        }
        return this;
    }

    public double t() {
        return t;
    }

    public Signals now() {
        return now;
    }

    public Stages stages() {
        return stages;
    }

    public Forecaster forecaster() {
        return forecaster;
    }
}
