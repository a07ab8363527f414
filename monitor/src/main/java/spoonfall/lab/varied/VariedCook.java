package spoonfall.lab.varied;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import spoonfall.probe.trace.Trace;
import spoonfall.probe.trace.TraceInfo;

/**
 * One cook drawn at random, as a labelled trace. The same kind and seed give the same trace.
 *
 * <p>The labels {@code window} and {@code gel} say when the syrup's own temperature, with the thermometer's
 * constant offset but without its lag and noise, reaches the marks that a faultless monitor would use: the
 * water boil that the trace's metadata gives, and the rise above it.
 */
public final class VariedCook {
    private static final double STEP_S = 0.1;
    private static final double LONGEST_S = 4 * 3600;
    private static final double WINDOW_C = 2 / 1.8;
    private static final double QUIET = 0.3;

    private final long seed;
    private final CookKind kind;
    private final Draw draw;
    private final SplittableRandom ending;
    private final SyrupPan pan;
    private final Hob hob;
    private final Sensor sensor;
    private final Stirs stirs;
    private final List<Episode> episodes;
    private final Optional<LateSugar> lateSugar;
    private final Sampling sampling;
    private final List<TraceInfo.Label> labels = new ArrayList<>();
    private OptionalDouble boilT = OptionalDouble.empty();
    private int reached;

    private VariedCook(CookKind kind, long seed, SplittableRandom random) {
        this.kind = kind;
        this.seed = seed;
        draw = Draw.of(random.split());
        ending = random.split();
        SyrupCurve curve = new SyrupCurve(
                draw.air().pressurePa(),
                draw.syrup().browneShare(),
                draw.syrup().scale());
        double waterKg = draw.massKg() * (1 - draw.solids());
        double sugarKg = draw.massKg() * draw.solids();
        double fruitSugarKg = kind == CookKind.LATE_SUGAR ? 0.12 / 0.88 * waterKg : sugarKg;
        pan = new SyrupPan(curve, fruitSugarKg, waterKg, draw.syrup(), draw.lossKwPerK(), draw.surfaceKw());
        hob = new Hob(draw.hob(), draw.grossKw(), random.split());
        sensor = new Sensor(draw.sensor(), draw.syrup().startC(), random.split());
        stirs = new Stirs(random.split());
        episodes = Episodes.of(kind, draw, random.split());
        LateSugar late = new LateSugar(sugarKg - fruitSugarKg, random.split());
        lateSugar = kind == CookKind.LATE_SUGAR ? Optional.of(late) : Optional.empty();
        sampling = new Sampling(draw.sensor(), kind == CookKind.SPIKES, draw.climbS(), random.split());
    }

    /** A cook of a kind that chance decides as well. */
    public static Trace cook(long seed) {
        SplittableRandom random = random(seed);
        CookKind kind = CookKind.draw(random.split());
        return new VariedCook(kind, seed, random).run();
    }

    /** A cook of that kind. */
    public static Trace cook(CookKind kind, long seed) {
        SplittableRandom random = random(seed);
        random.split(); // the kind's own chance, so that the same seed gives the same pan
        return new VariedCook(kind, seed, random).run();
    }

    private static SplittableRandom random(long seed) {
        return new SplittableRandom(seed);
    }

    private Trace run() {
        double offAfterS = ending.nextDouble(0, 90);
        boolean boilsOn = ending.nextDouble() < 0.15;
        double pastC = boilsOn ? ending.nextDouble(0.8, 2.5) : 0;
        double coolingS = ending.nextDouble(90, 240);
        double baseC = draw.air().statedWaterBoilC();
        double offT = Double.POSITIVE_INFINITY;
        double gelT = Double.POSITIVE_INFINITY;
        for (long step = 0; step * STEP_S < Math.min(LONGEST_S, offT + coolingS); step++) {
            double t = step * STEP_S;
            double riseC = pan.temperatureC() + draw.sensor().offsetC() - baseC;
            Moment moment = moment(t, riseC / draw.riseC());
            follow(t, riseC);
            if (reached == 3 && gelT > t) {
                gelT = t;
            }
            boolean done = boilsOn ? riseC >= draw.riseC() + pastC : t >= gelT + offAfterS;
            if (done && reached == 3 && offT > t) {
                offT = t;
                label(t, "off-the-heat");
            }
            double hobKw = hob.step(t, STEP_S, moment.knob);
            boolean beside = moment.besideTheHob || t >= offT;
            pan.step(STEP_S, beside ? 0 : hobKw, moment.lidReturns);
            sense(t, moment);
        }
        return sampling.build(info());
    }

    private Moment moment(double t, double part) {
        Moment moment = new Moment();
        moment.noisy = pan.boiling() ? 1 : QUIET;
        lateSugar.ifPresent(late -> late.take(t, moment, pan, this::label));
        double boiledS = boilT.isPresent() ? t - boilT.getAsDouble() : -1;
        for (Episode episode : episodes) {
            episode.take(t, boiledS, part, moment, pan, this::label);
        }
        return moment;
    }

    private void sense(double t, Moment moment) {
        double dipC = stirs.dipC(t);
        double syrupC = pan.temperatureC() + moment.hotterC - (pan.boiling() ? dipC : 0);
        sensor.step(STEP_S, moment.aroundC.orElse(syrupC), moment.lagTimes, moment.noisy);
        sampling.offer(t, STEP_S, moment, sensor, boilT, this::label);
    }

    private void follow(double t, double riseC) {
        if (reached == 0 && pan.boiling() && lateSugar.map(LateSugar::in).orElse(true)) {
            boilT = OptionalDouble.of(t);
            label(t, "boil");
            reached = 1;
        }
        if (reached == 1 && riseC >= draw.riseC() - WINDOW_C) {
            label(t, "window");
            reached = 2;
        }
        if (reached == 2 && riseC >= draw.riseC()) {
            label(t, "gel");
            reached = 3;
        }
    }

    private void label(double t, String what) {
        labels.add(new TraceInfo.Label(Math.round(t * 10) / 10.0, what));
    }

    private TraceInfo info() {
        Draw.Air air = draw.air();
        String description = String.format(
                Locale.ROOT,
                "%s. Simulated. %.2f kg at %.1f %% solids on %.2f kW net; %.0f m, %.1f hPa; thermometer late by %.1f s, "
                        + "noise %.3f °C, steps of %.4g °C, every %.4g s.",
                kind.title(),
                draw.massKg(),
                100 * draw.solids(),
                draw.netKw(),
                air.elevationM(),
                air.pressurePa() / 100,
                draw.sensor().lagS(),
                draw.sensor().noiseC(),
                draw.sensor().stepC(),
                draw.sensor().periodS());
        return new TraceInfo(
                "Hollin Bank (simulated): " + kind.wireName() + ", seed " + seed,
                description,
                "simulated",
                air.statedPressure() ? OptionalDouble.empty() : OptionalDouble.of(air.elevationM()),
                air.statedPressure() ? OptionalDouble.of(air.pressurePa()) : OptionalDouble.empty(),
                OptionalDouble.of(draw.riseC()),
                OptionalLong.of(seed),
                Optional.empty(),
                labels);
    }
}
