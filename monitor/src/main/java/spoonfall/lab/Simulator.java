package spoonfall.lab;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

/** Makes labelled traces. The same scenario, settings and seed give the same trace. */
public final class Simulator {
    private static final double STEP_S = 0.1;
    private static final double LONGEST_S = 4 * 3600;
    private static final double ENOUGH_C = 0.1;
    private static final double PAST_C = 2;
    private static final double COOLING_S = 240;
    private static final double AIR_C = 42;
    private static final double STIR_EVERY_S = 280;
    private static final double STIR_S = 8;
    private static final double STIR_DIP_C = 0.5;
    private static final double WINDOW_C = 2 / 1.8;
    private static final Instant STARTED = Instant.parse("2026-01-17T14:48:00Z");

    private Simulator() {}

    /** Cooks once and returns the trace, labelled with what truly happened. */
    public static Trace cook(Scenario scenario, PanSettings chosen, long seed) {
        PanSettings settings = scenario.adapt(chosen);
        SplittableRandom random = new SplittableRandom(seed);
        Pan pan = new Pan(settings);
        Thermometer thermometer = new Thermometer(settings, random.split());
        Script script = new Script(scenario, settings);
        Stirring stirring = new Stirring(random.split());
        Milestones milestones = new Milestones(script, settings);
        Trace.Builder rows = new Trace.Builder();
        double nextReadingT = 0;
        double endC = settings.riseC() + (scenario == Scenario.PAST ? PAST_C : ENOUGH_C);
        double offT = Double.POSITIVE_INFINITY;
        for (long step = 0; step * STEP_S < Math.min(LONGEST_S, offT + COOLING_S); step++) {
            double t = step * STEP_S;
            Script.Moment moment = script.at(t, pan);
            boolean off = t >= offT;
            pan.step(STEP_S, off ? 0 : moment.powerKw());
            milestones.follow(t, pan);
            if (!off && pan.boiling() && pan.riseC() >= endC) {
                offT = t;
                script.label(t, "off-the-heat");
            }
            double aroundC =
                    moment.probeOut() ? AIR_C : pan.temperatureC() + moment.extraC() - stirring.dipC(t, pan.boiling());
            thermometer.step(STEP_S, aroundC, off ? 0.2 : moment.noisy(), !moment.probeOut());
            if (t + STEP_S / 2 >= nextReadingT) {
                nextReadingT += settings.periodS();
                if (!moment.silent()) {
                    rows.add(Math.round(t * 1000) / 1000.0, OptionalDouble.of(thermometer.reading()));
                }
            }
        }
        return rows.build(info(scenario, settings, seed, script));
    }

    private static TraceInfo info(Scenario scenario, PanSettings settings, long seed, Script script) {
        String pan = String.format(
                Locale.ROOT,
                "Simulated. %.1f kg at %.0f %% solids on %.2f kW net, at %.0f m.",
                settings.massKg(),
                100 * settings.solids(),
                settings.netPowerKw(),
                settings.elevationM());
        return new TraceInfo(
                "Seville orange and ginger, Hollin Bank (simulated): " + scenario.wireName(),
                scenario.title() + ". " + pan,
                "simulated",
                OptionalDouble.of(settings.elevationM()),
                OptionalDouble.empty(),
                OptionalDouble.of(Math.round(settings.riseC() * 1e4) / 1e4),
                OptionalLong.of(seed),
                Optional.of(STARTED),
                script.labels());
    }

    /** Labels the boil, the test window and the gel point when the pan truly reaches them. */
    private static final class Milestones {
        private final Script script;
        private final PanSettings settings;
        private int reached;

        private Milestones(Script script, PanSettings settings) {
            this.script = script;
            this.settings = settings;
        }

        void follow(double t, Pan pan) {
            if (reached == 0 && pan.boiling()) {
                script.label(t, "boil");
                reached = 1;
            }
            if (reached == 1 && pan.riseC() >= settings.riseC() - WINDOW_C) {
                script.label(t, "window");
                reached = 2;
            }
            if (reached == 2 && pan.riseC() >= settings.riseC()) {
                script.label(t, "gel");
                reached = 3;
            }
        }
    }

    /** The cook stirs now and then, which cools the top for some seconds. */
    private static final class Stirring {
        private final SplittableRandom random;
        private double fromT;

        private Stirring(SplittableRandom random) {
            this.random = random;
            fromT = STIR_EVERY_S * random.nextDouble(0.5, 1.5);
        }

        double dipC(double t, boolean boiling) {
            if (t > fromT + STIR_S) {
                fromT = t + STIR_EVERY_S * random.nextDouble(0.5, 1.5);
            }
            return boiling && t >= fromT ? STIR_DIP_C : 0;
        }
    }
}
